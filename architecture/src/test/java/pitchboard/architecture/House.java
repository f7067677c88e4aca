package pitchboard.architecture;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Who may use whom. The list of each package is closed: what it does not name, the package may not use.
 *
 * <p>A row names a module, a package below the root, and the packages it may use. {@code engine} stands for every
 * package of the engine. A package written {@code name..} includes those below it, and they may use each other.
 */
record House(String root, List<Row> rows) {
    /** Read from the ground up: every package uses only packages above it in this table. */
    static final House PITCHBOARD = of("pitchboard", """
            engine    | measure     | nothing
            engine    | source      | measure
            engine    | strength    | measure, source
            engine    | strength.timber | measure, source, strength
            engine    | strength.fasteners | measure, source, strength, strength.timber
            engine    | strength.eurocode | measure, source, strength
            engine    | plane       | measure
            engine    | strength.elements.algebra | nothing
            engine    | strength.elements.mesh | strength.elements.algebra
            engine    | strength.elements | strength.elements.algebra, strength.elements.mesh
            engine    | strength.elements.throat | strength.elements
            engine    | site        | measure
            engine    | brief       | measure, site
            engine    | stair       | measure, source, plane, site, brief
            engine    | railing     | measure, plane, site, brief, stair
            engine    | rules       | measure, source, plane, site, brief, stair
            engine    | rules.kinds.. | measure, source, plane, site, brief, stair, railing, rules
            engine    | rules.books.america | measure, source, brief, rules, rules.kinds..
            engine    | rules.books.europe | measure, source, rules, rules.kinds..
            engine    | rules.books.pacific | measure, source, rules, rules.kinds..
            engine    | rules.books | measure, source, rules, rules.kinds.., rules.books.america, rules.books.europe, rules.books.pacific
            engine    | parts       | measure, source, plane, site, brief, stair, railing
            engine    | carry.joints | measure, source, strength, strength.fasteners
            engine    | carry.members | measure, source, plane, site, brief, stair, rules, rules.kinds.., parts, strength, strength.timber, strength.eurocode, strength.fasteners
            engine    | carry.elements | measure, plane, brief, stair, rules, strength, strength.elements, strength.elements.mesh, strength.elements.throat, carry.members
            engine    | carry.fixings | measure, source, brief, strength, strength.timber, strength.fasteners
            engine    | carry       | measure, source, plane, site, brief, stair, railing, rules, parts, strength, strength.fasteners, strength.elements.throat, carry.members, carry.joints, carry.fixings, carry.elements
            engine    | buying.cutting | nothing
            engine    | buying.relaxing | buying.cutting
            engine    | buying.search | buying.cutting, buying.relaxing
            engine    | money       | measure
            engine    | buying.yard | measure, money
            engine    | buying.need | measure, plane, brief, stair, railing, parts, buying.yard
            engine    | buying.order | measure, money, buying.cutting, buying.search, buying.yard, buying.need
            engine    | sheet       | measure, brief
            engine    | sheet.type  | sheet
            engine    | sheet.drafting | measure, plane, sheet, sheet.type
            engine    | sheet.frame | measure, brief, sheet, sheet.type, sheet.drafting
            engine    | sheet.tiling | sheet, sheet.type, sheet.drafting, sheet.frame
            engine    | sheet.inspection | sheet, sheet.type
            engine    | sheet.table | sheet, sheet.type, sheet.drafting
            engine    | sheet.subject | measure, source, plane, site, brief, stair, railing, rules, parts, carry, sheet, sheet.type, sheet.drafting, sheet.table
            engine    | sheet.rails  | measure, plane, site, brief, stair, railing, rules, parts, sheet, sheet.type, sheet.drafting, sheet.frame, sheet.table, sheet.subject
            engine    | sheet.work   | measure, plane, site, brief, stair, railing, parts, sheet.drafting, sheet.frame, sheet.table, sheet.type, sheet.subject, sheet.rails
            engine    | sheet.strength | measure, source, plane, brief, stair, rules, parts, strength, strength.elements, strength.elements.mesh, strength.elements.throat, carry, carry.elements, carry.members, carry.joints, sheet, sheet.type, sheet.drafting, sheet.frame, sheet.table, sheet.subject
            engine    | sheet.papers | measure, source, plane, site, brief, stair, railing, rules, parts, carry, sheet, sheet.type, sheet.drafting, sheet.frame, sheet.table, sheet.tiling, sheet.subject, sheet.rails, sheet.work, sheet.strength
            engine    | sheet.pictures | measure, source, plane, site, brief, stair, railing, rules, parts, sheet, sheet.type, sheet.drafting, sheet.tiling, sheet.subject
            engine    | sheet.lessons | measure, plane, site, brief, stair, railing, parts, sheet, sheet.drafting, sheet.tiling, sheet.subject, sheet.pictures
            engine    | costing     | measure, money, brief, stair, parts, buying.yard, buying.need, buying.order, buying.cutting
            engine    | afterwards  | measure, money, costing
            engine    | sheet.quote | measure, money, plane, site, brief, stair, railing, parts, costing, afterwards, sheet, sheet.type, sheet.drafting, sheet.frame, sheet.table, sheet.subject, sheet.rails
            engine    | sheet.buying | measure, money, brief, buying.yard, buying.need, buying.order, buying.cutting, sheet, sheet.type, sheet.drafting, sheet.frame, sheet.table
            engine    | intake..    | measure, source, site, brief, rules, money, buying.yard, costing, afterwards, strength.timber, strength.eurocode
            engine    | job         | measure, source, plane, site, brief, stair, railing, rules, parts, carry, sheet, sheet.subject, sheet.papers, sheet.pictures, intake.., buying.yard, buying.need, buying.search, buying.order, sheet.buying, money, costing, afterwards, sheet.quote
            documents | documents.. | engine
            store     | store..     | engine
            app       | app..       | engine, documents.., store..
            cli       | cli..       | engine, app.., store..
            browser   | browser..   | engine, documents..
            web       | web.wire    | engine, documents..
            web       | web.files   | documents.., web.wire
            web       | web.guarding | store.., web.wire
            web       | web.network | store.., web.guarding
            web       | web.live    | documents.., web.guarding
            web       | web.along   | documents.., web.files
            web       | web.api     | engine, documents.., store.., app.., web.wire, web.files, web.guarding, web.network, web.live, web.along
            web       | web         | store.., web.wire, web.files, web.guarding, web.network, web.live, web.along, web.api
            """);

