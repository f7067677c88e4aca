package pitchboard.costing;

import pitchboard.measure.Ratio;

/**
 * Work that takes hours. The hours are the crew's, by the clock, while all of it works. All of them are planning figures
 * from memory: rough, to be replaced by the crew's own.
 */
public enum Task {
    FIRST_STRINGER("first stringer", "lay out and cut the first stringer", Ratio.of(5, 4)),
    FURTHER_STRINGER("further stringer", "cut each further one after it", Ratio.of(1, 2)),
    HANGING("hanging a stringer", "hang and align each", Ratio.of(1, 2)),
    TREAD("tread", "fix each tread", Ratio.of(1, 5)),
    RISER("riser board", "fix each riser board", Ratio.of(3, 20)),
    POST("post", "set each post of the guard", Ratio.of(7, 8)),
    RAIL_FOOT("foot of rail", "each foot of guard, with its rails and what closes it", Ratio.of(1, 2)),
    HANDRAIL_FOOT("foot of handrail", "each foot of handrail, with brackets and returns", Ratio.of(3, 20)),
    PAD("pad", "dig and pour a pad", Ratio.of(4)),
    SETTING_UP("setting up", "drive, unload, set up and clear away, for the job", Ratio.of(2));

    private final String words;
    private final String meaning;
    private final Ratio fromMemory;

    Task(String words, String meaning, Ratio fromMemory) {
        this.words = words;
        this.meaning = meaning;
        this.fromMemory = fromMemory;
    }

    /** As a file of rates writes it. */
    public String words() {
        return words;
    }

    public String meaning() {
        return meaning;
    }

    /** Hours for each, from memory; check before relying on them. */
    public Ratio fromMemory() {
        return fromMemory;
    }
}
