package org.skewback.desk.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;
import org.jspecify.annotations.Nullable;

/**
 * Sets prose written in Markdown with LaTeX mathematics.
 *
 * <p>HTML in the prose is shown as text. Mathematics is taken out before the Markdown is parsed,
 * which would mangle it, and put back as equations. Pictures must stand in the prose as {@code
 * data:}; links go to the web, by mail, or to other documents of the package.
 */
final class Prose {

    private static final char OPEN = '\uE000';
    private static final char CLOSE = '\uE001';
    private static final Pattern PLACEHOLDER = Pattern.compile(OPEN + "(\\d{1,7})" + CLOSE);
    private static final Pattern PICTURE =
            Pattern.compile("data:(image/(?:png|jpeg|svg\\+xml));base64,([A-Za-z0-9+/=\\s]+)");
    private static final Pattern NOTEBOOK = Pattern.compile("(?:[^:?#]*/)?([^/:?#]+)\\.ipynb");
    private static final Pattern WEB = Pattern.compile("(?i)(?:https?://|mailto:).+");

    private static final Pattern TITLE =
            Pattern.compile("<p>(<(?:strong|b)>[^<]*</(?:strong|b)>)</p>(?=\\s*<table\\b)");

    private static final int DEEPEST = 40;

    private final Medium medium;
    private final Parser parser;

    Prose(Medium medium) {
        this.medium = medium;
        this.parser =
                Parser.builder()
                        .extensions(List.of(TablesExtension.create()))
                        .maxOpenBlockParsers(DEEPEST)
                        .build();
    }

    /**
     * Sets prose.
     *
     * @param markdown what the author wrote
     * @param title a first heading that the page already shows and the prose need not repeat
     * @return well-formed markup
     */
    String set(String markdown, @Nullable String title) {
        List<Formula> formulas = new ArrayList<>();
        String text = MathInProse.takeOut(Markup.allowed(markdown), OPEN, CLOSE, formulas);
        Node document = parser.parse(text);
        Node first = document.getFirstChild();
        if (title != null
                && first instanceof Heading heading
                && plain(heading, formulas).equals(title.strip())) {
            heading.unlink();
        }
        HtmlRenderer renderer =
                HtmlRenderer.builder()
                        .escapeHtml(true)
                        .extensions(List.of(TablesExtension.create()))
                        .attributeProviderFactory(context -> Prose::headAndAlign)
                        .nodeRendererFactory(context -> new Nodes(context, formulas))
                        .build();
        String markup = renderer.render(document);
        return boxTables(titled(putBack(markup, formulas)));
    }

    /** Reads the first heading of a text, without its markup. */
    static String plain(Node node, List<Formula> formulas) {
        StringBuilder text = new StringBuilder();
        node.accept(
                new AbstractVisitor() {
                    @Override
                    public void visit(Text part) {
                        text.append(part.getLiteral());
                    }

                    @Override
                    public void visit(Code part) {
                        text.append(part.getLiteral());
                    }

                    @Override
                    public void visit(SoftLineBreak part) {
                        text.append(' ');
                    }
                });
        return restored(text.toString(), formulas).strip();
    }

    private static void headAndAlign(Node node, String tag, Map<String, String> attributes) {
        if (node instanceof TableCell cell) {
            attributes.remove("align");
            if (cell.isHeader()) {
                attributes.put("scope", "col");
            }
            if (cell.getAlignment() == TableCell.Alignment.RIGHT) {
                attributes.put("class", "number");
            }
        } else if (node instanceof Code || tag.equals("code")) {
            attributes.remove("class");
        }
    }

    /** HTML of the author's is escaped by now, so every tag here is the renderer's own. */
    private String boxTables(String markup) {
        StringBuilder boxed = new StringBuilder();
        int at = 0;
        while (true) {
            int open = markup.indexOf("<table>", at);
            int end = markup.indexOf("</table>", Math.max(open, 0));
            if (open < 0 || end < 0) {
                return boxed.append(markup.substring(at)).toString();
            }
            end += "</table>".length();
            boxed.append(markup, at, open);
            boxed.append(medium.table(markup.substring(open, end), "Table"));
            at = end;
        }
    }

