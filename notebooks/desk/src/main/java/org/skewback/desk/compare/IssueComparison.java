package org.skewback.desk.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.Problem;
import org.skewback.desk.issue.PackageInfo;
import org.skewback.quantity.Graph;
import org.skewback.quantity.Numerals;
import org.skewback.quantity.Quantity;
import org.skewback.quantity.Source;
import org.skewback.sheet.Block;
import org.skewback.sheet.Check;
import org.skewback.sheet.Entry;
import org.skewback.sheet.SheetRecord;

/** Compares two issues by their records. */
public final class IssueComparison {

    private static final int ALL_DIGITS = 17;

    private final ReadIssue before;
    private final ReadIssue now;
    private final Causes causes;
    private final List<Moved> givens = new ArrayList<>();
    private final List<Moved> results = new ArrayList<>();
    private final List<Turned> checks = new ArrayList<>();
    private final List<String> others = new ArrayList<>();
    private final Sentence sentence;

    private IssueComparison(ReadIssue before, ReadIssue now, double mark) {
        this.before = before;
        this.now = now;
        this.causes = new Causes(now.sheets());
        this.sentence = new Sentence(mark);
    }

    /**
     * Compares two issues.
     *
     * @param before the earlier issue, a folder or a PDF
     * @param now the later one
     * @param mark utilisation past which a check is worth a word
     * @return what changed
     * @throws Problem when one is no issue
     */
    public static Comparison of(Path before, Path now, double mark) throws Problem {
        return new IssueComparison(ReadIssue.of(before), ReadIssue.of(now), mark).compare();
    }

    private Comparison compare() {
        Set<String> sheets = new LinkedHashSet<>(before.sheets().keySet());
        sheets.addAll(now.sheets().keySet());
        // All givens first: a sheet may rest on one of a sheet that is read later.
        for (String sheet : sheets) {
            @Nullable SheetRecord old = before.sheets().get(sheet);
            @Nullable SheetRecord fresh = now.sheets().get(sheet);
            if (old == null) {
                others.add("sheet " + name(fresh, sheet) + " is new");
            } else if (fresh == null) {
                others.add("sheet " + name(old, sheet) + " is gone");
            } else {
                givens(sheet, old, fresh);
            }
        }
        for (String sheet : sheets) {
            @Nullable SheetRecord old = before.sheets().get(sheet);
            @Nullable SheetRecord fresh = now.sheets().get(sheet);
            if (old != null && fresh != null) {
                results(sheet, old, fresh);
                checks(sheet, old, fresh);
            }
        }
        List<String> software = software();
        others();
        return new Comparison(
                name(before.info()),
                name(now.info()),
                sentence.of(givens, results, checks, software),
                givens,
                results,
                checks,
                sources(),
                software,
                others);
    }

    private static String name(@Nullable SheetRecord sheet, String otherwise) {
        return sheet == null ? otherwise : ReadIssue.name(sheet);
    }

    private static String name(PackageInfo info) {
        return info.title() + ", " + info.number() + ", revision " + info.revision();
    }

    private void givens(String sheet, SheetRecord old, SheetRecord fresh) {
        Map<String, Quantity> first = ShownQuantities.givens(old);
        Map<String, Quantity> second = ShownQuantities.givens(fresh);
        for (String name : union(first, second)) {
            @Nullable Quantity a = first.get(name);
            @Nullable Quantity b = second.get(name);
            boolean sameValue = same(a, b);
            String source = sourceChange(a, b);
            if (sameValue && source.isEmpty()) {
                continue;
            }
            if (b != null && !sameValue) {
                causes.changed(sheet, name, b);
            }
            givens.add(moved(fresh, name, a, b, source, List.of()));
            sentence.given(name, a, b);
        }
    }

