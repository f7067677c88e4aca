package pitchboard.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How long methods and files are. */
final class Sizes {
    /** @param lines of its body, from brace to brace */
    record Method(String file, String name, int lines) {}

    record File(String name, int lines) {}

    private Sizes() {}

    static List<Method> ofMethods(List<Path> paths) {
        Sources sources = Sources.read(paths);
        List<Method> methods = new ArrayList<>();
        for (CompilationUnitTree file : sources.files()) {
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitMethod(MethodTree tree, Void nothing) {
                    if (tree.getBody() != null) {
                        methods.add(new Method(
                                Sources.nameOf(file), tree.getName().toString(), lines(sources, file, tree.getBody())));
                    }
                    return super.visitMethod(tree, null);
                }
            }.scan(file, null);
        }
        return methods;
    }

    static List<File> ofFiles(List<Path> paths) {
        return paths.stream()
                .map(path -> new File(path.getFileName().toString(), (int)
                        Project.text(path).lines().count()))
                .toList();
    }

    private static int lines(Sources sources, CompilationUnitTree file, Tree body) {
        LineMap lines = file.getLineMap();
        long first = lines.getLineNumber(sources.positions().getStartPosition(file, body));
        long last = lines.getLineNumber(sources.positions().getEndPosition(file, body));
        return (int) (last - first + 1);
    }
}
