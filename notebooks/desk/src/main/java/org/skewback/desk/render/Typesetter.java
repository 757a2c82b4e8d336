package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Sets MathML Core in type, as outlines, for media that know no mathematics.
 *
 * <p>Distances are those of the MATH table of the font, STIX Two Math 2.12, in em; the placing of
 * scripts, fractions and roots follows the OpenType specification, "MATH – The mathematical
 * typesetting table", simplified: no kerning between a letter and its scripts, and brackets that
 * grow are scaled instead of built of parts.
 */
final class Typesetter {

    private static final double AXIS = 0.258;
    private static final double RULE = 0.068;
    private static final double SCRIPT = 0.70;
    private static final double SCRIPT_OF_SCRIPT = 0.55;
    private static final double SUPERSCRIPT_UP = 0.36;
    private static final double SUBSCRIPT_DOWN = 0.21;
    private static final double SUPERSCRIPT_DROP = 0.23;
    private static final double SUBSCRIPT_DROP = 0.16;
    private static final double SCRIPTS_GAP = 0.15;
    private static final double FRACTION_GAP = 0.15;
    private static final double FRACTION_GAP_INLINE = 0.068;
    private static final double RADICAL_GAP = 0.17;
    private static final double LIMITS_GAP = 0.135;
    private static final double ROW_GAP = 0.42;
    private static final double COLUMN_GAP = 0.8;

    /** How far in a line that goes on begins. */
    private static final double CONTINUED = 2;

    /** An integral leans, so its lower limit stands further left. */
    private static final double INTEGRAL_LEAN = 0.3;

    /** Share of a line that a fraction may take, since a symbol and an equals sign stand before. */
    private static final double PART_OF_LINE = 0.85;

    /** Spaces in mathematics, in em: thin 3/18, medium 4/18, thick 5/18 (The TeXbook, ch. 18). */
    private static final double THIN = 3.0 / 18;

    private static final double MEDIUM = 4.0 / 18;
    private static final double THICK = 5.0 / 18;

    private static final String BINARY = "+−·×÷±∓∗∩∪⊕⊗";
    private static final String RELATIONS = "=<>≤≥≠≈≃∼≡∝≪≫∈→←⇒⇔⊥∥";
    private static final String OPENING = "([{⟨";
    private static final String CLOSING = ")]}⟩";
    private static final Set<String> LARGE = Set.of("∑", "∏", "∫", "∬", "∮");
    private static final double LARGE_SUM = 1.4;
    private static final double LARGE_INTEGRAL = 1.75;

    private final MathGlyphs glyphs;
    private final double widest;

    /**
     * Makes a typesetter.
     *
     * @param glyphs the font
     * @param widest width in em at which a formula breaks before an operator, where it can
     */
    Typesetter(MathGlyphs glyphs, double widest) {
        this.glyphs = glyphs;
        this.widest = widest;
    }

    /**
     * Sets a formula.
     *
     * @param mathml a complete {@code <math>} element
     * @return the formula, or null where it holds what this cannot set
     */
    @Nullable Box set(String mathml) {
        Document document = Xml.parse(mathml);
        if (document == null) {
            return null;
        }
        Element math = document.getDocumentElement();
        boolean display = math.getAttribute("display").equals("block");
        try {
            return display ? broken(unwrapped(children(math))) : row(math, 0, false);
        } catch (MathGlyphs.MissingGlyph | UnknownElement e) {
            return null;
        }
    }

    /** A row may hold nothing but a row. */
    private static List<Element> unwrapped(List<Element> elements) {
        List<Element> inner = elements;
        while (inner.size() == 1 && inner.get(0).getTagName().equals("mrow")) {
            inner = children(inner.get(0));
        }
        return inner;
    }

    private Box broken(List<Element> elements) {
        if (elements.size() == 1 && elements.get(0).getTagName().equals("mtable")) {
            return table(elements.get(0), true);
        }
        return lines(flattened(elements), widest);
    }

    /** Rows that only group, not bracket, are opened so that a line may break inside. */
    private static List<Element> flattened(List<Element> elements) {
        List<Element> flat = new ArrayList<>();
        for (Element element : elements) {
            boolean group = element.getTagName().equals("mrow");
            List<Element> inner = group ? children(element) : List.of();
            boolean bracketed = !inner.isEmpty() && OPENING.contains(inner.get(0).getTextContent());
            if (group && !bracketed) {
                flat.addAll(flattened(inner));
            } else {
                flat.add(element);
            }
        }
        return flat;
    }

