package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads the LaTeX mathematics that authors type in prose and writes it as MathML Core.
 *
 * <p>The subset is fixed: nothing can be defined, so nothing can loop, and what is not known is not
 * guessed at. The names are those of LaTeX and amsmath.
 */
final class LatexMath {

    private static final int LONGEST = 8_000;
    private static final int DEEPEST = 60;

    private final String source;
    private final boolean display;
    private int at;
    private int depth;

    private LatexMath(String source, boolean display) {
        this.source = source;
        this.display = display;
    }

    /**
     * Writes a formula as MathML.
     *
     * @param source LaTeX without dollar signs
     * @param display whether it stands on a line of its own
     * @return a complete {@code <math>} element, or empty where the source is beyond the subset
     */
    static Optional<String> mathml(String source, boolean display) {
        if (source.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            LatexMath reader = new LatexMath(source, display);
            String row = reader.row(Set.of());
            if (reader.at < source.length()) {
                return Optional.empty();
            }
            String style = display ? " display=\"block\"" : "";
            return Optional.of("<math" + style + ">" + row + "</math>");
        } catch (BeyondSubset e) {
            return Optional.empty();
        }
    }

    private String row(Set<String> ends) {
        enter();
        List<String> parts = new ArrayList<>();
        while (true) {
            skipBlanks();
            if (at >= source.length()) {
                if (!ends.isEmpty()) {
                    throw new BeyondSubset();
                }
                break;
            }
            if (ends.contains(peek())) {
                break;
            }
            parts.add(scripted());
        }
        depth--;
        return "<mrow>" + String.join("", parts) + "</mrow>";
    }

    private void enter() {
        if (++depth > DEEPEST) {
            throw new BeyondSubset();
        }
    }

    private String scripted() {
        char c = source.charAt(at);
        boolean bare = c == '^' || c == '_';
        int before = at;
        String base = bare ? "<mrow></mrow>" : atom();
        String name = bare ? "" : source.substring(before, at).strip();
        String below = null;
        String above = null;
        StringBuilder primes = new StringBuilder();
        while (true) {
            skipBlanks();
            if (at >= source.length()) {
                break;
            }
            char next = source.charAt(at);
            if (next == '\'') {
                at++;
                primes.append('′');
            } else if (next == '_' && below == null) {
                at++;
                below = argument();
            } else if (next == '^' && above == null) {
                at++;
                above = argument();
            } else if (next == '_' || next == '^') {
                throw new BeyondSubset();
            } else {
                break;
            }
        }
        if (primes.length() > 0) {
            String marks = "<mo>" + primes + "</mo>";
            above = above == null ? marks : "<mrow>" + marks + above + "</mrow>";
        }
        boolean limits = display && LIMITS.contains(name);
        return withScripts(base, below, above, limits);
    }

    private static String withScripts(
            String base, @Nullable String below, @Nullable String above, boolean limits) {
        if (below != null && above != null) {
            String element = limits ? "munderover" : "msubsup";
            return "<" + element + ">" + base + below + above + "</" + element + ">";
        } else if (below != null) {
            String element = limits ? "munder" : "msub";
            return "<" + element + ">" + base + below + "</" + element + ">";
        } else if (above != null) {
            String element = limits ? "mover" : "msup";
            return "<" + element + ">" + base + above + "</" + element + ">";
        }
        return base;
    }

    /** One argument: a group in braces, a command or a single character. */
    private String argument() {
        skipBlanks();
        if (at >= source.length()) {
            throw new BeyondSubset();
        }
        char c = source.charAt(at);
        if (c == '{') {
            return group();
        }
        if (Character.isDigit(c)) {
            at++;
            return "<mn>" + c + "</mn>";
        }
        return atom();
    }

    private String group() {
        expect("{");
        String row = row(Set.of("}"));
        expect("}");
        return row;
    }

