package pitchboard.costing;

import pitchboard.money.Money;

/** A cost that no rule works out: delivery, a permit, a hired saw. */
public record Extra(String what, Money cost) {}
