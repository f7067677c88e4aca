package pitchboard.costing;

import pitchboard.money.Money;

/** A part of the price, and when it is due. */
public record Payment(String when, Money amount) {}