    /** What a taken number cites changes with every issue of the other sheet and says nothing new. */
    private static String sourceChange(@Nullable Quantity a, @Nullable Quantity b) {
        if (a == null || b == null || Objects.equals(a.source(), b.source())) {
            return "";
        }
        @Nullable Source first = a.source();
        @Nullable Source second = b.source();
        boolean taken =
                first != null
                        && second != null
                        && first.kind() == Source.Kind.SHEET
                        && second.kind() == Source.Kind.SHEET
                        && first.reference().equals(second.reference());
        return taken ? "" : cited(first) + " → " + cited(second);
    }

    private static String cited(@Nullable Source source) {
        return source == null ? "no source" : source.toString();
    }

    private void results(String sheet, SheetRecord old, SheetRecord fresh) {
        Map<String, Quantity> first = ShownQuantities.results(old);
        Map<String, Quantity> second = ShownQuantities.results(fresh);
        for (String name : union(first, second)) {
            @Nullable Quantity a = first.get(name);
            @Nullable Quantity b = second.get(name);
            if (!same(a, b)) {
                List<String> chain = b == null ? List.of() : causes.chains(sheet, b, "");
                results.add(moved(fresh, name, a, b, "", chain));
            }
        }
    }

    private static Moved moved(
            SheetRecord sheet,
            String name,
            @Nullable Quantity a,
            @Nullable Quantity b,
            String source,
            List<String> chain) {
        String before = a == null ? "" : Numerals.withUnit(a);
        String now = b == null ? "" : Numerals.withUnit(b);
        if (a != null && b != null && before.equals(now) && !same(a, b)) {
            before = Numerals.withUnit(a, ALL_DIGITS);
            now = Numerals.withUnit(b, ALL_DIGITS);
        }
        return new Moved(ReadIssue.name(sheet), name, before, now, relative(a, b), source, chain);
    }

    private static double relative(@Nullable Quantity a, @Nullable Quantity b) {
        if (a == null || b == null || !a.dimension().equals(b.dimension())) {
            return Double.NaN;
        }
        return a.si() == b.si() ? 0 : (b.si() - a.si()) / Math.abs(a.si());
    }

    private void checks(String sheet, SheetRecord old, SheetRecord fresh) {
        Map<String, Entry> first = ShownQuantities.checks(old);
        Map<String, Entry> second = ShownQuantities.checks(fresh);
        for (String title : union(first, second)) {
            @Nullable Entry a = first.get(title);
            @Nullable Entry b = second.get(title);
            if (a != null && b != null && same(a, b)) {
                continue;
            }
            String number = b != null ? fresh.numbering().name(b) : name(old, a);
            List<String> chain = new ArrayList<>();
            if (b != null) {
                for (Quantity quantity : quantities(b)) {
                    chain.addAll(causes.chains(sheet, quantity, number));
                }
            }
            checks.add(
                    new Turned(
                            ReadIssue.name(fresh),
                            number + ", " + title,
                            a == null ? "" : a.verdict().inWords(),
                            b == null ? "" : b.verdict().inWords(),
                            utilisation(a),
                            utilisation(b),
                            List.copyOf(new LinkedHashSet<>(chain))));
        }
    }

    private static String name(SheetRecord sheet, @Nullable Entry entry) {
        return entry == null ? "" : sheet.numbering().name(entry);
    }

    private static boolean same(Entry a, Entry b) {
        List<Quantity> first = quantities(a);
        List<Quantity> second = quantities(b);
        boolean same = a.verdict() == b.verdict() && first.size() == second.size();
        for (int i = 0; same && i < first.size(); i++) {
            same = same(first.get(i), second.get(i));
        }
        return same;
    }

    private static List<Quantity> quantities(Entry entry) {
        Check check = ((Block.Checked) entry.block()).check();
        List<Quantity> quantities = new ArrayList<>(List.of(check.demand()));
        quantities.addAll(check.limits());
        return quantities;
    }

    private static double utilisation(@Nullable Entry entry) {
        if (entry == null) {
            return Double.NaN;
        }
        @Nullable Quantity utilisation = ((Block.Checked) entry.block()).check().utilisation();
        return utilisation == null ? Double.NaN : utilisation.si();
    }