    private Box lines(List<Element> elements, double limit) {
        Box whole = row(elements, 0, true);
        if (whole.width() <= limit) {
            return whole;
        }
        List<Box> lines = new ArrayList<>();
        int from = 0;
        while (from < elements.size()) {
            int to = fitting(elements, from, limit - (from == 0 ? 0 : CONTINUED + MEDIUM));
            lines.add(
                    from == 0
                            ? row(elements.subList(0, to), 0, true)
                            : resumed(elements, from, to));
            from = to;
        }
        return stacked(lines);
    }

    /** A line that goes on begins with its operator, which is no sign of a number here. */
    private Box resumed(List<Element> elements, int from, int to) {
        Box operator = element(elements.get(from), 0, true);
        Box rest = row(elements.subList(from + 1, to), 0, true);
        return operator.then(Box.space(MEDIUM)).then(rest).indented(CONTINUED);
    }

    /** Where the line that starts here ends: before the last operator that still fits. */
    private int fitting(List<Element> elements, int from, double limit) {
        int best = -1;
        for (int to = from + 1; to <= elements.size(); to++) {
            boolean end = to == elements.size();
            boolean breakable = end || isBreak(elements.get(to));
            if (!breakable) {
                continue;
            }
            boolean fits = row(elements.subList(from, to), 0, true).width() <= limit;
            if (!fits) {
                return best > 0 ? best : to;
            }
            best = to;
        }
        return elements.size();
    }

    private static boolean isBreak(Element element) {
        if (!element.getTagName().equals("mo")) {
            return false;
        }
        String sign = element.getTextContent();
        return "+−·".contains(sign) || RELATIONS.contains(sign);
    }

    private static Box stacked(List<Box> lines) {
        Box stack = lines.get(0);
        for (Box line : lines.subList(1, lines.size())) {
            double down = stack.descent() + ROW_GAP + line.ascent();
            stack = stack.over(line.raised(-down));
        }
        return stack;
    }

    private Box row(Element parent, int level, boolean display) {
        return row(children(parent), level, display);
    }

    private Box row(List<Element> elements, int level, boolean display) {
        // Each part is set once: set twice, time would double with every row in a row.
        List<@Nullable Box> set = new ArrayList<>();
        double tallest = 0;
        double deepest = 0;
        for (Element element : elements) {
            Box box = isStretchy(element) ? null : element(element, level, display);
            set.add(box);
            if (box != null) {
                tallest = Math.max(tallest, box.ascent());
                deepest = Math.max(deepest, box.descent());
            }
        }
        Box row = Box.empty();
        for (int i = 0; i < elements.size(); i++) {
            Box part = set.get(i);
            Box box =
                    part != null
                            ? part
                            : stretched(elements.get(i).getTextContent(), tallest, deepest);
            row = row.then(spaced(elements, i, box, level));
        }
        return row;
    }

    private static boolean isStretchy(Element element) {
        String sign = element.getTextContent();
        boolean fence =
                !sign.isEmpty()
                        && (OPENING.contains(sign) || CLOSING.contains(sign) || sign.equals("|"));
        return element.getTagName().equals("mo")
                && fence
                && !element.getAttribute("stretchy").equals("false");
    }

    private Box stretched(String sign, double tallest, double deepest) {
        Box natural = glyphs.glyph(sign.codePointAt(0));
        double half = Math.max(tallest - AXIS, deepest + AXIS);
        double wanted = 2 * half * 0.95;
        if (wanted <= natural.height() * 1.05) {
            return natural;
        }
        double up = wanted / natural.height();
        Box grown = natural.scaled(Math.min(1.5, 1 + (up - 1) * 0.18), up);
        return grown.raised(AXIS - (grown.ascent() - grown.descent()) / 2);
    }

