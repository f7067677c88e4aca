package pitchboard.web.along;

import java.util.Base64;
import pitchboard.web.files.PageFile;

/** Files as addresses that hold them (RFC 2397). */
final class DataUrl {
    private DataUrl() {}

    static String of(PageFile file) {
        return of(file.type(), file.bytes());
    }

    static String of(String type, byte[] bytes) {
        return "data:" + type.replace(" ", "") + ";base64,"
                + Base64.getEncoder().encodeToString(bytes);
    }
}
