package pitchboard.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.SynchronizedTree;
import com.sun.source.util.TreeScanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.lang.model.element.Modifier;
import javax.lang.model.type.TypeKind;

/** What the engine must not contain and compiled classes do not show: float arithmetic and locks. */
final class EngineSources {
    private EngineSources() {}

    static List<String> reports(Path folder) {
        List<String> reports = new ArrayList<>();
        for (CompilationUnitTree file : Sources.read(Project.javaFiles(folder)).files()) {
            new Search(Sources.nameOf(file), reports).scan(file, null);
        }
        return reports;
    }

    private static final class Search extends TreeScanner<Void, Void> {
        private final String file;
        private final List<String> reports;
        private String method = "(outside methods)";

        Search(String file, List<String> reports) {
            this.file = file;
            this.reports = reports;
        }

        @Override
        public Void visitMethod(MethodTree tree, Void nothing) {
            String outer = method;
            method = tree.getName().toString();
            if (tree.getModifiers().getFlags().contains(Modifier.SYNCHRONIZED)) {
                report("is synchronized");
            }
            super.visitMethod(tree, null);
            method = outer;
            return null;
        }

        @Override
        public Void visitPrimitiveType(PrimitiveTypeTree tree, Void nothing) {
            if (tree.getPrimitiveTypeKind() == TypeKind.FLOAT) {
                report("uses float");
            }
            return super.visitPrimitiveType(tree, null);
        }

        @Override
        public Void visitLiteral(LiteralTree tree, Void nothing) {
            if (tree.getValue() instanceof Float) {
                report("uses float");
            }
            return super.visitLiteral(tree, null);
        }

        @Override
        public Void visitSynchronized(SynchronizedTree tree, Void nothing) {
            report("is synchronized");
            return super.visitSynchronized(tree, null);
        }

        private void report(String what) {
            reports.add(file + ": " + method + " " + what);
        }
    }
}
