package pitchboard.browser;

import java.util.List;
import java.util.function.Supplier;
import pitchboard.documents.json.Json;
import pitchboard.intake.written.Written;
import pitchboard.intake.written.YamlWriter;

/** Writes a job as the text of a job file. */
final class Writing implements Task {
    @Override
    public String name() {
        return "write";
    }

    @Override
    public List<String> keys() {
        return List.of("job");
    }

    @Override
    public Supplier<Json> read(Asked asked) {
        Written.Group job = asked.lines("job", "a job");
        return () -> Json.object().says("yaml", YamlWriter.write(job));
    }
}
