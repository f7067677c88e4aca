package pitchboard.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import pitchboard.strength.elements.Elements;
import pitchboard.strength.elements.PlateAnswer;

/** Finite elements of a ten-step stringer, warm: mesh, equations and stresses; on one mesh, and on three for their limit. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ElementsBenchmark {
    @State(Scope.Benchmark)
    public static class OneMesh {
        @Param({"0", "1", "2"})
        public int halvings;
    }

    @Benchmark
    public PlateAnswer oneMesh(OneMesh mesh) {
        return Elements.solve(TenSteps.plate(), TenSteps.oneMesh(mesh.halvings));
    }

    @Benchmark
    public PlateAnswer thorough() {
        return Elements.solve(TenSteps.plate(), TenSteps.thorough());
    }
}
