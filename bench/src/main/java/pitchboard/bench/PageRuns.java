package pitchboard.bench;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import pitchboard.web.Server;
import pitchboard.web.Settings;

/**
 * How long the page keeps a person waiting, in Chromium at the size of a phone: from an address to the first stair, cold
 * and without the server, and from a changed measurement to the redrawn stair with its findings. Prints milliseconds.
 */
public final class PageRuns {
    private static final int CHANGES = 500;
    private static final int VISITS = 7;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    /** Waits for the drawing, and gives the time since the address was opened. */
    private static final String UNTIL_DRAWN = """
            const done = arguments[0];
            const look = () => document.querySelector('.place-stair .drawing svg') ? done(performance.now())
                : requestAnimationFrame(look);
            look();
            """;

    /** Changes the rise again and again, and gives what each took until the page was drawn anew. */
    private static final String CHANGE = """
            const done = arguments[1], count = arguments[0], spent = [];
            const [desk, { state }] = await Promise.all([import('/page/desk.js'), import('/page/state.js')]);
            const page = document.getElementById('page');
            for (let i = 0; i < count + 20; i++) {
                const before = state.answer;
                const began = performance.now();
                await new Promise((drawn) => {
                    const watch = new MutationObserver(() => {
                        if (state.answer === before) return;
                        watch.disconnect();
                        drawn();
                    });
                    watch.observe(page, { childList: true, subtree: true, characterData: true, attributes: true });
                    desk.write('measured > rise', `8' ${9 + (i % 2)} ${1 + (i % 15)}/16"`);
                });
                if (i >= 20) spent.push(performance.now() - began);
                await new Promise((rest) => setTimeout(rest, 5));
            }
            done(spent);
            """;

    private PageRuns() {}

    /** Needs {@code chromium} and {@code chromedriver} where Debian puts them. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("page-runs");
        Settings settings = Settings.of(0, folder.resolve("data"));
        List<Double> cold = new ArrayList<>();
        try (Server server = Server.start(settings)) {
            System.out.printf("first visit loads %d bytes, compressed%n", bytesOfAll(server.address()));
            String stair = server.address() + "#job/" + job(server.address()) + "/stair";
            for (int visit = 0; visit < VISITS; visit++) {
                cold.add(drawn(folder.resolve("profile-" + visit), stair));
            }
        }
        print("first usable page, cold", cold);
        afterwards(folder, settings);
    }

    private static void afterwards(Path folder, Settings settings) throws Exception {
        Server server = Server.start(settings);
        ChromeDriver driver = browser(folder.resolve("profile"));
        try {
            String stair = server.address() + "#job/" + job(server.address()) + "/stair";
            driver.get(stair);
            driver.executeAsyncScript(UNTIL_DRAWN);
            print(
                    "changed rise to redrawn stair",
                    numbers(driver.executeAsyncScript(
                            "(async () => {" + CHANGE + "}).apply(null, arguments)", CHANGES)));
            driver.executeAsyncScript("const done = arguments[0]; navigator.serviceWorker.ready.then(() => done())");
            server.close();
            List<Double> offline = new ArrayList<>();
            for (int visit = 0; visit < VISITS; visit++) {
                driver.get("about:blank");
                driver.get(stair);
                offline.add(((Number) driver.executeAsyncScript(UNTIL_DRAWN)).doubleValue());
            }
            print("first usable page, no server", offline);
        } finally {
            driver.quit();
            server.close();
        }
    }

    private static double drawn(Path profile, String address) {
        ChromeDriver driver = browser(profile);
        try {
            driver.get(address);
            return ((Number) driver.executeAsyncScript(UNTIL_DRAWN)).doubleValue();
        } finally {
            driver.quit();
        }
    }

    private static ChromeDriver browser(Path profile) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--window-size=390,844", "--user-data-dir=" + profile);
        ChromeDriver driver = new ChromeDriver(
                new ChromeDriverService.Builder()
                        .usingDriverExecutable(new File("/usr/bin/chromedriver"))
                        .build(),
                options);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(5));
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 390, "height", 844, "deviceScaleFactor", 2, "mobile", true));
        return driver;
    }

    private static String job(String address) throws IOException, InterruptedException {
        Matcher id = Pattern.compile("\"id\":\"([^\"]+)\"").matcher(text(address + "api/jobs"));
        if (!id.find()) {
            throw new IllegalStateException("no example is there");
        }
        return id.group(1);
    }

    /** Every file that the page keeps on a device, as it is sent. */
    private static long bytesOfAll(String address) throws IOException, InterruptedException {
        String worker = text(address + "page-worker.js");
        Matcher file = Pattern.compile("\"/([^\"]*)\"").matcher(worker.substring(0, worker.indexOf("];")));
        long bytes = 0;
        while (file.find()) {
            bytes += sent(address + file.group(1));
        }
        return bytes;
    }

    private static String text(String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    private static int sent(String address) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .header("Accept-Encoding", "gzip")
                .build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofByteArray()).body().length;
    }

    private static List<Double> numbers(Object found) {
        return ((List<?>) found)
                .stream().map(each -> ((Number) each).doubleValue()).toList();
    }

    private static void print(String what, List<Double> spent) {
        Spread spread = Spread.of(spent);
        System.out.printf("%s: %s%n", what, spread);
    }
}
