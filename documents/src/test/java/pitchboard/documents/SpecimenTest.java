package pitchboard.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchboard.brief.Paper;
import pitchboard.sheet.Sheet;
import pitchboard.sheet.inspection.SheetInspection;

final class SpecimenTest {
    @ParameterizedTest
    @EnumSource(Paper.class)
    void nothing_on_the_specimen_overlaps_or_leaves_the_border(Paper paper) {
        List<Sheet> sheets = Specimen.sheets(paper);
        assertThat(sheets).hasSizeGreaterThan(5);
        for (Sheet sheet : sheets) {
            assertThat(SheetInspection.complaints(sheet)).isEmpty();
            assertThat(SheetInspection.crossedTexts(sheet)).isEmpty();
        }
    }
}
