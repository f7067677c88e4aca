package pitchboard.brief;

/** The paper the sheets are printed on, lying on its long side. Sizes in millimetres (ISO 216; ANSI/ASME Y14.1). */
public enum Paper {
    LETTER(279.4, 215.9),
    A4(297, 210);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }
}
