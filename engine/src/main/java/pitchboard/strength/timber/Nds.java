package pitchboard.strength.timber;

import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** The documents this package speaks for. */
public final class Nds {
    /** Clauses from memory are marked so: they were confirmed by reproducing published tables, not read. */
    public static final Citing SPECIFICATION =
            new Citing(new Edition("National Design Specification for Wood Construction", "2018", "NDS 2018"));

    public static final Citing SUPPLEMENT =
            new Citing(new Edition("NDS Supplement: Design Values for Wood Construction", "2018", "NDS 2018 Suppl."));

    /** Values that older span tables rest on. */
    static final Citing EARLIER =
            new Citing(new Edition("NDS Supplement: earlier values", "before 2015", "earlier NDS Suppl."));

    private Nds() {}
}
