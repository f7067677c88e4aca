package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchboard.store.FileTrouble;

final class SearchTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        # looked for       | name                      | place              | found
        LOFT               | Stair to the sail loft    |                    | true
        sail east          | Stair to the sail loft    | boathouse, east    | true
        east sail          | Stair to the sail loft    | boathouse, east    | true
        '  '               | Stair to the sail loft    |                    | true
        sail west          | Stair to the sail loft    | boathouse, east    | false
        loft east gable    | Stair to the sail loft    | boathouse          | false
        # all four letters i of Turkish are one
        ISIK               | ışık                      |                    | true
        ışık               | IŞIK İSKELESİ             |                    | true
        iskelesi           | IŞIK İSKELESİ             |                    | true
        İSKELE             | ışık iskelesi             |                    | true
        ıskele             | ışık iskelesi             |                    | true
        # accents may be there or not, as one sign or as two
        cafe               | Café stair                |                    | true
        CAFÉ               | cafe stair                |                    | true
        Cafe\u0301         | Caf\u00e9 stair           |                    | true
        strasse            | Hauptstraße 4             |                    | true
        STRAßE             | Hauptstrasse 4            |                    | true
        ódos               | ΟΔΟΣ                      |                    | false
        οδος               | ΟΔΟΣ 3                    |                    | true
        ΟΔΟΣ               | οδός 3                    |                    | true
        лестница           | ЛЕСТНИЦА                  |                    | true
        # signs that mean something to a database mean themselves
        %                  | Stair to the sail loft    |                    | false
        50%                | half (50%) of it          |                    | true
        _                  | Stair to the sail loft    |                    | false
        '''; drop table'   | '''; drop table job; --'  |                    | true
        "*"                | Stair to the sail loft    |                    | false
        """)
    void it_finds_by_words_in_name_and_place(String words, String name, String place, boolean found)
            throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            library.create(Crew.named(name, place == null ? "" : place), Crew.PHONE);
            assertThat(library.list(new Search(words, Search.Shelf.AT_HAND, 5))).hasSize(found ? 1 : 0);
        }
    }

    @Test
    void the_limit_counts_what_was_found() throws FileTrouble {
        try (JobLibrary library = Crew.library(folder)) {
            for (int i = 0; i < 6; i++) {
                library.create(Crew.named(i % 2 == 0 ? "porch " + i : "loft " + i, ""), Crew.PHONE);
            }
            assertThat(library.list(new Search("porch", Search.Shelf.AT_HAND, 2)))
                    .extracting(Job.Line::name)
                    .containsExactly("porch 4", "porch 2");
        }
    }

    @Test
    void fewer_than_no_jobs_cannot_be_asked_for() {
        assertThatThrownBy(() -> new Search("", Search.Shelf.AT_HAND, -1)).isInstanceOf(IllegalArgumentException.class);
    }
}
