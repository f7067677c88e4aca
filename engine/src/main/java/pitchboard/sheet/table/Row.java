package pitchboard.sheet.table;

import java.util.List;
import pitchboard.sheet.PartRef;

/** A line of a table: cells under the columns, or one heading across all of them. */
public sealed interface Row {
    /**
     * Cells, one under each column.
     *
     * @param of the part the row is about
     */
    record Cells(PartRef of, List<String> cells) implements Row {
        public Cells {
            cells = List.copyOf(cells);
        }
    }

    /** Words across all columns. */
    record Heading(String words) implements Row {}
}