    private static Box spaced(List<Element> elements, int at, Box box, int level) {
        Element element = elements.get(at);
        if (!element.getTagName().equals("mo")) {
            return isFunction(elements, at) ? box.then(Box.space(THIN)) : box;
        }
        String sign = element.getTextContent();
        if (level > 0) {
            return box;
        }
        if (!sign.isEmpty() && RELATIONS.contains(sign)) {
            return around(box, THICK, at > 0);
        } else if (!sign.isEmpty() && BINARY.contains(sign)) {
            boolean joins = element.getAttribute("form").equals("infix");
            boolean prefix = !joins && (at == 0 || isSign(elements.get(at - 1)));
            return prefix ? box : around(box, MEDIUM, true);
        } else if (sign.equals(",") || sign.equals(";")) {
            return box.then(Box.space(THIN));
        } else if (LARGE.contains(sign)) {
            return box.then(Box.space(THIN));
        }
        return box;
    }

    /** A function's name stands apart from an argument without brackets. */
    private static boolean isFunction(List<Element> elements, int at) {
        return at + 2 < elements.size()
                && elements.get(at + 1).getTextContent().equals("\u2061")
                && !OPENING.contains(elements.get(at + 2).getTextContent().substring(0, 1));
    }

    private static boolean isSign(Element element) {
        String sign = element.getTextContent();
        return element.getTagName().equals("mo")
                && !sign.isEmpty()
                && (BINARY + RELATIONS + OPENING + ",").contains(sign);
    }

    private static Box around(Box box, double space, boolean before) {
        return Box.space(before ? space : 0).then(box).then(Box.space(space));
    }

    private Box element(Element element, int level, boolean display) {
        List<Element> inner = children(element);
        return switch (element.getTagName()) {
            case "mrow", "mstyle", "mpadded" -> row(inner, level, display);
            case "mi" -> glyphs.text(italic(element));
            case "mn", "mtext" -> glyphs.text(spaces(element.getTextContent()));
            case "mo" -> operator(element.getTextContent(), display);
            case "mspace" -> Box.space(em(element.getAttribute("width")));
            case "mfrac" -> fraction(inner, level, display);
            case "msup" -> scripts(inner, null, inner.get(1), level, display);
            case "msub" -> scripts(inner, inner.get(1), null, level, display);
            case "msubsup" -> scripts(inner, inner.get(1), inner.get(2), level, display);
            case "munder" -> limits(inner, inner.get(1), null, level, display);
            case "mover" ->
                    element.getAttribute("accent").equals("true")
                            ? accented(inner, level, display)
                            : limits(inner, null, inner.get(1), level, display);
            case "munderover" -> limits(inner, inner.get(1), inner.get(2), level, display);
            case "msqrt" -> root(row(inner, level, display), null);
            case "mroot" ->
                    root(
                            element(inner.get(0), level, display),
                            element(inner.get(1), level + 2, false).scaled(SCRIPT_OF_SCRIPT));
            case "mtable" -> table(element, display);
            default -> throw new UnknownElement();
        };
    }

    private static String spaces(String text) {
        // The font lacks no space, but these two are what the pages mean by theirs.
        return text.replace('\u202F', '\u2009');
    }

    private static double em(String width) {
        return width.endsWith("em")
                ? Double.parseDouble(width.substring(0, width.length() - 2))
                : 0;
    }

    /** One letter is a variable and slanted; a word is upright (MathML Core, 4.2). */
    private static String italic(Element element) {
        String text = spaces(element.getTextContent());
        boolean upright = element.getAttribute("mathvariant").equals("normal");
        if (upright || text.codePointCount(0, text.length()) != 1) {
            return text;
        }
        int c = text.codePointAt(0);
        int slanted = c;
        if (c == 'h') {
            slanted = 0x210E;
        } else if (c >= 'A' && c <= 'Z') {
            slanted = 0x1D434 + (c - 'A');
        } else if (c >= 'a' && c <= 'z') {
            slanted = 0x1D44E + (c - 'a');
        } else if (c >= 'Α' && c <= 'Ω') {
            slanted = 0x1D6E2 + (c - 'Α');
        } else if (c >= 'α' && c <= 'ω') {
            slanted = 0x1D6FC + (c - 'α');
        } else if (c == 'ϵ') {
            slanted = 0x1D716;
        } else if (c == 'ϑ') {
            slanted = 0x1D717;
        } else if (c == 'ϕ') {
            slanted = 0x1D719;
        } else if (c == 'ϱ') {
            slanted = 0x1D71A;
        }
        return Character.toString(slanted);
    }

