package pitchboard.strength.eurocode;

import java.util.ArrayList;
import java.util.List;
import pitchboard.source.Clause;
import pitchboard.strength.Answer;
import pitchboard.strength.Stress;

/**
 * Strength classes of solid timber. One line each: {@code fm ft,0 ft,90 fc,0 fc,90 fv E0,mean E0,05 E90,mean G,mean} in
 * N/mm², then the densities {@code rho,k rho,mean} in kg/m³.
 */
public final class En338 {
    private static final String OF_2016 = """
            C14 | 14 | 7.2 | 0.4 | 16 | 2.0 | 3.0 | 7000 | 4700 | 230 | 440 | 290 | 350
            C16 | 16 | 8.5 | 0.4 | 17 | 2.2 | 3.2 | 8000 | 5400 | 270 | 500 | 310 | 370
            C18 | 18 | 10 | 0.4 | 18 | 2.2 | 3.4 | 9000 | 6000 | 300 | 560 | 320 | 380
            C20 | 20 | 11.5 | 0.4 | 19 | 2.3 | 3.6 | 9500 | 6400 | 320 | 590 | 330 | 400
            C22 | 22 | 13 | 0.4 | 20 | 2.4 | 3.8 | 10000 | 6700 | 330 | 630 | 340 | 410
            C24 | 24 | 14.5 | 0.4 | 21 | 2.5 | 4.0 | 11000 | 7400 | 370 | 690 | 350 | 420
            C27 | 27 | 16.5 | 0.4 | 22 | 2.5 | 4.0 | 11500 | 7700 | 380 | 720 | 360 | 430
            C30 | 30 | 19 | 0.4 | 24 | 2.7 | 4.0 | 12000 | 8000 | 400 | 750 | 380 | 460
            C35 | 35 | 22.5 | 0.4 | 25 | 2.7 | 4.0 | 13000 | 8700 | 430 | 810 | 390 | 470
            C40 | 40 | 26 | 0.4 | 27 | 2.8 | 4.0 | 14000 | 9400 | 470 | 880 | 400 | 480
            C45 | 45 | 30 | 0.4 | 29 | 2.9 | 4.0 | 15000 | 10100 | 500 | 940 | 410 | 490
            C50 | 50 | 33.5 | 0.4 | 30 | 3.0 | 4.0 | 16000 | 10700 | 530 | 1000 | 430 | 520
            D30 | 30 | 18 | 0.6 | 24 | 5.3 | 3.9 | 11000 | 9200 | 730 | 690 | 530 | 640
            D40 | 40 | 24 | 0.6 | 27 | 5.5 | 4.2 | 13000 | 10900 | 870 | 810 | 550 | 660
            """;

    /** Its shear values are those of timber with cracks: they go without the crack factor. */
    private static final String OF_2003 = """
            C16 | 16 | 10 | 0.5 | 17 | 2.2 | 1.8 | 8000 | 5400 | 270 | 500 | 310 | 370
            C18 | 18 | 11 | 0.5 | 18 | 2.2 | 2.0 | 9000 | 6000 | 300 | 560 | 320 | 380
            C24 | 24 | 14 | 0.5 | 21 | 2.5 | 2.5 | 11000 | 7400 | 370 | 690 | 350 | 420
            C30 | 30 | 18 | 0.6 | 23 | 2.7 | 3.0 | 12000 | 8000 | 400 | 750 | 380 | 460
            """;

    private static final List<StrengthClass> CLASSES = read(OF_2016, Eurocode.CLASSES.read("Table 1"), false);
    private static final List<StrengthClass> OLDER = read(OF_2003, Eurocode.OLDER_CLASSES.read("Table 1"), true);

    private En338() {}

    private static List<StrengthClass> read(String table, Clause source, boolean cracksInside) {
        List<StrengthClass> classes = new ArrayList<>();
        for (String line : table.strip().split("\n", -1)) {
            String[] cells = line.split(" \\| ", -1);
            classes.add(new StrengthClass(
                    cells[0],
                    stress(cells[1]),
                    stress(cells[2]),
                    stress(cells[4]),
                    stress(cells[5]),
                    stress(cells[6]),
                    stress(cells[7]),
                    stress(cells[8]),
                    stress(cells[9]),
                    stress(cells[10]),
                    Double.parseDouble(cells[11]),
                    cracksInside,
                    source));
        }
        return List.copyOf(classes);
    }

    private static Stress stress(String cell) {
        return new Stress(Double.parseDouble(cell));
    }

    /** Every class of the present edition. */
    public static List<String> names() {
        return CLASSES.stream().map(StrengthClass::name).toList();
    }

    public static Answer<StrengthClass> find(String name) {
        return find(name, CLASSES);
    }

    /** A class as the edition of 2003 has it. */
    public static Answer<StrengthClass> findOlder(String name) {
        return find(name, OLDER);
    }

    private static Answer<StrengthClass> find(String name, List<StrengthClass> classes) {
        return classes.stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .map(Answer::known)
                .orElseGet(() -> Answer.unknown("there is no strength class " + name + "; there are "
                        + String.join(
                                ", ", classes.stream().map(StrengthClass::name).toList())));
    }
}
