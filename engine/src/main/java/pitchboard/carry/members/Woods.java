package pitchboard.carry.members;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.measure.Length;
import pitchboard.site.Site;
import pitchboard.strength.Answer;
import pitchboard.strength.Section;
import pitchboard.strength.eurocode.Designing;
import pitchboard.strength.eurocode.En338;
import pitchboard.strength.eurocode.Service;
import pitchboard.strength.timber.Adjusting;
import pitchboard.strength.timber.Conditions;
import pitchboard.strength.timber.LumberSize;
import pitchboard.strength.timber.Supplement2018;

/** Of what wood the members are and how it is used: what was said, and what is assumed where nothing was. */
public record Woods(Strength said, Site.Setting setting) {
    /** The weakest that deck guides list and yards commonly sell: what passes with it passes with any of them. */
    private static final Strength.Wood WEAKEST_GRADED = new Strength.Wood.Graded("Northern Species", "No.1/No.2");

    private static final Strength.Wood WEAKEST_CLASSED = new Strength.Wood.Classed("C16");

    /** Take up preservative without cuts in their surface, or last without any. */
    private static final List<String> SOAKS = List.of("Southern Pine");

    private static final List<String> LASTS = List.of("Redwood", "Western Cedars", "Northern Species");

    /** The strongest that yards commonly sell. */
    private static final Strength.Wood BEST_GRADED = new Strength.Wood.Graded("Douglas Fir-Larch", "Select Structural");

    private static final Strength.Wood BEST_CLASSED = new Strength.Wood.Classed("C30");

    boolean isEurocode() {
        return said.method() == Strength.Method.EUROCODE_5;
    }

    private Strength.Wood weakest() {
        return isEurocode() ? WEAKEST_CLASSED : WEAKEST_GRADED;
    }

    Strength.Wood stringers() {
        return said.stringers().orElse(weakest());
    }

    Strength.Wood treads() {
        return said.treads().or(said::stringers).orElse(weakest());
    }

    Strength.Wood header() {
        return said.header().orElse(weakest());
    }

    Strength.Wood posts() {
        return said.posts().or(said::stringers).orElse(weakest());
    }

    Strength.Wood bestOr(Optional<Strength.Wood> named) {
        return named.orElse(best());
    }

    public boolean postsAreAssumed() {
        return said.posts().or(said::stringers).isEmpty();
    }

    public boolean stringersAreAssumed() {
        return said.stringers().isEmpty();
    }

    public boolean treadsAreAssumed() {
        return said.treads().or(said::stringers).isEmpty();
    }

    /** A board of the stringers' wood. */
    public Answer<Material> stringer(Length thickness, Length depth) {
        return board(stringers(), thickness, depth);
    }

    /** A piece of the guard's wood, or of the supports'. */
    public Answer<Material> post(Length thickness, Length width) {
        return board(posts(), Length.min(thickness, width), Length.max(thickness, width));
    }

    /** The same of the strongest wood, where nobody said of what wood it is. */
    public Optional<Material> findBestPost(Length thickness, Length width) {
        return postsAreAssumed()
                ? find(board(best(), Length.min(thickness, width), Length.max(thickness, width)))
                : Optional.empty();
    }

    /** A board of the treads' wood. */
    public Answer<Material> tread(Length thickness, Length width) {
        return board(treads(), thickness, width);
    }

    private Answer<Material> board(Strength.Wood wood, Length thickness, Length width) {
        if (wood instanceof Strength.Wood.Graded graded) {
            return LumberSize.of(thickness, width)
                    .then(size -> Supplement2018.table()
                            .find(graded.species(), graded.grade(), size)
                            .then(values -> Adjusting.of(values, size, conditions(graded.species()))))
                    .map(Graded::new);
        }
        return En338.find(((Strength.Wood.Classed) wood).name())
                .map(timber -> new Designing(timber, eurocodeService(), Service.Duration.MEDIUM, said.sharing()))
                .map(design -> new Classed(design, new Section(thickness, width)));
    }

