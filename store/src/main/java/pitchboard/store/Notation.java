package pitchboard.store;

import java.nio.file.Path;
import java.util.Locale;
import pitchboard.intake.written.JsonReader;
import pitchboard.intake.written.JsonWriter;
import pitchboard.intake.written.Problem;
import pitchboard.intake.written.Spot;
import pitchboard.intake.written.Transcript;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.YamlWriter;

/** How a text is written down: as people write by hand, or as programs do. */
public enum Notation {
    YAML,
    JSON;

    /** JSON when the file's name ends in {@code .json}, YAML otherwise. */
    public static Notation of(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".json") ? JSON : YAML;
    }

    /** Reads a text for its shape. */
    public Transcript read(String text) {
        if (text.isBlank()) {
            return new Transcript.Illegible(new Problem(Spot.START, "", "", "something in the file: it is empty"));
        }
        return this == JSON ? JsonReader.read(text) : YamlReader.read(text);
    }

    public String write(Written.Group written) {
        return this == JSON ? JsonWriter.write(written) : YamlWriter.write(written);
    }
}
