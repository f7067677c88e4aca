package pitchboard.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Java sources, read but not compiled: what they say and on which lines. */
record Sources(List<CompilationUnitTree> files, SourcePositions positions) {
    static Sources read(List<Path> paths) {
        if (paths.isEmpty()) {
            return new Sources(List.of(), null);
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(paths));
            List<CompilationUnitTree> files = new ArrayList<>();
            task.parse().forEach(files::add);
            return new Sources(files, Trees.instance(task).getSourcePositions());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String nameOf(CompilationUnitTree file) {
        return Path.of(file.getSourceFile().getName()).getFileName().toString();
    }
}
