package org.skewback.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.skewback.quantity.Origin.Branch;
import org.skewback.quantity.Origin.Extent;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The tree behind a number is the graph's, shown once, within limits, and harmless as markup. */
class OriginTest {

    private static final Source DRAWING = Source.drawing("OG-201", "B");

    @Property(tries = 500)
    void theTreeReachesExactlyTheLeavesOfTheGraph(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int steps) {
        Quantity result = layered(seed, steps);
        Set<Quantity> leaves = identitySet();
        Graph.ordered(List.of(result)).stream()
                .filter(Quantity::isLeaf)
                // A plain number such as 8 stands in the formula and has no source to tell.
                .filter(leaf -> leaf.symbol() != null || !leaf.unit().symbol().isEmpty())
                .forEach(leaves::add);
        Set<Quantity> reached = identitySet();
        List<Branch> all = branches(Origin.of(result, 50, 10_000).root());
        all.stream().map(Branch::quantity).filter(Quantity::isLeaf).forEach(reached::add);
        assertEquals(leaves.size(), reached.size());
        assertTrue(leaves.containsAll(reached));
    }

    @Property(tries = 500)
    void eachNumberIsUnfoldedOnceAndWithinTheLimits(
            @ForAll long seed,
            @ForAll @IntRange(min = 2, max = 12) int steps,
            @ForAll @IntRange(min = 1, max = 6) int deepest,
            @ForAll @IntRange(min = 1, max = 30) int most) {
        Origin origin = Origin.of(layered(seed, steps), deepest, most);
        List<Branch> all = branches(origin.root());
        assertTrue(all.size() <= most + 1);
        assertTrue(depth(origin.root()) <= deepest);
        Set<Quantity> unfolded = identitySet();
        for (Branch branch : all) {
            boolean shown = branch.extent() == Extent.UNFOLDED && !branch.quantity().isLeaf();
            assertTrue(!shown || unfolded.add(branch.quantity()));
        }
        for (Branch branch : all) {
            assertTrue(branch.extent() != Extent.ELSEWHERE || unfolded.contains(branch.quantity()));
            assertTrue(branch.extent() != Extent.TOO_DEEP || !unfolded.contains(branch.quantity()));
        }
        boolean cut = all.stream().anyMatch(branch -> branch.leftOut() > 0);
        assertEquals(cut, origin.text().contains("shown at most"));
        assertEquals(cut, origin.html().contains("shown at most"));
    }

