package pitchboard.costing;

import java.util.Optional;
import pitchboard.money.Money;

/**
 * One line of cost.
 *
 * @param working how it was come by: quantities, rule, source
 * @param cost to the coin; empty when a price is missing
 */
public record CostLine(LineKind kind, String what, String working, Optional<Money> cost) {}
