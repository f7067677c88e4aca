package pitchboard.strength.fasteners;

import pitchboard.source.Source;
import pitchboard.strength.Force;
import pitchboard.strength.timber.Nds;

/** A fastener sheared and pulled at once, NDS 2018 12.4, from memory. */
public final class Combined {
    public static final Source SOURCE = Nds.SPECIFICATION.memory("12.4");

    private Combined() {}

    /**
     * Lag and wood screws: {@code Zα′ = W′p Z′ / (W′p cos²α + Z′ sin²α)}, in the direction of the load.
     *
     * @param withdrawal what the whole length in the wood may be pulled with, {@code W′p}
     * @param lateral {@code Z′}
     * @param degrees from the wood's surface to the load: 0 is all shear, 90 all pull
     */
    public static Force screw(Force withdrawal, Force lateral, double degrees) {
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        double w = withdrawal.newtons();
        double z = lateral.newtons();
        return new Force(w * z / (w * cos * cos + z * sin * sin));
    }

    /** Nails: {@code Zα′ = W′p Z′ / (W′p cos α + Z′ sin α)}; both shares add up to one. */
    public static Force nail(Force withdrawal, Force lateral, double degrees) {
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        double w = withdrawal.newtons();
        double z = lateral.newtons();
        return new Force(w * z / (w * cos + z * sin));
    }
}