    private String atom() {
        char c = source.charAt(at);
        if (c == '{') {
            return group();
        } else if (c == '\\') {
            enter();
            String set = command();
            depth--;
            return set;
        } else if (Character.isDigit(c)) {
            return number();
        } else if (c == '}' || c == '&' || c == '#' || c == '%' || c == '$' || c == '^') {
            throw new BeyondSubset();
        }
        int point = source.codePointAt(at);
        at += Character.charCount(point);
        String written = Character.toString(point);
        if (c == '~') {
            return space(0.33);
        } else if (c == '-') {
            return "<mo>−</mo>";
        } else if (c == '*') {
            return "<mo>∗</mo>";
        } else if (Character.isLetter(point)) {
            return "<mi>" + Markup.text(written) + "</mi>";
        }
        return "()[]|/".indexOf(c) < 0 ? "<mo>" + Markup.text(written) + "</mo>" : unstretched(c);
    }

    /** Without {@code \\left} a bracket keeps the height of its line, as in LaTeX. */
    private static String unstretched(char sign) {
        return "<mo stretchy=\"false\">" + sign + "</mo>";
    }

    private String number() {
        int from = at;
        while (at < source.length()) {
            char c = source.charAt(at);
            boolean point =
                    c == '.'
                            && at + 1 < source.length()
                            && Character.isDigit(source.charAt(at + 1));
            if (!Character.isDigit(c) && !point) {
                break;
            }
            at++;
        }
        return "<mn>" + source.substring(from, at) + "</mn>";
    }

    private String command() {
        String name = takeCommand();
        String letter = GREEK.get(name);
        if (letter != null) {
            return "<mi>" + letter + "</mi>";
        }
        String sign = SIGNS.get(name);
        if (sign != null) {
            return "<mo>" + sign + "</mo>";
        }
        String plain = PLAIN.get(name);
        if (plain != null) {
            return "<mi mathvariant=\"normal\">" + plain + "</mi>";
        }
        Double space = SPACES.get(name);
        if (space != null) {
            return space(space);
        }
        String accent = ACCENTS.get(name);
        if (accent != null) {
            return "<mover accent=\"true\">"
                    + argument()
                    + "<mo stretchy=\""
                    + name.equals("overline")
                    + "\">"
                    + accent
                    + "</mo></mover>";
        }
        if (FUNCTIONS.contains(name)) {
            return "<mi>" + name + "</mi><mo>&#x2061;</mo>";
        }
        return switch (name) {
            case "frac", "dfrac", "tfrac" -> "<mfrac>" + argument() + argument() + "</mfrac>";
            case "sqrt" -> root();
            case "left" -> fenced();
            case "big", "Big", "bigl", "bigr", "Bigl", "Bigr" -> "";
            case "text", "textrm", "mbox" -> "<mtext>" + Markup.text(words()) + "</mtext>";
            case "mathrm", "operatorname", "rm" -> roman(words());
            case "mathit" -> "<mi>" + Markup.text(words()) + "</mi>";
            case "mathbf", "boldsymbol", "bm" -> bold(words());
            case "displaystyle", "textstyle", "limits", "nolimits" -> "";
            case "begin" -> environment();
            default -> throw new BeyondSubset();
        };
    }

    private String root() {
        skipBlanks();
        if (at < source.length() && source.charAt(at) == '[') {
            at++;
            String degree = row(Set.of("]"));
            expect("]");
            return "<mroot>" + argument() + degree + "</mroot>";
        }
        return "<msqrt>" + argument() + "</msqrt>";
    }

    private String fenced() {
        String open = delimiter();
        String inner = row(Set.of("\\right"));
        expect("\\right");
        String close = delimiter();
        return "<mrow>" + fence(open) + inner + fence(close) + "</mrow>";
    }

    private static String fence(String sign) {
        if (sign.equals("(") || sign.equals(")")) {
            return "<mo>" + sign + "</mo>";
        }
        return sign.isEmpty() ? "" : "<mo fence=\"true\" stretchy=\"true\">" + sign + "</mo>";
    }