    private Box operator(String sign, boolean display) {
        if (sign.equals("\u2061")) {
            return Box.empty();
        }
        Box box = glyphs.text(spaces(sign));
        if (!display || !LARGE.contains(sign)) {
            return box;
        }
        boolean sum = sign.equals("∑") || sign.equals("∏");
        Box large = box.scaled(sum ? LARGE_SUM : LARGE_INTEGRAL);
        return large.raised(AXIS - (large.ascent() - large.descent()) / 2);
    }

    private Box fraction(List<Element> inner, int level, boolean display) {
        // Inline and inside another fraction, both parts are set smaller, as in text style.
        boolean small = !display && level == 0;
        int within = small ? level + 1 : level;
        Box above = part(inner.get(0), within, display);
        Box below = part(inner.get(1), within, display);
        if (small) {
            above = above.scaled(SCRIPT);
            below = below.scaled(SCRIPT);
        }
        double gap = display ? FRACTION_GAP : FRACTION_GAP_INLINE;
        double width = Math.max(above.width(), below.width()) + 0.12;
        Box bar = Box.bar(width, AXIS - RULE / 2, RULE);
        double up = AXIS + RULE / 2 + gap + above.descent();
        double down = -AXIS + RULE / 2 + gap + below.ascent();
        Box set =
                bar.over(above.centred(width).raised(Math.max(up, 0.5)))
                        .over(below.centred(width).raised(-Math.max(down, 0.4)));
        return around(set, 0.06, true);
    }

    /** A numerator or denominator too long for the page is set in lines of its own. */
    private Box part(Element element, int level, boolean display) {
        Box box = element(element, level, false);
        double limit = widest * PART_OF_LINE;
        return display && box.width() > limit ? lines(flattened(List.of(element)), limit) : box;
    }

    private Box scripts(
            List<Element> inner,
            @Nullable Element lowered,
            @Nullable Element raised,
            int level,
            boolean display) {
        Box base = element(inner.get(0), level, display);
        double factor = level == 0 ? SCRIPT : SCRIPT_OF_SCRIPT / SCRIPT;
        boolean tall = base.height() > 1.1;
        Box scripts = Box.empty();
        double up = tall ? base.ascent() - SUPERSCRIPT_DROP : SUPERSCRIPT_UP;
        double down = tall ? base.descent() + SUBSCRIPT_DROP : SUBSCRIPT_DOWN;
        Box high = raised == null ? null : element(raised, level + 1, false).scaled(factor);
        Box low = lowered == null ? null : element(lowered, level + 1, false).scaled(factor);
        if (high != null) {
            up = Math.max(up, base.ascent() - SUPERSCRIPT_DROP - 0.08);
        }
        if (high != null && low != null) {
            double between = (up - high.descent()) - (low.ascent() - down);
            if (between < SCRIPTS_GAP) {
                down += SCRIPTS_GAP - between;
            }
        }
        if (high != null) {
            scripts = scripts.over(high.indented(slant(inner.get(0))).raised(up));
        }
        if (low != null) {
            boolean leans = "∫∬∮".contains(inner.get(0).getTextContent());
            boolean integral = leans && base.height() > 1;
            scripts = scripts.over(low.indented(integral ? -INTEGRAL_LEAN : 0).raised(-down));
        }
        boolean large = LARGE.contains(inner.get(0).getTextContent());
        return base.then(scripts).then(Box.space(large && level == 0 ? THIN : 0.04));
    }

    /** An exponent keeps clear of a slanted letter. */
    private static double slant(Element base) {
        return base.getTagName().equals("mi") && base.getTextContent().length() == 1 ? 0.05 : 0;
    }

