package pitchboard.documents.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import pitchboard.documents.fonts.FontFile;
import pitchboard.sheet.Face;
import pitchboard.sheet.Run;

/** The faces as fonts of one document; only the letters that were used are embedded in the end. */
final class PdfFonts {
    private static final String HEX = "0123456789ABCDEF";

    private final Map<Face, PDType0Font> fonts = new EnumMap<>(Face.class);
    private final PDResources resources = new PDResources();

    PdfFonts(PDDocument document) throws IOException {
        for (Face face : Face.values()) {
            PDType0Font font = PDType0Font.load(
                    document,
                    new TTFParser(true)
                            .parse(new RandomAccessReadBuffer(FontFile.of(face).bytes())),
                    true);
            fonts.put(face, font);
            resources.put(COSName.getPDFName(name(face)), font);
        }
    }

    PDResources resources() {
        return resources;
    }

    String name(Face face) {
        return face == Face.BOLD ? "B" : "R";
    }

    /** The letters of a run as a string of glyph numbers. */
    StringBuilder encode(Run run, StringBuilder out) {
        PDType0Font font = fonts.get(run.face());
        run.letters().codePoints().forEach(font::addToSubset);
        out.append('<');
        for (byte part : encoded(font, run.letters())) {
            out.append(HEX.charAt((part >> 4) & 15)).append(HEX.charAt(part & 15));
        }
        return out.append("> ");
    }

    private static byte[] encoded(PDType0Font font, String letters) {
        try {
            return font.encode(letters);
        } catch (IOException cannotHappen) {
            throw new UncheckedIOException("a font held in memory could not be read", cannotHappen);
        }
    }

    /** Cuts the fonts down to what was used; afterwards nothing more can be encoded. */
    void subset() throws IOException {
        for (PDType0Font font : fonts.values()) {
            font.subset();
        }
    }
}
