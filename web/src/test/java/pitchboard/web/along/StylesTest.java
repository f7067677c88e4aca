package pitchboard.web.along;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchboard.web.files.PageFile;

final class StylesTest {
    private static String inline(Map<String, String> files, String... paths) {
        return Styles.inline(
                path -> Optional.ofNullable(files.get(path)).map(text -> PageFile.of("font/ttf", text.getBytes(UTF_8))),
                List.of(paths));
    }

    @Test
    void sheets_stay_in_their_order_and_hold_what_they_refer_to() {
        assertThat(inline(
                        Map.of(
                                "/page/look/a.css", "a { src: url('/page/fonts/f.ttf') } b { fill: url(#x) }",
                                "/page/look/b.css", "c { src: url(\"../f.ttf\"), url(data:x) }",
                                "/page/fonts/f.ttf", "one",
                                "/page/f.ttf", "two"),
                        "/page/look/b.css",
                        "/page/look/a.css"))
                .isEqualTo("c { src: url(\"data:font/ttf;base64,dHdv\"), url(\"data:x\") }\n"
                        + "a { src: url(\"data:font/ttf;base64,b25l\") } b { fill: url(\"#x\") }");
    }

    @Test
    void what_would_end_the_style_or_ask_for_more_is_refused() {
        assertThatThrownBy(() -> inline(Map.of("/a.css", "/* </style> */"), "/a.css"))
                .hasMessageContaining("/a.css");
        assertThatThrownBy(() -> inline(Map.of("/a.css", "@import 'b.css'"), "/a.css"))
                .hasMessageContaining("/a.css");
        assertThatThrownBy(() -> inline(Map.of("/a.css", "url(b.png)"), "/a.css"))
                .hasMessage("/a.css needs /b.png");
    }
}
