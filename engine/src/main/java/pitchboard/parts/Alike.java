package pitchboard.parts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pitchboard.measure.Length;

/** Gathers pieces of one kind by their length. */
final class Alike {
    private Alike() {}

    /**
     * One part for each length in the order it first comes; numbered when there are several.
     *
     * @param kind with a count and a length that do not matter
     * @param times how often each of the lengths is wanted
     */
    static List<Part> parts(Part kind, List<Length> lengths, int times) {
        Map<Length, Integer> counts = new LinkedHashMap<>();
        lengths.forEach(length -> counts.merge(length, times, Integer::sum));
        List<Part> parts = new ArrayList<>();
        for (Map.Entry<Length, Integer> each : counts.entrySet()) {
            PartId id = counts.size() == 1 ? kind.id() : kind.id().numbered(parts.size() + 1);
            parts.add(new Part(
                    id, kind.name(), kind.purpose(), each.getValue(), kind.thickness(), kind.width(), each.getKey()));
        }
        return parts;
    }
}