    Strength.Service service() {
        return said.service().orElse(setting == Site.Setting.OUTDOORS ? Strength.Service.WET : Strength.Service.DRY);
    }

    private Service eurocodeService() {
        return switch (service()) {
            case DRY -> Service.CLASS_1;
            case DAMP -> Service.CLASS_2;
            case WET -> Service.CLASS_3;
        };
    }

    private Conditions conditions(String species) {
        Conditions wet = service() == Strength.Service.WET
                ? Conditions.ORDINARY.with(Conditions.Moisture.WET)
                : Conditions.ORDINARY;
        Conditions treated = wet.with(
                switch (treatment(species)) {
                    case NONE -> Conditions.Treatment.NONE;
                    case PRESERVED -> Conditions.Treatment.PRESERVED;
                    case INCISED -> Conditions.Treatment.INCISED;
                });
        return said.sharing() ? treated.with(Conditions.Sharing.REPETITIVE) : treated;
    }

    private Strength.Treatment treatment(String species) {
        return said.treatment().orElseGet(() -> {
            if (setting == Site.Setting.INDOORS || LASTS.contains(species)) {
                return Strength.Treatment.NONE;
            }
            return SOAKS.contains(species) ? Strength.Treatment.PRESERVED : Strength.Treatment.INCISED;
        });
    }

    private Strength.Wood best() {
        return isEurocode() ? BEST_CLASSED : BEST_GRADED;
    }

    public String bestName() {
        return name(best());
    }

    /** The same board of the strongest wood, where nobody said of what wood the stringers are. */
    public Optional<Material> findBestStringer(Length thickness, Length depth) {
        return stringersAreAssumed() ? find(board(best(), thickness, depth)) : Optional.empty();
    }

    public Optional<Material> findBestTread(Length thickness, Length width) {
        return treadsAreAssumed() ? find(board(best(), thickness, width)) : Optional.empty();
    }

    private static Optional<Material> find(Answer<Material> board) {
        return board.match(Optional::of, because -> Optional.empty());
    }

    public List<String> assumptions() {
        List<String> words = new ArrayList<>();
        if (stringersAreAssumed()) {
            words.add("Nobody said of what wood the stringers are: reckoned with " + name(stringers())
                    + ", the weakest that is commonly sold. Better wood carries more.");
        }
        if (said.treads().isEmpty()) {
            words.add("Nobody said of what wood the treads are: reckoned with that of the stringers.");
        }
        if (said.header().isEmpty()) {
            words.add("Nobody said of what wood the header is: its fasteners are reckoned in " + name(weakest())
                    + ", in which they hold least.");
        }
        moisture().ifPresent(words::add);
        treatmentWords().ifPresent(words::add);
        if (!said.sharing()) {
            words.add("No member is counted on to help its neighbours.");
        }
        return words;
    }

    private Optional<String> moisture() {
        if (said.service().isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                setting == Site.Setting.OUTDOORS
                        ? "The stair is outdoors: the wood is taken to be wet in use."
                        : "The stair is indoors: the wood is taken to stay dry.");
    }

    private Optional<String> treatmentWords() {
        if (isEurocode() || said.treatment().isPresent() || setting == Site.Setting.INDOORS) {
            return Optional.empty();
        }
        String species = ((Strength.Wood.Graded) stringers()).species();
        return Optional.of(
                switch (treatment(species)) {
                    case NONE -> species + " outdoors is taken not to be incised.";
                    case PRESERVED -> species + " outdoors is taken to be treated without incising, as is common.";
                    case INCISED -> species + " outdoors is taken to be treated through incising, as is common.";
                });
    }

    private static String name(Strength.Wood wood) {
        return wood instanceof Strength.Wood.Graded graded
                ? graded.species() + " " + graded.grade()
                : ((Strength.Wood.Classed) wood).name();
    }
}