    private Box limits(
            List<Element> inner,
            @Nullable Element lowered,
            @Nullable Element raised,
            int level,
            boolean display) {
        Box base = element(inner.get(0), level, display);
        Box low = lowered == null ? null : element(lowered, level + 1, false).scaled(SCRIPT);
        Box high = raised == null ? null : element(raised, level + 1, false).scaled(SCRIPT);
        double width =
                Math.max(
                        base.width(),
                        Math.max(low == null ? 0 : low.width(), high == null ? 0 : high.width()));
        Box set = base.centred(width);
        if (low != null) {
            double down = base.descent() + LIMITS_GAP + low.ascent();
            set = set.over(low.centred(width).raised(-down));
        }
        if (high != null) {
            double up = base.ascent() + LIMITS_GAP + high.descent();
            set = set.over(high.centred(width).raised(up));
        }
        return set.then(Box.space(THIN));
    }

    private Box accented(List<Element> inner, int level, boolean display) {
        Box base = element(inner.get(0), level, display);
        String sign = inner.get(1).getTextContent();
        double clear = base.ascent() + 0.08;
        if (sign.equals("¯")) {
            return base.over(Box.bar(base.width(), clear, RULE * 0.8));
        }
        Box mark = glyphs.glyph(sign.codePointAt(0)).scaled(sign.equals("→") ? 0.6 : 1);
        double bottom = -mark.descent();
        return base.over(mark.centred(base.width()).raised(clear - bottom)).withWidth(base.width());
    }

    private Box root(Box under, @Nullable Box degree) {
        double top = under.ascent() + RADICAL_GAP;
        Box natural = glyphs.glyph('√');
        double wanted = top + RULE + under.descent() + 0.08;
        double up = Math.max(1, wanted / natural.height());
        Box sign = natural.scaled(Math.min(1.3, 1 + (up - 1) * 0.2), up);
        // The sign's own bar ends where the rule over the argument begins.
        sign = sign.raised(top + RULE - sign.ascent());
        Box rule = Box.bar(under.width() + 0.1, top, RULE);
        double overlap = 0.02;
        Box whole =
                sign.withWidth(sign.width() - overlap)
                        .then(rule.over(under.indented(0.05)).withWidth(under.width() + 0.1));
        if (degree == null) {
            return whole.then(Box.space(0.05));
        }
        double raise = sign.ascent() - sign.height() * 0.4;
        double room = Math.max(0, degree.width() - sign.width() * 0.45);
        Box lifted = degree.raised(raise + degree.descent());
        return lifted.over(whole.indented(room)).withWidth(whole.width() + room + 0.05);
    }

    private Box table(Element table, boolean display) {
        List<List<Element>> rows = new ArrayList<>();
        int columns = 0;
        for (Element row : children(table)) {
            List<Element> cells = children(row);
            rows.add(cells);
            columns = Math.max(columns, cells.size());
        }
        boolean spread = !table.getAttribute("displaystyle").equals("true");
        double[] widths = new double[columns];
        List<List<Box>> set = new ArrayList<>();
        for (List<Element> cells : rows) {
            List<Box> boxes = new ArrayList<>();
            double used = 0;
            for (int i = 0; i < cells.size(); i++) {
                List<Element> content = unwrapped(children(cells.get(i)));
                Box box =
                        spread
                                ? row(content, 0, false)
                                : lines(flattened(content), Math.max(4, widest - used));
                boxes.add(box);
                widths[i] = Math.max(widths[i], box.width());
                used += widths[i];
            }
            set.add(boxes);
        }
        List<Box> lines = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) {
            Box line = Box.empty();
            for (int i = 0; i < set.get(r).size(); i++) {
                Box box = set.get(r).get(i);
                String side = rows.get(r).get(i).getAttribute("class");
                Box cell =
                        switch (side) {
                            case "left" -> box.indented(widths[i] - box.width());
                            // A row that begins with its relation stands off what it relates to.
                            case "right" -> box.indented(THICK).withWidth(widths[i] + THICK);
                            default -> box.centred(widths[i]);
                        };
                boolean gap = spread && i > 0;
                line = line.then(gap ? cell.indented(COLUMN_GAP) : cell);
            }
            lines.add(line);
        }
        Box stack = stacked(lines);
        boolean alone = display && !spread;
        return alone ? stack : stack.raised(AXIS - (stack.ascent() - stack.descent()) / 2);
    }

    private static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }

    /** The markup holds an element that this cannot set. */
    private static final class UnknownElement extends RuntimeException {
        private static final long serialVersionUID = 1L;

        UnknownElement() {
            super("an element beyond the subset", null, false, false);
        }
    }
}
