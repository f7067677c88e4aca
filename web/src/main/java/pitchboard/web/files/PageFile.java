package pitchboard.web.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Optional;
import java.util.zip.GZIPOutputStream;

/**
 * A file of the page.
 *
 * @param type as the header Content-Type says it
 * @param tag changes when the bytes do
 * @param zipped the same with gzip; empty when that saves nothing
 */
@SuppressWarnings("ArrayRecordComponent") // read once and handed on; nobody compares or changes it
public record PageFile(String type, byte[] bytes, String tag, Optional<byte[]> zipped) {
    public static PageFile of(String type, byte[] bytes) {
        byte[] zipped = zip(bytes);
        boolean smaller = zipped.length < bytes.length * 0.9;
        return new PageFile(type, bytes, tag(bytes), smaller ? Optional.of(zipped) : Optional.empty());
    }

    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static byte[] zip(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static String tag(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return Base64.getUrlEncoder()
                    .withoutPadding()
                    .encodeToString(digest)
                    .substring(0, 22);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
