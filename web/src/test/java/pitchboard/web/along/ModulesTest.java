package pitchboard.web.along;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class ModulesTest {
    private static Modules of(Map<String, String> files) {
        return Modules.from(path -> Optional.ofNullable(files.get(path)), "/page/app.js");
    }

    @Test
    void names_are_resolved_against_each_files_own_place() {
        Modules modules = of(Map.of(
                "/page/app.js", "import { a } from './places/a.js';\nimport \"./b.js\";\n",
                "/page/places/a.js", "export { b } from '../b.js'; export const later = () => import('./c.js');",
                "/page/places/c.js", "import x from\"/page/b.js\"",
                "/page/b.js", "export const b = 1; // from here"));
        assertThat(modules.texts())
                .isEqualTo(Map.of(
                        "/page/app.js",
                                "import { a } from 'pitchboard/page/places/a.js';\nimport \"pitchboard/page/b.js\";\n",
                        "/page/places/a.js",
                                "export { b } from 'pitchboard/page/b.js'; export const later = () =>"
                                        + " import('pitchboard/page/places/c.js');",
                        "/page/places/c.js", "import x from\"pitchboard/page/b.js\"",
                        "/page/b.js", "export const b = 1; // from here"));
    }

    @Test
    void modules_that_need_each_other_are_taken_once() {
        Modules modules = of(Map.of(
                "/page/app.js", "import './one.js';",
                "/page/one.js", "import './two.js';",
                "/page/two.js", "import './one.js';"));
        assertThat(modules.texts()).containsOnlyKeys("/page/app.js", "/page/one.js", "/page/two.js");
        assertThat(modules.importMap())
                .startsWith("{\"imports\":{\"pitchboard/page/app.js\":\"data:text/javascript;charset=utf-8;base64,")
                .contains("\"pitchboard/page/two.js\":");
    }

    @Test
    void bare_names_and_addresses_elsewhere_stay_as_they_are() {
        String text = "import x from 'x'; import y from 'https://boats.example/y.js'; const s = 'from ./z.js';";
        assertThat(of(Map.of("/page/app.js", text)).texts()).containsEntry("/page/app.js", text);
    }

    @Test
    void a_module_that_is_missing_is_named() {
        assertThatThrownBy(() -> of(Map.of("/page/app.js", "import './gone.js'")))
                .hasMessage("/page/app.js needs /page/gone.js, which is not there");
    }
}
