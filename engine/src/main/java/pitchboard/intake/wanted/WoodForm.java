package pitchboard.intake.wanted;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Strength;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.strength.eurocode.En338;
import pitchboard.strength.timber.Supplement2018;
import pitchboard.strength.timber.ValueTable;

/** What wood something is of, as far as its strength goes. */
final class WoodForm extends GroupForm<Strength.Wood> {
    private static final ValueTable GRADED = Supplement2018.table();
    private static final String GRADED_WOOD = "with graded wood";

    private static final Key<Optional<String>> CLASS = Key.open(
            "class",
            named(En338.names()),
            "the strength class, as EN 338 has it; needed with Eurocode 5",
            "wood graded by species");
    private static final Key<Optional<String>> SPECIES = Key.open(
            "species",
            named(GRADED.species()),
            "the species or group of species on the grade stamp; needed with allowable stress",
            "wood of a strength class");
    private static final Key<Optional<String>> GRADE =
            Key.open("grade", named(grades()), "the grade on the stamp", "wood of a strength class");

    private static ChoiceForm<String> named(List<String> names) {
        ChoiceForm<String> form = ChoiceForm.of(names.get(0), names.get(0));
        for (String name : names.subList(1, names.size())) {
            form = form.or(name, name);
        }
        return form;
    }

    private static List<String> grades() {
        LinkedHashSet<String> grades = new LinkedHashSet<>();
        GRADED.species().forEach(species -> grades.addAll(GRADED.grades(species)));
        return List.copyOf(grades);
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(CLASS, SPECIES, GRADE);
    }

    @Override
    protected Optional<Key<?>> lead() {
        return Optional.of(CLASS);
    }

    @Override
    protected Strength.Wood read(Fields in) {
        if (in.says(CLASS)) {
            String name = in.get(CLASS).orElseGet(() -> En338.names().get(0));
            in.forbid(SPECIES, "beside a strength class");
            in.forbid(GRADE, "beside a strength class");
            return new Strength.Wood.Classed(name);
        }
        String species = in.demand(SPECIES, GRADED_WOOD);
        String grade = in.demand(GRADE, GRADED_WOOD);
        if (!GRADED.grades(species).contains(grade) && in.areSound(SPECIES, GRADE)) {
            in.refuse(GRADE, "a grade of " + species + ": " + String.join(", ", GRADED.grades(species)));
        }
        return new Strength.Wood.Graded(species, grade);
    }

    @Override
    protected void write(Strength.Wood value, Lines out) {
        if (value instanceof Strength.Wood.Classed classed) {
            out.put(CLASS, Optional.of(classed.name()));
        } else if (value instanceof Strength.Wood.Graded graded) {
            out.put(SPECIES, Optional.of(graded.species()));
            out.put(GRADE, Optional.of(graded.grade()));
        }
    }
}