    private static boolean same(@Nullable Quantity a, @Nullable Quantity b) {
        return a != null && b != null && a.si() == b.si() && a.dimension().equals(b.dimension());
    }

    private static <V> Set<String> union(Map<String, V> first, Map<String, V> second) {
        Set<String> names = new LinkedHashSet<>(second.keySet());
        names.addAll(first.keySet());
        return names;
    }

    private List<String> sources() {
        Map<String, Set<String>> first = cited(before);
        Map<String, Set<String>> second = cited(now);
        List<String> changes = new ArrayList<>();
        for (String reference : new TreeMap<>(merged(first, second)).keySet()) {
            Set<String> a = first.getOrDefault(reference, Set.of());
            Set<String> b = second.getOrDefault(reference, Set.of());
            if (!first.containsKey(reference)) {
                changes.add(reference + " is cited now" + in(b));
            } else if (!second.containsKey(reference)) {
                changes.add(reference + " is cited no more" + in(a));
            } else if (!a.equals(b)) {
                changes.add(reference + ": " + String.join("; ", a) + " → " + String.join("; ", b));
            }
        }
        return changes;
    }

    private static Map<String, Set<String>> merged(
            Map<String, Set<String>> first, Map<String, Set<String>> second) {
        Map<String, Set<String>> merged = new LinkedHashMap<>(first);
        merged.putAll(second);
        return merged;
    }

    private static String in(Set<String> places) {
        String joined = String.join("; ", places);
        return joined.isBlank() ? "" : " (" + joined + ")";
    }

    private static Map<String, Set<String>> cited(ReadIssue issue) {
        Map<String, Set<String>> cited = new TreeMap<>();
        for (SheetRecord sheet : issue.sheets().values()) {
            for (Quantity node : Graph.ordered(sheet.quantities())) {
                @Nullable Source source = node.source();
                if (source != null && source.kind() != Source.Kind.SHEET) {
                    cited.computeIfAbsent(
                                    source.kind().inWords() + " " + source.reference(),
                                    fresh -> new TreeSet<>())
                            .add(source.place());
                }
            }
        }
        return cited;
    }

    private List<String> software() {
        List<String> changes = new ArrayList<>();
        Map<String, String> first = versions(before);
        Map<String, String> second = versions(now);
        for (String name : union(first, second)) {
            String a = first.getOrDefault(name, "none");
            String b = second.getOrDefault(name, "none");
            if (!a.equals(b)) {
                changes.add(name + ": " + a + " → " + b);
            }
        }
        return changes;
    }

    private static Map<String, String> versions(ReadIssue issue) {
        Map<String, String> versions = new LinkedHashMap<>(issue.software());
        Set<String> libraries = new TreeSet<>();
        issue.sheets().values().forEach(sheet -> libraries.add(sheet.library()));
        versions.put("library", String.join(", ", libraries));
        return versions;
    }

    private void others() {
        PackageInfo a = before.info();
        PackageInfo b = now.info();
        other("title", a.title(), b.title());
        other("number", a.number(), b.number());
        other("revision", a.revision(), b.revision());
        other("status", a.status(), b.status());
        other("date", a.date().toString(), b.date().toString());
        other("prepared by", a.preparedBy(), b.preparedBy());
        other("checked by", a.checkedBy(), b.checkedBy());
        other("cautions", joined(a.cautions()), joined(b.cautions()));
        other("standards", joined(a.basis().standards()), joined(b.basis().standards()));
        other("partial factors", joined(a.basis().factors()), joined(b.basis().factors()));
        other("units", joined(a.basis().units()), joined(b.basis().units()));
        other("signs", joined(a.basis().signs()), joined(b.basis().signs()));
        other("status of values", joined(a.basis().values()), joined(b.basis().values()));
    }

    private static String joined(List<String> texts) {
        return String.join(" / ", texts);
    }

    private void other(String what, String a, String b) {
        if (!a.equals(b)) {
            others.add(what + ": " + a + " → " + b);
        }
    }
}
