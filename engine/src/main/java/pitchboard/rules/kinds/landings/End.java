package pitchboard.rules.kinds.landings;

import pitchboard.rules.Fact;
import pitchboard.rules.Place;
import pitchboard.site.Landing;
import pitchboard.site.Site;

/** An end of the flight. */
public enum End {
    TOP("top") {
        @Override
        Landing landing(Site site) {
            return site.top();
        }
    },
    BOTTOM("bottom") {
        @Override
        Landing landing(Site site) {
            return site.bottom();
        }
    };

    private final String word;

    End(String word) {
        this.word = word;
    }

    /** What is measured at this end. */
    Fact fact(Fact atTop, Fact atBottom) {
        return this == TOP ? atTop : atBottom;
    }

    abstract Landing landing(Site site);

    String id(String kind) {
        return word + "-landing-" + kind;
    }

    String landingWords() {
        return "the " + word + " landing";
    }

    Place place() {
        return Place.named(landingWords());
    }
}
