package pitchboard.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import pitchboard.web.Settings;
import pitchboard.web.network.OwnAddresses;

/**
 * A phone of the crew. It is this browser under the machine's address in the network: to the server it comes from
 * outside, and the browser keeps what it knows of the two addresses apart.
 */
final class PairingTest extends Visit {
    @Override
    Settings settings(Path data, int port) {
        return super.settings(data, port).shared();
    }

    @Override
    Predicate<String> expected() {
        return complaint -> complaint.contains("401 (Unauthorized)")
                // Plain http: said in docs/page.md, and why such a phone keeps no page of its own.
                || complaint.contains("Cross-Origin-Opener-Policy")
                || complaint.contains("net::ERR_");
    }

    @Test
    void a_phone_is_let_in_by_a_code_and_shut_out_again() throws Exception {
        List<String> addresses = OwnAddresses.find();
        Assumptions.assumeFalse(addresses.isEmpty(), "this machine is in no network");
        String outside = "http://" + addresses.get(0) + ":" + desk.port() + "/";
        openExample("tape");
        page.tap("More for this job");
        page.tap("Settings");
        page.tap("The crew");
        page.tap("Let a device in");
        String code = page.text(".huge-code");

        String computer = page.openBeside(outside);
        page.until("return document.querySelector('input[name=code]')");
        assertThat((String) page.run("return document.body.innerText")).doesNotContain("sail loft");
        page.tapOn("input[name=code]");
        page.typeOver(code);
        page.tapOn("input[name=name]");
        page.typeOver("Phone at the saw");
        page.tap("Let me in");
        page.untilSays(".job", "Stair to the sail loft");
        String phone = page.driver().getWindowHandle();

        page.lookAt(computer);
        page.tap("Close");
        page.tap("More for this job");
        page.tap("Settings");
        page.tap("The crew");
        page.untilSays(".device", "Phone at the saw");
        page.tap("Shut out");
        page.untilGone(".device");

        page.lookAt(phone);
        page.reload();
        page.untilSays("h2", "Let this device in");
        assertThat((String) page.run("return document.body.innerText")).doesNotContain("sail loft");
    }
}