    /** One line of the table. */
    record Row(String module, String name, List<String> uses) {
        boolean covers(String packageName) {
            if (!name.endsWith("..")) {
                return name.equals(packageName);
            }
            String top = name.substring(0, name.length() - 2);
            return packageName.equals(top) || packageName.startsWith(top + ".");
        }
    }

    static House of(String root, String table) {
        return new House(root, table.lines().map(House::row).toList());
    }

    private static Row row(String line) {
        List<String> cells = Stream.of(line.split("\\|")).map(String::strip).toList();
        List<String> uses = cells.get(2).equals("nothing")
                ? List.of()
                : List.of(cells.get(2).split(", *"));
        return new Row(cells.get(0), cells.get(1), uses);
    }

    Optional<Row> findRow(String fullPackageName) {
        if (!fullPackageName.startsWith(root + ".")) {
            return Optional.empty();
        }
        String name = fullPackageName.substring(root.length() + 1);
        return rows.stream().filter(row -> row.covers(name)).findFirst();
    }

    boolean allows(Row user, Row used) {
        return user.equals(used)
                || user.uses().contains(used.name())
                || (user.uses().contains("engine") && used.module().equals("engine"));
    }

    boolean isOwn(String fullPackageName) {
        return fullPackageName.equals(root) || fullPackageName.startsWith(root + ".");
    }

    boolean isEngine(String fullPackageName) {
        return findRow(fullPackageName)
                .filter(row -> row.module().equals("engine"))
                .isPresent();
    }

    /** The table as a page shows it. */
    String asMarkdown() {
        StringBuilder page = new StringBuilder("| Module | Package | May use |\n|---|---|---|\n");
        for (Row row : rows) {
            String uses = row.uses().isEmpty() ? "nothing" : String.join(", ", row.uses());
            page.append("| %s | `%s` | %s |\n".formatted(row.module(), row.name(), uses));
        }
        return page.toString();
    }
}
