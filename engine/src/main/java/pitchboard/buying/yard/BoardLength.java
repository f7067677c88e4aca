package pitchboard.buying.yard;

import java.util.Optional;
import pitchboard.measure.Length;

/**
 * A length that a stock is sold in.
 *
 * @param nominal as it is called and paid for
 * @param price of its own; empty when that of the stock holds
 * @param inStock how many the yard has; empty for as many as wanted
 */
public record BoardLength(Length nominal, Optional<Price> price, Optional<Integer> inStock) {}
