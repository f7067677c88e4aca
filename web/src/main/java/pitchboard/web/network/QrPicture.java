package pitchboard.web.network;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** Words as a QR code (ISO/IEC 18004), drawn as SVG: one unit a square, four units of white around. */
public final class QrPicture {
    private static final int QUIET = 4;

    private QrPicture() {}

    /**
     * The picture.
     *
     * @param text at most a few hundred characters
     */
    public static String svg(String text) {
        BitMatrix squares = squares(text);
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < squares.getHeight(); y++) {
            for (int x = 0; x < squares.getWidth(); x++) {
                if (squares.get(x, y)) {
                    path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                }
            }
        }
        int size = squares.getWidth();
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + size + " " + size
                + "\" shape-rendering=\"crispEdges\" role=\"img\"><rect width=\"" + size + "\" height=\"" + size
                + "\" fill=\"#fff\"/><path fill=\"#000\" d=\"" + path + "\"/></svg>";
    }

    private static BitMatrix squares(String text) {
        Map<EncodeHintType, Object> hints = Map.of(
                EncodeHintType.MARGIN,
                QUIET,
                EncodeHintType.CHARACTER_SET,
                "UTF-8",
                EncodeHintType.ERROR_CORRECTION,
                ErrorCorrectionLevel.M);
        try {
            return new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, hints);
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("a QR code cannot hold " + text.length() + " characters", tooLong);
        }
    }
}
