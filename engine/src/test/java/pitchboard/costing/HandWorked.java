package pitchboard.costing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pitchboard.OrdinaryJob;
import pitchboard.buying.cutting.Proof;
import pitchboard.buying.order.BuyingList;
import pitchboard.buying.order.StockOrder;
import pitchboard.buying.yard.BadEnd;
import pitchboard.buying.yard.Saw;
import pitchboard.buying.yard.Splicing;
import pitchboard.buying.yard.Stock;
import pitchboard.buying.yard.Yard;
import pitchboard.measure.Length;
import pitchboard.measure.Ratio;
import pitchboard.measure.Tape;
import pitchboard.money.Currency;
import pitchboard.money.Day;
import pitchboard.money.Money;
import pitchboard.parts.PartMaker;
import pitchboard.stair.Stair;

/** What the quotes that are worked by hand are made from. */
public final class HandWorked {
    public static final Currency USD = new Currency("USD", 2);
    public static final Day QUOTED = new Day(2027, 5, 14);

    private HandWorked() {}

    public static Money usd(String amount) {
        return new Money(new BigDecimal(amount), USD);
    }

    public static Estimator.Built stair() {
        Stair stair = OrdinaryJob.ofRise(Length.inches(105)).stair(14, Length.inches(10));
        return new Estimator.Built(stair, PartMaker.partsOf(stair));
    }

    public static BuyingList lumber(Optional<Money> cost) {
        Stock stock = new Stock(
                "2x12",
                Length.inches(1, 1, 2),
                Length.inches(11, 1, 4),
                new Stock.Wood("", "", ""),
                List.of(),
                Length.ZERO,
                BadEnd.NONE,
                Optional.empty(),
                List.of());
        Saw saw = new Saw(Length.ZERO, Length.ZERO, Length.inches(12));
        Yard yard = new Yard(
                "the yard",
                "",
                new Day(2027, 5, 3),
                USD,
                Tape.Units.INCHES,
                saw,
                Splicing.NEVER,
                List.of(stock),
                List.of());
        Proof proof = new Proof(30000, true, true, true, 1);
        return new BuyingList(
                yard, List.of(new StockOrder(stock, List.of(), List.of(), List.of(), cost, cost, proof)), List.of());
    }

    public static List<Pack> packs() {
        return new ArrayList<>(List.of(
                new Pack(Sundry.TREAD_SCREWS, "box of 25", Ratio.of(25), usd("4.10")),
                new Pack(Sundry.TREAD_SCREWS, "box of 100", Ratio.of(100), usd("12.80")),
                new Pack(Sundry.ADHESIVE, "10 oz", Pack.beadOf(Ratio.of(10)), usd("5.20")),
                new Pack(Sundry.ADHESIVE, "28 oz", Pack.beadOf(Ratio.of(28)), usd("9.90")),
                new Pack(Sundry.CONCRETE, "80 lb", Pack.concreteOf(Ratio.of(80)), usd("6.95"))));
    }

    public static Rates rates(List<Pack> packs) {
        return new Rates(
                "our rates",
                new Day(2027, 4, 1),
                USD,
                2,
                usd("46.00"),
                Map.of(Task.TREAD, Ratio.of(1, 4)),
                Ratio.of(1, 10),
                packs,
                Optional.of(new Pad(Length.feet(4), Length.feet(4), Length.inches(4), Length.ZERO)),
                0,
                List.of(new Extra("delivery", usd("60"))),
                Ratio.of(12, 100),
                Ratio.of(10, 100),
                Map.of(LineKind.LUMBER, Ratio.of(7, 100), LineKind.SUNDRIES, Ratio.of(7, 100)),
                usd("5"),
                Ratio.of(30, 100),
                List.of(new Stage("when the timber is on site", Ratio.of(40, 100))),
                30,
                60,
                new Rates.Wording(List.of(), List.of(), List.of()));
    }
}
