package pitchboard.web.along;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TemplateTest {
    private static final Template PAGE = new Template("""
            <!doctype html>
            <html lang="en">
              <head>
                <meta charset="utf-8" />
                <title>A page</title>
                <link rel="manifest" href="/m.webmanifest" />
                <link rel="stylesheet" href="/a.css" />
                <link rel="stylesheet" href="/b.css" />
                <script type="module" src="/app.js"></script>
              </head>
              <body>
                <div id="page"></div>
              </body>
            </html>
            """);

    @Test
    void it_names_what_it_takes_from_elsewhere() {
        assertThat(PAGE.links("stylesheet")).isEqualTo(List.of("/a.css", "/b.css"));
        assertThat(PAGE.links("manifest")).isEqualTo(List.of("/m.webmanifest"));
        assertThat(PAGE.links("icon")).isEmpty();
        assertThat(PAGE.entry()).isEqualTo("/app.js");
    }

    @Test
    void filled_it_takes_nothing_from_elsewhere() {
        assertThat(PAGE.filled("[first]", "[last]", "[body]")).isEqualTo("""
                <!doctype html>
                <html lang="en">
                  <head>
                    <meta charset="utf-8" />[first]
                    <title>A page</title>
                  [last]</head>
                  <body>
                    <div id="page"></div>
                  [body]</body>
                </html>
                """);
    }
}