    private String delimiter() {
        skipBlanks();
        if (at >= source.length()) {
            throw new BeyondSubset();
        }
        char c = source.charAt(at);
        if (c == '\\') {
            String sign = DELIMITERS.get(takeCommand());
            if (sign == null) {
                throw new BeyondSubset();
            }
            return sign;
        }
        at++;
        if (c == '.') {
            return "";
        }
        if ("()[]|/".indexOf(c) < 0) {
            throw new BeyondSubset();
        }
        return String.valueOf(c);
    }

    private String environment() {
        String name = words();
        String[] fences = ENVIRONMENTS.get(name);
        if (fences == null) {
            throw new BeyondSubset();
        }
        boolean aligned = fences[2].equals("aligned");
        StringBuilder rows = new StringBuilder();
        List<String> cells = new ArrayList<>();
        while (true) {
            cells.add(row(Set.of("&", "\\\\", "\\end")));
            String end = peek();
            expect(end);
            if (end.equals("&")) {
                continue;
            }
            boolean empty = cells.size() == 1 && cells.get(0).equals("<mrow></mrow>");
            if (!empty || !end.equals("\\end")) {
                rows.append(tableRow(cells, aligned));
            }
            cells = new ArrayList<>();
            if (end.equals("\\end")) {
                break;
            }
        }
        if (!words().equals(name)) {
            throw new BeyondSubset();
        }
        String style = aligned ? " displaystyle=\"true\"" : "";
        return "<mrow>"
                + fence(fences[0])
                + "<mtable"
                + style
                + ">"
                + rows
                + "</mtable>"
                + fence(fences[1])
                + "</mrow>";
    }

    private static String tableRow(List<String> cells, boolean aligned) {
        StringBuilder markup = new StringBuilder("<mtr>");
        for (int i = 0; i < cells.size(); i++) {
            String side = aligned ? (i % 2 == 0 ? " class=\"left\"" : " class=\"right\"") : "";
            markup.append("<mtd").append(side).append('>').append(cells.get(i)).append("</mtd>");
        }
        return markup.append("</mtr>").toString();
    }

    /** The letters of {@code {…}} as they stand, for text and upright words. */
    private String words() {
        skipBlanks();
        expect("{");
        StringBuilder text = new StringBuilder();
        int open = 1;
        while (at < source.length()) {
            char c = source.charAt(at++);
            if (c == '{') {
                open++;
                continue;
            } else if (c == '}') {
                if (--open == 0) {
                    return text.toString();
                }
                continue;
            } else if (c == '\\') {
                at--;
                String name = takeCommand();
                String sign = WORD_SIGNS.get(name);
                if (sign == null) {
                    throw new BeyondSubset();
                }
                text.append(sign);
                continue;
            }
            text.append(c == '~' ? '\u00A0' : c);
        }
        throw new BeyondSubset();
    }

    private static String roman(String words) {
        // A unit such as m^2 keeps its exponent raised; everything else stands as typed.
        int raise = words.indexOf('^');
        String base = raise < 0 ? words : words.substring(0, raise);
        String variant = base.length() == 1 ? " mathvariant=\"normal\"" : "";
        String letters = "<mi" + variant + ">" + Markup.text(base) + "</mi>";
        if (raise < 0) {
            return letters;
        }
        return "<msup>"
                + letters
                + "<mn>"
                + Markup.text(words.substring(raise + 1))
                + "</mn></msup>";
    }

