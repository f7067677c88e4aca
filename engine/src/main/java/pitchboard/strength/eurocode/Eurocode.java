package pitchboard.strength.eurocode;

import pitchboard.source.Citing;
import pitchboard.source.Edition;

/** The documents this package speaks for. */
public final class Eurocode {
    public static final Citing TIMBER =
            new Citing(new Edition("EN 1995-1-1: Design of timber structures", "2004 with A1 and A2", "EN 1995-1-1"));

    public static final Citing LOADS =
            new Citing(new Edition("EN 1991-1-1: Actions on structures, imposed loads", "2002", "EN 1991-1-1"));

    public static final Citing COMBINATIONS = new Citing(new Edition("EN 1990: Basis of design", "2002", "EN 1990"));

    static final Citing CLASSES = new Citing(new Edition("EN 338: Strength classes", "2016", "EN 338:2016"));

    static final Citing OLDER_CLASSES = new Citing(new Edition("EN 338: Strength classes", "2003", "EN 338:2003"));

    private Eurocode() {}
}