    @Property(tries = 200)
    void markupIsWellFormedAndOfFewElements(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 12) int steps, @ForAll String note)
            throws Exception {
        Quantity given = Quantity.given("q", 1, "m", note, Source.assumption("<b>&" + note + "x"));
        Quantity result =
                layered(seed, steps).times(given).per("m").named("R", "", note + "</summary>");
        Document page = parsed(result.origin().html());
        Set<String> names = new TreeSet<>();
        NodeList elements = page.getElementsByTagName("*");
        for (int i = 0; i < elements.getLength(); i++) {
            Element element = (Element) elements.item(i);
            names.add(element.getTagName());
            for (int a = 0; a < element.getAttributes().getLength(); a++) {
                assertEquals("class", element.getAttributes().item(a).getNodeName());
            }
        }
        names.removeAll(Set.of("details", "summary", "ul", "li", "i", "sub", "span"));
        assertEquals(Set.of(), names);
        int lines = branches(result.origin().root()).size();
        assertEquals(lines, result.origin().text().lines().count());
    }

    @Example
    void theThrustLeadsBackToItsDrawing() {
        Quantity thrust = thrust();
        assertEquals(
                """
                H = 29 008 kN, thrust, from g · L² / (8 · f)
                ├─ g = 148 kN/m, load (assumption an example)
                ├─ L = 336 m, span (drawing OG-201, revision B)
                └─ f = 72 m, rise (drawing OG-201, revision B)\
                """,
                spaced(thrust.origin().text()));
        assertEquals(
                "<details class=\"origin\"><summary>where <i>H</i> comes from</summary><ul>"
                        + "<li><i>g</i> = 148 kN/m, load"
                        + " <span class=\"from\">(assumption an example)</span></li>"
                        + "<li><i>L</i> = 336 m, span"
                        + " <span class=\"from\">(drawing OG-201, revision B)</span></li>"
                        + "<li><i>f</i> = 72 m, rise"
                        + " <span class=\"from\">(drawing OG-201, revision B)</span></li>"
                        + "</ul></details>",
                spaced(thrust.origin().html()));
        assertEquals(
                List.of("text/html", "text/plain"),
                List.copyOf(thrust.origin().display().keySet()));
    }

    @Example
    void whatTwoNumbersShareIsUnfoldedOnce() {
        Quantity thrust = thrust();
        Quantity area = Quantity.given("A", 2.5, "m²", "area", DRAWING);
        Quantity stress = thrust.over(area).named("σ", "MPa", "stress");
        Quantity ratio =
                stress.times(area).over(thrust.plus(Quantity.of(5, "kN"))).named("k", "", "ratio");
        assertEquals(
                """
                k = 0.9998, ratio, from σ · A / (H + 5 kN)
                ├─ σ = 11.60 MPa, stress, from H / A
                │  ├─ H = 29 008 kN, thrust, from g · L² / (8 · f) (unfolded below)
                │  └─ A = 2.5 m², area (drawing OG-201, revision B)
                ├─ A = 2.5 m², area (drawing OG-201, revision B)
                ├─ H = 29 008 kN, thrust, from g · L² / (8 · f)
                │  ├─ g = 148 kN/m, load (assumption an example)
                │  ├─ L = 336 m, span (drawing OG-201, revision B)
                │  └─ f = 72 m, rise (drawing OG-201, revision B)
                └─ 5 kN (number without a source)\
                """,
                spaced(ratio.origin().text()));
        assertEquals(
                """
                k = 0.9998, ratio, from σ · A / (H + 5 kN)
                ├─ σ = 11.60 MPa, stress, from H / A (goes on beyond 1 level; see the origin of σ)
                ├─ A = 2.5 m², area (drawing OG-201, revision B)
                └─ … and 2 more; 2 numbers are shown at most\
                """,
                spaced(Origin.of(ratio, 1, 2).text()));
    }

    @Example
    void anotherUnitIsSeenThroughAndATableIsCited() {
        Quantity thrust = thrust();
        assertEquals(
                "H = 29.01 MN, thrust, from g · L² / (8 · f)",
                spaced(thrust.inUnit("MN").origin().text().lines().findFirst().orElseThrow()));
        InterpolationTable table =
                new InterpolationTable(
                        "k_c",
                        "side ratio factor",
                        InterpolationTable.Axis.linear("", 1, 10),
                        InterpolationTable.Axis.linear("", 0.1, 0.3),
                        Source.book("a book", "table 3"));
        Quantity span = Quantity.given("L", 336, "m", "span", DRAWING);
        Quantity rise = Quantity.given("f", 72, "m", "rise", DRAWING);
        Quantity factor = span.over(rise).interpolated(table).named("k", "", "factor");
        assertTrue(
                factor.origin()
                        .text()
                        .endsWith("└─ k_c, table, side ratio factor (book a book, table 3)"),
                factor.origin().text());
    }

    @Example
    void aGivenHasNothingBehindIt() {
        Quantity span = Quantity.given("L", 336, "m", "span", DRAWING);
        assertTrue(span.origin().root().isEnd());
        assertEquals(
                "<p><i>L</i> = 336 m, span"
                        + " <span class=\"from\">(drawing OG-201, revision B)</span></p>",
                spaced(span.origin().html()));
        assertTrue(span.inUnit("km").origin().root().isEnd());
        assertFalse(thrust().origin().root().isEnd());
    }

    @Example
    void limitsOutsideTheirRangeAreRefused() {
        Exception e = assertThrows(IllegalArgumentException.class, () -> Origin.of(thrust(), 0, 5));
        assertEquals("levels of an origin are 0; allowed are 1 to 50", e.getMessage());
        e = assertThrows(IllegalArgumentException.class, () -> Origin.of(thrust(), 5, 10_001));
        assertEquals("numbers of an origin are 10001; allowed are 1 to 10000", e.getMessage());
    }

    @Example
    void aHundredThousandTermsAreCutOffInWords() {
        List<Quantity> terms = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            terms.add(Quantity.of(1, "m"));
        }
        String text = Quantity.sum(terms).origin().text();
        assertEquals(62, text.lines().count());
        assertTrue(text.endsWith("└─ … and 99940 more; 60 numbers are shown at most"), text);
    }

    private static Quantity thrust() {
        Quantity g = Quantity.given("g", 148, "kN/m", "load", Source.assumption("an example"));
        Quantity span = Quantity.given("L", 336, "m", "span", DRAWING);
        Quantity rise = Quantity.given("f", 72, "m", "rise", DRAWING);
        return g.times(span.squared()).over(rise.times(8)).named("H", "kN", "thrust");
    }

    /** Named numbers that rest on each other in several ways, over random formulas of givens. */
    private static Quantity layered(long seed, int steps) {
        Random random = new Random(seed);
        RandomGraph graph = new RandomGraph(seed);
        List<Quantity> named = new ArrayList<>();
        for (int i = 1; i <= steps; i++) {
            Quantity fresh = graph.grow(1 + random.nextInt(6));
            Quantity bare = fresh.over(Quantity.of(1, fresh.unit().symbol()));
            for (int k = 0; k < 2 && !named.isEmpty(); k++) {
                bare = bare.times(2).plus(named.get(random.nextInt(named.size())).over(1e12));
            }
            named.add(bare.named("N_" + i, "", "number " + i));
        }
        return named.get(named.size() - 1);
    }

    private static List<Branch> branches(Branch root) {
        List<Branch> all = new ArrayList<>(List.of(root));
        for (int i = 0; i < all.size(); i++) {
            all.addAll(all.get(i).behind());
        }
        return all;
    }

    private static int depth(Branch branch) {
        return branch.behind().stream().mapToInt(inner -> 1 + depth(inner)).max().orElse(0);
    }

    private static Set<Quantity> identitySet() {
        return Collections.newSetFromMap(new IdentityHashMap<>());
    }

    private static Document parsed(String markup) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(markup)));
    }

    private static String spaced(String text) {
        return text.replace('\u202F', ' ').replace('\u00A0', ' ');
    }
}
