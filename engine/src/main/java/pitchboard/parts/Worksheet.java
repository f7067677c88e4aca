package pitchboard.parts;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Figure;
import pitchboard.stair.Stair;

/** Every figure of a stair with its working, in the order a crew would work it out by hand. */
public final class Worksheet {
    /** Figures that belong together. */
    public record Section(String title, List<Figure> figures) {
        public Section {
            figures = List.copyOf(figures);
        }
    }

    private Worksheet() {}

    public static List<Section> of(Stair stair) {
        StepFigures steps = new StepFigures(stair);
        WoodFigures wood = new WoodFigures(stair);
        List<Section> sections = new ArrayList<>(List.of(
                new Section("Total rise", steps.totalRise()),
                new Section("Steps", steps.steps()),
                new Section("Treads and nosing", steps.treads()),
                new Section("Foot", wood.foot()),
                new Section("Stringer", wood.stringer()),
                new Section("Head", wood.head()),
                new Section("Frame and checks", wood.frame())));
        List<Figure> rails = new RailFigures(stair).figures();
        if (!rails.isEmpty()) {
            sections.add(new Section("Guard and handrail", rails));
        }
        List<Figure> edges = new EdgeFigures(stair).figures();
        if (!edges.isEmpty()) {
            sections.add(new Section("Guard along the edge above", edges));
        }
        return List.copyOf(sections);
    }
}
