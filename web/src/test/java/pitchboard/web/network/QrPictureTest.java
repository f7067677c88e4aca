package pitchboard.web.network;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

final class QrPictureTest {
    private static final int SCALE = 4;

    @Test
    void a_reader_finds_the_words_in_the_picture_again() throws Exception {
        String words = "http://192.168.1.5:4680/#pair/ABCD2345";
        String svg = QrPicture.svg(words);
        int size = Integer.parseInt(svg.replaceAll("(?s).*viewBox=\"0 0 (\\d+) .*", "$1"));
        int side = size * SCALE;
        int[] pixels = new int[side * side];
        Arrays.fill(pixels, 0xffffff);
        Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(svg).results().forEach(square -> fill(pixels, side, square));
        BinaryBitmap picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
        assertThat(new QRCodeReader().decode(picture).getText()).isEqualTo(words);
    }

    private static void fill(int[] pixels, int side, MatchResult square) {
        int x = SCALE * Integer.parseInt(square.group(1));
        int y = SCALE * Integer.parseInt(square.group(2));
        for (int row = y; row < y + SCALE; row++) {
            Arrays.fill(pixels, row * side + x, row * side + x + SCALE, 0);
        }
    }
}