    /**
     * Marks a line in heavy type before a table as its title, which is not parted from it.
     *
     * @param markup the renderer's or the sanitiser's own
     * @return the same with titles marked
     */
    static String titled(String markup) {
        return TITLE.matcher(markup).replaceAll("<p class=\"title\">$1</p>");
    }

    private String putBack(String markup, List<Formula> formulas) {
        Matcher matcher = PLACEHOLDER.matcher(markup);
        StringBuilder whole = new StringBuilder();
        while (matcher.find()) {
            int index = Integer.parseInt(matcher.group(1));
            String set = index < formulas.size() ? equation(formulas.get(index)) : "";
            matcher.appendReplacement(whole, Matcher.quoteReplacement(set));
        }
        return matcher.appendTail(whole).toString();
    }

    private String equation(Formula formula) {
        return LatexMath.mathml(formula.source(), formula.display())
                .map(mathml -> medium.equation(mathml, formula.display()))
                .orElseGet(
                        () ->
                                "<code class=\"formula\">"
                                        + Markup.text(formula.source().strip())
                                        + "</code>");
    }

    private static String restored(String text, List<Formula> formulas) {
        Matcher matcher = PLACEHOLDER.matcher(text);
        return matcher.replaceAll(
                found -> {
                    int index = Integer.parseInt(found.group(1));
                    return Matcher.quoteReplacement(
                            index < formulas.size() ? formulas.get(index).written() : "");
                });
    }

    /**
     * A formula found in prose.
     *
     * @param source LaTeX without dollar signs
     * @param display whether it had two dollar signs
     */
    record Formula(String source, boolean display) {
        String written() {
            String sign = display ? "$$" : "$";
            return sign + source + sign;
        }
    }

    /** Links, pictures and headings, which our pages restrict. */
    private final class Nodes implements NodeRenderer {
        private final HtmlNodeRendererContext context;
        private final HtmlWriter html;
        private final List<Formula> formulas;

        Nodes(HtmlNodeRendererContext context, List<Formula> formulas) {
            this.context = context;
            this.html = context.getWriter();
            this.formulas = formulas;
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Link.class, Image.class, Heading.class);
        }

        @Override
        public void render(Node node) {
            if (node instanceof Heading heading) {
                // The page's own heading is the only one of the first level.
                String tag = "h" + Math.max(2, heading.getLevel());
                html.line();
                html.tag(tag);
                children(node);
                html.tag("/" + tag);
                html.line();
            } else if (node instanceof Link link) {
                String address = address(link.getDestination());
                if (address == null) {
                    children(node);
                } else {
                    html.tag("a", Map.of("href", address));
                    children(node);
                    html.tag("/a");
                }
            } else {
                picture((Image) node);
            }
        }

        private void picture(Image image) {
            String alternative = plain(image, formulas);
            Matcher matcher = PICTURE.matcher(image.getDestination());
            if (matcher.matches()) {
                String base64 = matcher.group(2).replaceAll("\\s", "");
                html.raw(medium.picture(matcher.group(1), base64, alternative));
            } else {
                html.text("[picture: " + alternative + "]");
            }
        }

        private @Nullable String address(String written) {
            String destination = restored(written, formulas);
            Matcher notebook = NOTEBOOK.matcher(destination);
            if (notebook.matches()) {
                return medium.address(notebook.group(1), null);
            }
            return WEB.matcher(destination).matches() ? destination : null;
        }

        private void children(Node parent) {
            Node child = parent.getFirstChild();
            while (child != null) {
                Node next = child.getNext();
                context.render(child);
                child = next;
            }
        }
    }
}