    private static String bold(String letters) {
        StringBuilder bold = new StringBuilder();
        for (int i = 0; i < letters.length(); i++) {
            char c = letters.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                bold.appendCodePoint(0x1D400 + (c - 'A'));
            } else if (c >= 'a' && c <= 'z') {
                bold.appendCodePoint(0x1D41A + (c - 'a'));
            } else {
                throw new BeyondSubset();
            }
        }
        return "<mi mathvariant=\"normal\">" + bold + "</mi>";
    }

    private static String space(double em) {
        return "<mspace width=\"" + em + "em\"></mspace>";
    }

    private void skipBlanks() {
        while (at < source.length() && Character.isWhitespace(source.charAt(at))) {
            at++;
        }
    }

    private String peek() {
        char c = source.charAt(at);
        if (c != '\\') {
            return String.valueOf(c);
        }
        int start = at;
        String name = takeCommand();
        at = start;
        return "\\" + name;
    }

    private void expect(String token) {
        skipBlanks();
        if (!source.startsWith(token, at)) {
            throw new BeyondSubset();
        }
        at += token.length();
    }

    private String takeCommand() {
        at++;
        if (at >= source.length()) {
            throw new BeyondSubset();
        }
        int from = at;
        while (at < source.length() && isAsciiLetter(source.charAt(at))) {
            at++;
        }
        if (at == from) {
            at++;
        }
        return source.substring(from, at);
    }

    private static boolean isAsciiLetter(char c) {
        return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    }

    private static final Map<String, String> GREEK =
            Map.ofEntries(
                    Map.entry("alpha", "α"),
                    Map.entry("beta", "β"),
                    Map.entry("gamma", "γ"),
                    Map.entry("delta", "δ"),
                    Map.entry("epsilon", "ϵ"),
                    Map.entry("varepsilon", "ε"),
                    Map.entry("zeta", "ζ"),
                    Map.entry("eta", "η"),
                    Map.entry("theta", "θ"),
                    Map.entry("vartheta", "ϑ"),
                    Map.entry("iota", "ι"),
                    Map.entry("kappa", "κ"),
                    Map.entry("lambda", "λ"),
                    Map.entry("mu", "μ"),
                    Map.entry("nu", "ν"),
                    Map.entry("xi", "ξ"),
                    Map.entry("pi", "π"),
                    Map.entry("rho", "ρ"),
                    Map.entry("varrho", "ϱ"),
                    Map.entry("sigma", "σ"),
                    Map.entry("varsigma", "ς"),
                    Map.entry("tau", "τ"),
                    Map.entry("upsilon", "υ"),
                    Map.entry("phi", "ϕ"),
                    Map.entry("varphi", "φ"),
                    Map.entry("chi", "χ"),
                    Map.entry("psi", "ψ"),
                    Map.entry("omega", "ω"),
                    Map.entry("Gamma", "Γ"),
                    Map.entry("Delta", "Δ"),
                    Map.entry("Theta", "Θ"),
                    Map.entry("Lambda", "Λ"),
                    Map.entry("Xi", "Ξ"),
                    Map.entry("Pi", "Π"),
                    Map.entry("Sigma", "Σ"),
                    Map.entry("Upsilon", "Υ"),
                    Map.entry("Phi", "Φ"),
                    Map.entry("Psi", "Ψ"),
                    Map.entry("Omega", "Ω"));

    private static final Map<String, String> SIGNS =
            Map.ofEntries(
                    Map.entry("cdot", "·"),
                    Map.entry("times", "×"),
                    Map.entry("div", "÷"),
                    Map.entry("pm", "±"),
                    Map.entry("mp", "∓"),
                    Map.entry("le", "≤"),
                    Map.entry("leq", "≤"),
                    Map.entry("ge", "≥"),
                    Map.entry("geq", "≥"),
                    Map.entry("lt", "&lt;"),
                    Map.entry("gt", "&gt;"),
                    Map.entry("ne", "≠"),
                    Map.entry("neq", "≠"),
                    Map.entry("approx", "≈"),
                    Map.entry("simeq", "≃"),
                    Map.entry("sim", "∼"),
                    Map.entry("equiv", "≡"),
                    Map.entry("propto", "∝"),
                    Map.entry("ll", "≪"),
                    Map.entry("gg", "≫"),
                    Map.entry("in", "∈"),
                    Map.entry("to", "→"),
                    Map.entry("rightarrow", "→"),
                    Map.entry("leftarrow", "←"),
                    Map.entry("Rightarrow", "⇒"),
                    Map.entry("Leftrightarrow", "⇔"),
                    Map.entry("int", "∫"),
                    Map.entry("iint", "∬"),
                    Map.entry("oint", "∮"),
                    Map.entry("sum", "∑"),
                    Map.entry("prod", "∏"),
                    Map.entry("nabla", "∇"),
                    Map.entry("dots", "…"),
                    Map.entry("ldots", "…"),
                    Map.entry("cdots", "⋯"),
                    Map.entry("perp", "⊥"),
                    Map.entry("parallel", "∥"),
                    Map.entry("ast", "∗"),
                    Map.entry("mid", "|"),
                    Map.entry("langle", "⟨"),
                    Map.entry("rangle", "⟩"),
                    Map.entry("{", "{"),
                    Map.entry("}", "}"),
                    Map.entry("prime", "′"));

    private static final Map<String, String> PLAIN =
            Map.of(
                    "infty", "∞", "partial", "∂", "circ", "°", "degree", "°", "angle", "∠", "%",
                    "%", "#", "#", "&", "&amp;", "_", "_", "$", "$");

    private static final Map<String, Double> SPACES =
            Map.of(
                    ",",
                    0.17,
                    ":",
                    0.22,
                    ";",
                    0.28,
                    "!",
                    -0.17,
                    " ",
                    0.33,
                    "quad",
                    1.0,
                    "qquad",
                    2.0,
                    "thinspace",
                    0.17);

    private static final Map<String, String> ACCENTS =
            Map.of(
                    "bar",
                    "¯",
                    "overline",
                    "¯",
                    "hat",
                    "^",
                    "vec",
                    "→",
                    "dot",
                    "˙",
                    "ddot",
                    "¨",
                    "tilde",
                    "~");

    private static final Set<String> FUNCTIONS =
            Set.of(
                    "sin", "cos", "tan", "cot", "arcsin", "arccos", "arctan", "sinh", "cosh",
                    "tanh", "exp", "ln", "log", "lg", "min", "max", "lim", "det");

    private static final Set<String> LIMITS = Set.of("\\sum", "\\prod", "\\min", "\\max", "\\lim");

    private static final Map<String, String> DELIMITERS =
            Map.of(
                    "{", "{", "}", "}", "langle", "⟨", "rangle", "⟩", "lvert", "|", "rvert", "|",
                    "vert", "|");

    private static final Map<String, String> WORD_SIGNS =
            Map.ofEntries(
                    Map.entry(" ", " "),
                    Map.entry(",", "\u2009"),
                    Map.entry("%", "%"),
                    Map.entry("&", "&"),
                    Map.entry("#", "#"),
                    Map.entry("$", "$"),
                    Map.entry("_", "_"),
                    Map.entry("cdot", "·"),
                    Map.entry("circ", "°"),
                    Map.entry("mu", "µ"));

    private static final Map<String, String[]> ENVIRONMENTS =
            Map.of(
                    "aligned", new String[] {"", "", "aligned"},
                    "align", new String[] {"", "", "aligned"},
                    "align*", new String[] {"", "", "aligned"},
                    "split", new String[] {"", "", "aligned"},
                    "matrix", new String[] {"", "", ""},
                    "pmatrix", new String[] {"(", ")", ""},
                    "bmatrix", new String[] {"[", "]", ""},
                    "cases", new String[] {"{", "", ""});

    /** The source uses something that the subset does not have. */
    private static final class BeyondSubset extends RuntimeException {
        private static final long serialVersionUID = 1L;

        BeyondSubset() {
            super("beyond the subset", null, false, false);
        }
    }
}
