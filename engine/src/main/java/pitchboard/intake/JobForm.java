package pitchboard.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchboard.brief.Brief;
import pitchboard.brief.Paper;
import pitchboard.brief.Title;
import pitchboard.intake.form.ChoiceForm;
import pitchboard.intake.form.Conversion;
import pitchboard.intake.form.Fields;
import pitchboard.intake.form.Forms;
import pitchboard.intake.form.GroupForm;
import pitchboard.intake.form.Key;
import pitchboard.intake.form.Lines;
import pitchboard.intake.form.Proof;
import pitchboard.intake.measured.SiteForm;
import pitchboard.intake.wanted.Wanted;
import pitchboard.intake.wanted.WantedForm;
import pitchboard.intake.written.Written;
import pitchboard.measure.Graduation;
import pitchboard.measure.Tape;
import pitchboard.site.Site;

/** The whole job file: the lines at its top, what was measured, what is wanted. */
final class JobForm extends GroupForm<Notes> {
    private static final Key<String> JOB =
            Key.needed("job", Forms.words(80, "Stair to the sail loft"), "what the job is called on every sheet");
    private static final Key<String> FOR = title("for", "for whom", "Heron Lake Rowing Club");
    private static final Key<String> PLACE = title("place", "where the stair will stand", "boathouse, east gable");
    private static final Key<String> DATE =
            title("date", "the date to print; the program never looks at a clock", "14 May 2027");
    private static final Key<Tape.Units> UNITS = Key.needed(
            "units",
            ChoiceForm.of("inches", Tape.Units.INCHES).or("millimetres", Tape.Units.MILLIMETRES),
            "what a number without a unit counts, and what the sheets are dimensioned in");
    private static final Key<Graduation> MARK_TO = Key.defaulting(
            "mark to",
            Forms.graduation(),
            "the finest line of the tape that is marked to, in the units above",
            "1/16\" or 1 mm",
            units -> units == Tape.Units.INCHES ? Graduation.SIXTEENTH_INCH : Graduation.MILLIMETRE);
    private static final Key<Paper> PAPER = Key.defaulting(
            "paper",
            ChoiceForm.of("letter", Paper.LETTER).or("A4", Paper.A4),
            "what the sheets are printed on",
            "letter with inches, A4 with millimetres",
            units -> units == Tape.Units.INCHES ? Paper.LETTER : Paper.A4);
    private static final Key<Optional<String>> LOCAL_CHANGES = Key.open(
            "local changes",
            Forms.words(200, "local/county-changes.yaml"),
            "a file with the local changes to the rulebook, found from where the job file is",
            "the rulebook as it is printed");
    private static final Key<List<LocalChanges.Change>> LOCAL_LIMITS = Key.defaulting(
            "local limits",
            Forms.list(new AmendmentForm(), 1, 200),
            "local changes to the rulebook that hold for this job",
            "the rulebook as it is printed, or as the file above changes it",
            units -> List.of());
    private static final Key<Site> MEASURED = Key.needed("measured", new SiteForm(), "what was measured on site");
    private static final Key<Wanted> WANTED = Key.needed("wanted", new WantedForm(), "what is wanted");

    private final Key<String> rulebook;

    /** With an empty list of rulebooks any name is taken. */
    JobForm(List<String> rulebooks) {
        this.rulebook =
                Key.needed("rulebook", Names.ofRulebooks(rulebooks), "the rulebook that the stair is judged by");
    }

    private static Key<String> title(String name, String meaning, String example) {
        return Key.defaulting(name, Forms.words(80, example), meaning, "nothing", units -> "");
    }

    @Override
    public List<Key<?>> keys() {
        return List.of(
                JOB, FOR, PLACE, DATE, UNITS, MARK_TO, PAPER, rulebook, LOCAL_CHANGES, LOCAL_LIMITS, MEASURED, WANTED);
    }

    @Override
    public String wanted(Tape.Units units) {
        return "a job file: lines such as `job: Stair to the sail loft`, and the groups `measured:` and `wanted:`";
    }

    @Override
    protected Notes read(Fields lines) {
        Tape.Units units = lines.get(UNITS);
        Fields in = lines.areSound(UNITS) ? lines.in(units) : lines;
        Title title = new Title(in.get(JOB), in.get(FOR), in.get(PLACE), in.get(DATE));
        Tape tape = tape(in.get(MARK_TO));
        Paper paper = in.get(PAPER);
        Brief brief = in.get(WANTED).brief(title, tape, paper);
        return new Notes(in.get(MEASURED), brief, in.get(rulebook), in.get(LOCAL_CHANGES), in.get(LOCAL_LIMITS));
    }

    static Optional<Tape.Units> findUnits(Written.Group job) {
        return job.findEntry(UNITS.name()).flatMap(entry -> UNITS.form().read(entry.value(), Proof.begin()));
    }

    static Written.Group inUnits(Written.Group job, Tape.Units from, Tape.Units to) {
        Written.Group lengths = (Written.Group) new JobForm(List.of()).converted(job, new Conversion(from, to));
        List<Written.Entry> entries = new ArrayList<>();
        for (Written.Entry entry : lengths.entries()) {
            boolean isUnits = entry.key().equals(UNITS.name());
            entries.add(
                    isUnits
                            ? new Written.Entry(
                                    entry.at(), entry.key(), UNITS.form().write(to, to))
                            : entry);
        }
        return new Written.Group(job.at(), entries);
    }

    private static Tape tape(Graduation markTo) {
        return new Tape(markTo.isOfTheInch() ? Tape.Units.INCHES : Tape.Units.MILLIMETRES, markTo);
    }

    @Override
    protected void write(Notes notes, Lines out) {
        Brief brief = notes.brief();
        out.put(JOB, brief.title().job());
        out.put(FOR, brief.title().client());
        out.put(PLACE, brief.title().place());
        out.put(DATE, brief.title().date());
        out.put(UNITS, brief.tape().units());
        out.put(MARK_TO, brief.tape().graduation());
        out.put(PAPER, brief.paper());
        out.put(rulebook, notes.rulebook());
        out.put(LOCAL_CHANGES, notes.localChanges());
        out.put(LOCAL_LIMITS, notes.localLimits());
        out.put(MEASURED, notes.site());
        out.put(WANTED, Wanted.of(brief));
    }
}
