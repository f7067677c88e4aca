package pitchboard.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;

/** Reads a file for its shape: JSON when its name ends in {@code .json}, YAML otherwise. */
final class WrittenFile {
    /** No job written by hand comes near it. */
    static final int MOST_BYTES = 1 << 20;

    private WrittenFile() {}

    /** Its text, of a file that could be read for its shape before. */
    static String text(Path file) throws FileTrouble {
        try {
            return decoded(bytes(file));
        } catch (CharacterCodingException bad) {
            throw FileTrouble.of(file, bad);
        }
    }

    static Transcript read(Path file) throws FileTrouble {
        byte[] bytes = bytes(file);
        if (bytes.length > MOST_BYTES) {
            return illegible(Spot.NOWHERE, "a file of at most 1 MiB");
        }
        String text;
        try {
            text = decoded(bytes);
        } catch (CharacterCodingException bad) {
            return notUtf8(bytes);
        }
        return Notation.of(file).read(text);
    }

    /** At most one byte more than is taken, however large the file is or claims to be. */
    private static byte[] bytes(Path file) throws FileTrouble {
        if (Files.isDirectory(file)) {
            throw new FileTrouble(file, "this is a folder, not a file");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(MOST_BYTES + 1);
        } catch (IOException cause) {
            throw FileTrouble.of(file, cause);
        }
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        String text = utf8().decode(ByteBuffer.wrap(bytes)).toString();
        boolean marked = !text.isEmpty() && text.charAt(0) == '\ufeff';
        return marked ? text.substring(1) : text;
    }

    private static CharsetDecoder utf8() {
        return StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
    }

    private static Transcript notUtf8(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer before = CharBuffer.allocate(bytes.length + 1);
        utf8().decode(in, before, true);
        int at = in.position();
        String read = before.flip().toString();
        int line = 1 + (int) read.chars().filter(c -> c == '\n').count();
        int column = read.length() - (read.lastIndexOf('\n') + 1) + 1;
        String code = String.format(Locale.ROOT, "0x%02X", bytes[at]);
        String expected = "text saved as UTF-8: byte " + (at + 1) + " of the file (" + code + ") is not";
        return illegible(new Spot(line, column), expected);
    }

    private static Transcript illegible(Spot at, String expected) {
        return new Transcript.Illegible(new Problem(at, "", "", expected));
    }
}
