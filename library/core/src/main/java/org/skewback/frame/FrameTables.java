package org.skewback.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.cable.Cable;
import org.skewback.data.CsvTable;
import org.skewback.quantity.Quantity;
import org.skewback.steel.Box;
import org.skewback.steel.ISection;
import org.skewback.steel.Rectangle;
import org.skewback.steel.Section;
import org.skewback.steel.Shape;
import org.skewback.steel.Tube;

/**
 * A model and its loads as plain tables: nodes, materials, sections, members, supports, loads.
 *
 * <p>Units stand in the headings and may be any of the right dimension. Columns that a table does not
 * need may be left out, fields that a row does not need left blank. A field {@code =g} takes the
 * quantity g given along with the tables. Every error names the table, the line and the column.
 *
 * <ul>
 *   <li>nodes: name, x, y, z
 *   <li>materials: name, young modulus, shear modulus, density, expansion
 *   <li>sections: name, kind (given, box, I, tube, rectangle), then area, shear area y, shear area z
 *       (blank for no shear flexibility), torsion constant, second moment y, second moment z; or
 *       width, height, web, flange (a tube: height is its diameter, web its wall)
 *   <li>members: name, kind (beam, bar, tension bar, compression bar, link, cable), start, end, material,
 *       section, end section (of a taper), upward x … z, roll, start arm x … z, end arm x … z, start
 *       joint, end joint. A joint is blank for rigid, or lists what gives, as in {@code about y} or
 *       {@code about y = 2e7; along x} (springs in N/m and N·m/rad). A link lists all its springs in
 *       its start joint. A cable has weight per length, axial stiffness, and its unstressed length or
 *       the horizontal force that it is drawn to between the nodes as they stand
 *   <li>supports: node, kind (fixed, pinned, along, about; or in plane with node *), x, y, z
 *       (direction), stiffness (N/m or N·m/rad without a unit in the heading; blank for rigid)
 *   <li>loads: case, kind, on (node or member; for weight and cable pull none for all, or several
 *       separated by {@code ;}), axes (global, local, projected), at, to; force x … z, moment x … z
 *       (node, point); intensity x … z and end intensity x … z (line); line moment x … z and end line
 *       moment x … z (line moment); acceleration x … z (weight; all blank for standard gravity); rise,
 *       gradient y, gradient z (temperature); length (lack of fit); tension (initial force, tendon);
 *       start, middle and end y, z (tendon: its eccentricities); movement x … z, rotation x … z
 *       (ground); component (N, V_y … M_z) with slip in m or kink in rad (dislocation); cable pull
 * </ul>
 */
public final class FrameTables {

    private static final List<String> NODES = List.of("name", "x", "y", "z");
    private static final List<String> MATERIALS =
            List.of("name", "young modulus", "shear modulus", "density", "expansion");
    private static final List<String> SECTIONS =
            List.of(
                    "name",
                    "kind",
                    "area",
                    "shear area y",
                    "shear area z",
                    "torsion constant",
                    "second moment y",
                    "second moment z",
                    "width",
                    "height",
                    "web",
                    "flange");
    private static final List<String> MEMBERS =
            List.of(
                    "name",
                    "kind",
                    "start",
                    "end",
                    "material",
                    "section",
                    "end section",
                    "upward x",
                    "upward y",
                    "upward z",
                    "roll",
                    "start arm x",
                    "start arm y",
                    "start arm z",
                    "end arm x",
                    "end arm y",
                    "end arm z",
                    "start joint",
                    "end joint",
                    "unstressed length",
                    "weight per length",
                    "axial stiffness",
                    "horizontal force");
    private static final List<String> SUPPORTS =
            List.of("node", "kind", "x", "y", "z", "stiffness");
    private static final List<String> LOADS = loadColumns();

    private FrameTables() {}

    private static List<String> loadColumns() {
        List<String> columns = new ArrayList<>(List.of("case", "kind", "on", "axes", "at", "to"));
        for (String vector :
                List.of(
                        "force",
                        "moment",
                        "intensity",
                        "end intensity",
                        "line moment",
                        "end line moment",
                        "movement",
                        "rotation",
                        "acceleration")) {
            for (String axis : List.of("x", "y", "z")) {
                columns.add(vector + " " + axis);
            }
        }
        columns.addAll(
                List.of(
                        "rise",
                        "gradient y",
                        "gradient z",
                        "length",
                        "tension",
                        "start y",
                        "start z",
                        "middle y",
                        "middle z",
                        "end y",
                        "end z",
                        "component",
                        "slip",
                        "kink"));
        return List.copyOf(columns);
    }

    /**
     * The tables of a model.
     *
     * @param nodes nodes
     * @param materials materials
     * @param sections sections
     * @param members members
     * @param supports supports
     */
    public record Tables(
            CsvTable nodes,
            CsvTable materials,
            CsvTable sections,
            CsvTable members,
            CsvTable supports) {}

    /**
     * Reads a model.
     *
     * @param tables its tables
     * @return the model
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     * @throws IllegalArgumentException if a name is there twice or missing
     */
    public static FrameModel model(Tables tables) {
        return model(tables, Map.of());
    }

    /**
     * Reads a model in which some fields stand for quantities.
     *
     * @param tables its tables
     * @param given quantities by name, for fields such as {@code =g}
     * @return the model
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     * @throws IllegalArgumentException if a name is there twice or missing
     */
    public static FrameModel model(Tables tables, Map<String, Quantity> given) {
        FrameModelBuilder builder = FrameModel.builder();
        FieldReader nodes = new FieldReader(tables.nodes(), given, NODES);
        Map<String, Node> places = new HashMap<>();
        for (int i = 0; i < nodes.size(); i++) {
            Node node = new Node(nodes.required(i, "name"), nodes.vector(i, "", "m"));
            places.put(node.name(), node);
            builder.node(node.name(), node.place().x(), node.place().y(), node.place().z());
        }
        Map<String, Material> materials =
                materials(new FieldReader(tables.materials(), given, MATERIALS));
        Map<String, Section> sections =
                sections(new FieldReader(tables.sections(), given, SECTIONS));
        FieldReader members = new FieldReader(tables.members(), given, MEMBERS);
        for (int i = 0; i < members.size(); i++) {
            int record = i;
            builder.add(
                    members.make(
                            record, () -> member(members, record, materials, sections, places)));
        }
        FieldReader supports = new FieldReader(tables.supports(), given, SUPPORTS);
        for (int i = 0; i < supports.size(); i++) {
            support(supports, i, builder);
        }
        return builder.build();
    }

    private static Map<String, Material> materials(FieldReader in) {
        Map<String, Material> materials = new HashMap<>();
        for (int i = 0; i < in.size(); i++) {
            int r = i;
            String name = in.required(r, "name");
            materials.put(
                    name,
                    in.make(
                            r,
                            () ->
                                    new Material(
                                            name,
                                            in.number(r, "young modulus", "Pa"),
                                            in.number(r, "shear modulus", "Pa"),
                                            in.number(r, "density", "kg/m³", 0),
                                            in.number(r, "expansion", "1/K", 0))));
        }
        return materials;
    }

    private static Map<String, Section> sections(FieldReader in) {
        Map<String, Section> sections = new HashMap<>();
        for (int i = 0; i < in.size(); i++) {
            int r = i;
            sections.put(in.required(r, "name"), in.make(r, () -> section(in, r)));
        }
        return sections;
    }

    private static Section section(FieldReader in, int r) {
        String name = in.required(r, "name");
        return switch (in.text(r, "kind")) {
            case "", "given" ->
                    Section.of(
                            name,
                            in.number(r, "area", "m²"),
                            in.number(r, "shear area y", "m²", Double.POSITIVE_INFINITY),
                            in.number(r, "shear area z", "m²", Double.POSITIVE_INFINITY),
                            in.number(r, "torsion constant", "m⁴"),
                            in.number(r, "second moment y", "m⁴"),
                            in.number(r, "second moment z", "m⁴"));
            case "box" ->
                    new Box(
                                    in.number(r, "width", "m"),
                                    in.number(r, "height", "m"),
                                    in.number(r, "web", "m"),
                                    in.number(r, "flange", "m"))
                            .section(name);
            case "I" ->
                    new ISection(
                                    in.number(r, "width", "m"),
                                    in.number(r, "height", "m"),
                                    in.number(r, "web", "m"),
                                    in.number(r, "flange", "m"))
                            .section(name);
            case "tube" ->
                    new Tube(in.number(r, "height", "m"), in.number(r, "web", "m")).section(name);
            case "rectangle" ->
                    new Rectangle(in.number(r, "width", "m"), in.number(r, "height", "m"))
                            .section(name);
            default -> throw in.refused(r, "kind", "given, box, I, tube or rectangle");
        };
    }

    private static <T> T named(Map<String, T> all, FieldReader in, int r, String column) {
        T found = all.get(in.text(r, column));
        if (found == null) {
            throw in.refused(r, column, "one of " + all.keySet());
        }
        return found;
    }

    private static Member member(
            FieldReader in,
            int r,
            Map<String, Material> materials,
            Map<String, Section> sections,
            Map<String, Node> places) {
        String name = in.required(r, "name");
        String start = in.required(r, "start");
        String end = in.required(r, "end");
        String kind = in.text(r, "kind");
        Vector upward = in.vectorOrNone(r, "upward ", "");
        switch (kind) {
            case "", "beam" -> {
                Section first = named(sections, in, r, "section");
                SectionProfile profile =
                        in.has(r, "end section")
                                ? SectionProfile.tapered(
                                        first, named(sections, in, r, "end section"))
                                : SectionProfile.uniform(first);
                return new BeamColumn(
                        name,
                        start,
                        end,
                        named(materials, in, r, "material"),
                        profile,
                        new Orientation(upward, in.number(r, "roll", "rad", 0)),
                        in.vector(r, "start arm ", "m"),
                        in.vector(r, "end arm ", "m"),
                        joint(in, r, "start joint", EndConnection.RIGID),
                        joint(in, r, "end joint", EndConnection.RIGID));
            }
            case "bar", "tension bar", "compression bar" -> {
                return new Bar(
                        name,
                        start,
                        end,
                        named(materials, in, r, "material"),
                        named(sections, in, r, "section"),
                        switch (kind) {
                            case "bar" -> Bar.Carries.BOTH;
                            case "tension bar" -> Bar.Carries.TENSION;
                            default -> Bar.Carries.COMPRESSION;
                        });
            }
            case "link" -> {
                EndConnection free = new EndConnection(0, 0, 0, 0, 0, 0);
                EndConnection springs = joint(in, r, "start joint", free);
                return upward == null
                        ? SpringLink.of(name, start, end, springs)
                        : new SpringLink(name, start, end, springs, Vector.X, upward);
            }
            case "cable" -> {
                return cable(in, r, name, node(in, r, "start", places), node(in, r, "end", places));
            }
            default ->
                    throw in.refused(
                            r, "kind", "beam, bar, tension bar, compression bar, link or cable");
        }
    }

    private static Node node(FieldReader in, int r, String column, Map<String, Node> places) {
        Node found = places.get(in.text(r, column));
        if (found == null) {
            throw in.refused(r, column, "the name of a node");
        }
        return found;
    }

    private static CableMember cable(FieldReader in, int r, String name, Node start, Node end) {
        double weight = in.number(r, "weight per length", "N/m");
        double stiffness = in.number(r, "axial stiffness", "N");
        if (in.has(r, "unstressed length") == in.has(r, "horizontal force")) {
            throw in.refused(
                    r, "unstressed length", "either a length here or a horizontal force, not both");
        }
        return in.has(r, "horizontal force")
                ? CableMember.drawnTo(
                        name, start, end, weight, stiffness, in.number(r, "horizontal force", "N"))
                : new CableMember(
                        name,
                        start.name(),
                        end.name(),
                        new Cable(in.number(r, "unstressed length", "m"), weight, stiffness));
    }

    private static EndConnection joint(
            FieldReader in, int r, String column, EndConnection otherwise) {
        EndConnection joint = otherwise;
        String text = in.text(r, column);
        if (text.isEmpty()) {
            return joint;
        }
        for (String part : text.split(";", -1)) {
            String[] sides = part.split("=", 2);
            Motion motion = motion(sides[0].strip());
            if (motion == null) {
                throw in.refused(
                        r, column, "such as \"about y\" or \"about y = 2e7; along x = 1e6\"");
            }
            try {
                joint =
                        joint.with(
                                motion,
                                sides.length == 1 ? 0 : Double.parseDouble(sides[1].strip()));
            } catch (NumberFormatException e) {
                throw in.refused(r, column, "a number after =");
            }
        }
        return joint;
    }

    private static @Nullable Motion motion(String words) {
        for (Motion motion : Motion.values()) {
            if (motion.toString().equals(words)) {
                return motion;
            }
        }
        return null;
    }

    private static void support(FieldReader in, int r, FrameModelBuilder builder) {
        String node = in.required(r, "node");
        String kind = in.required(r, "kind");
        switch (kind) {
            case "fixed" -> builder.fix(node);
            case "pinned" -> builder.pin(node);
            case "in plane" -> builder.inPlane();
            case "along", "about" ->
                    builder.support(
                            in.make(
                                    r,
                                    () ->
                                            new Support(
                                                    node,
                                                    kind.equals("about"),
                                                    in.vector(r, "", ""),
                                                    in.number(
                                                            r,
                                                            "stiffness",
                                                            "",
                                                            Double.POSITIVE_INFINITY))));
            default -> throw in.refused(r, "kind", "fixed, pinned, along, about or in plane");
        }
    }

    /**
     * Reads load cases.
     *
     * @param table the table of loads
     * @return the cases, in the order in which they first occur
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     */
    public static List<LoadCase> loads(CsvTable table) {
        return loads(table, Map.of());
    }

    /**
     * Reads load cases in which some fields stand for quantities.
     *
     * @param table the table of loads
     * @param given quantities by name, for fields such as {@code =g}
     * @return the cases, in the order in which they first occur
     * @throws org.skewback.data.TableException if a field cannot be used; names table, line and column
     */
    public static List<LoadCase> loads(CsvTable table, Map<String, Quantity> given) {
        FieldReader in = new FieldReader(table, given, LOADS);
        Map<String, List<Load>> cases = new LinkedHashMap<>();
        for (int i = 0; i < in.size(); i++) {
            int r = i;
            cases.computeIfAbsent(in.required(r, "case"), fresh -> new ArrayList<>())
                    .add(in.make(r, () -> load(in, r)));
        }
        List<LoadCase> all = new ArrayList<>();
        cases.forEach((name, loads) -> all.add(new LoadCase(name, loads)));
        return List.copyOf(all);
    }

    private static Load load(FieldReader in, int r) {
        String kind = in.required(r, "kind");
        if (kind.equals("weight")) {
            Vector acceleration = in.vectorOrNone(r, "acceleration ", "m/s²");
            return new SelfWeight(
                    acceleration == null ? new Vector(0, 0, -9.80665) : acceleration,
                    FrameInput.parts(in.text(r, "on"), ";"));
        } else if (kind.equals("cable pull")) {
            return new CablePull(FrameInput.parts(in.text(r, "on"), ";"));
        }
        String on = in.required(r, "on");
        double to = in.number(r, "to", "m", Double.POSITIVE_INFINITY);
        return switch (kind) {
            case "node" ->
                    new NodalLoad(on, in.vector(r, "force ", "N"), in.vector(r, "moment ", "N·m"));
            case "point" ->
                    new PointLoad(
                            on,
                            in.number(r, "at", "m", 0),
                            in.vector(r, "force ", "N"),
                            in.vector(r, "moment ", "N·m"),
                            axes(in, r));
            case "line" -> {
                Vector from = in.vector(r, "intensity ", "N/m");
                Vector end = in.vectorOrNone(r, "end intensity ", "N/m");
                yield new LineLoad(
                        on,
                        in.number(r, "at", "m", 0),
                        to,
                        from,
                        end == null ? from : end,
                        axes(in, r));
            }
            case "line moment" -> {
                Vector moment = in.vector(r, "line moment ", "N·m/m");
                Vector end = in.vectorOrNone(r, "end line moment ", "N·m/m");
                yield new LineMoment(
                        on,
                        in.number(r, "at", "m", 0),
                        to,
                        moment,
                        end == null ? moment : end,
                        axes(in, r));
            }
            case "temperature" ->
                    new Warming(
                            on,
                            in.number(r, "rise", "K", 0),
                            in.number(r, "gradient y", "K/m", 0),
                            in.number(r, "gradient z", "K/m", 0));
            case "lack of fit" -> new LackOfFit(on, in.number(r, "length", "m"));
            case "initial force" -> new InitialForce(on, in.number(r, "tension", "N"));
            case "ground" ->
                    new GroundMovement(
                            on, in.vector(r, "movement ", "m"), in.vector(r, "rotation ", "rad"));
            case "tendon" ->
                    new Tendon(
                            on,
                            in.number(r, "tension", "N"),
                            in.number(r, "start y", "m", 0),
                            in.number(r, "start z", "m", 0),
                            in.number(r, "middle y", "m", 0),
                            in.number(r, "middle z", "m", 0),
                            in.number(r, "end y", "m", 0),
                            in.number(r, "end z", "m", 0));
            case "dislocation" -> {
                ForceComponent component = component(in, r);
                yield new Dislocation(
                        on,
                        in.number(r, "at", "m", 0),
                        component,
                        component.isMoment()
                                ? in.number(r, "kink", "rad")
                                : in.number(r, "slip", "m"));
            }
            default ->
                    throw in.refused(
                            r,
                            "kind",
                            "node, point, line, line moment, weight, temperature, lack of fit,"
                                    + " initial force, tendon, ground, dislocation or cable pull");
        };
    }

    private static ForceComponent component(FieldReader in, int r) {
        for (ForceComponent component : ForceComponent.values()) {
            if (component.symbol().equals(in.text(r, "component"))) {
                return component;
            }
        }
        throw in.refused(r, "component", "N, V_y, V_z, T, M_y or M_z");
    }

    private static LoadAxes axes(FieldReader in, int r) {
        return switch (in.text(r, "axes")) {
            case "", "global" -> LoadAxes.GLOBAL;
            case "local" -> LoadAxes.LOCAL;
            case "projected" -> LoadAxes.PROJECTED;
            default -> throw in.refused(r, "axes", "global, local or projected");
        };
    }

    /**
     * Writes a model as tables that read back as the same model.
     *
     * @param model the model
     * @return CSV text by name: nodes, materials, sections, members, supports
     * @throws IllegalArgumentException if a section profile is a function, which no table holds
     */
    public static Map<String, String> write(FrameModel model) {
        Map<String, String> files = new LinkedHashMap<>();
        CsvWriter nodes = new CsvWriter("name,x [m],y [m],z [m]");
        for (Node node : model.nodes()) {
            nodes.row(node.name(), node.place().x(), node.place().y(), node.place().z());
        }
        LinkedHashSet<Material> materials = new LinkedHashSet<>();
        LinkedHashSet<Section> sections = new LinkedHashSet<>();
        CsvWriter members =
                new CsvWriter(
                        "name,kind,start,end,material,section,end section,upward x,upward y,upward"
                            + " z,roll [rad],start arm x [m],start arm y [m],start arm z [m],end"
                            + " arm x [m],end arm y [m],end arm z [m],start joint,end"
                            + " joint,unstressed length [m],weight per length [N/m],axial stiffness"
                            + " [N],horizontal force [N]");
        for (Member member : model.members()) {
            write(member, members, materials, sections);
        }
        CsvWriter material =
                new CsvWriter(
                        "name,young modulus [Pa],shear modulus [Pa],density [kg/m³],expansion"
                                + " [1/K]");
        for (Material one : materials) {
            material.row(
                    one.name(),
                    one.youngModulus(),
                    one.shearModulus(),
                    one.density(),
                    one.expansion());
        }
        CsvWriter section =
                new CsvWriter(
                        "name,kind,area [m²],shear area y [m²],shear area z [m²],torsion constant"
                                + " [m⁴],second moment y [m⁴],second moment z [m⁴],width [m],height"
                                + " [m],web [m],flange [m]");
        for (Section one : sections) {
            write(one, section);
        }
        CsvWriter supports = new CsvWriter("node,kind,x,y,z,stiffness");
        if (model.isInPlane()) {
            supports.row("*", "in plane", "", "", "", "");
        }
        for (Support support : model.supports()) {
            supports.row(
                    support.node(),
                    support.rotation() ? "about" : "along",
                    support.direction().x(),
                    support.direction().y(),
                    support.direction().z(),
                    support.rigid() ? "" : support.stiffness());
        }
        files.put("nodes", nodes.text());
        files.put("materials", material.text());
        files.put("sections", section.text());
        files.put("members", members.text());
        files.put("supports", supports.text());
        return files;
    }

    private static void write(
            Member member, CsvWriter out, Set<Material> materials, Set<Section> sections) {
        if (member instanceof BeamColumn beam) {
            Section first;
            String second = "";
            if (beam.profile() instanceof SectionProfile.Uniform uniform) {
                first = uniform.section();
            } else if (beam.profile() instanceof SectionProfile.Tapered tapered) {
                first = tapered.start();
                second = tapered.end().name();
                sections.add(tapered.end());
            } else {
                throw new IllegalArgumentException(
                        "profile of member "
                                + beam.name()
                                + " is a function; allowed in a table are uniform and tapered"
                                + " ones.");
            }
            sections.add(first);
            materials.add(beam.material());
            Vector up = beam.orientation().upward();
            out.row(
                    beam.name(),
                    "beam",
                    beam.start(),
                    beam.end(),
                    beam.material().name(),
                    first.name(),
                    second,
                    up == null ? "" : up.x(),
                    up == null ? "" : up.y(),
                    up == null ? "" : up.z(),
                    beam.orientation().roll(),
                    beam.startOffset().x(),
                    beam.startOffset().y(),
                    beam.startOffset().z(),
                    beam.endOffset().x(),
                    beam.endOffset().y(),
                    beam.endOffset().z(),
                    words(beam.startConnection(), Double.POSITIVE_INFINITY),
                    words(beam.endConnection(), Double.POSITIVE_INFINITY));
        } else if (member instanceof Bar bar) {
            sections.add(bar.section());
            materials.add(bar.material());
            String kind =
                    switch (bar.carries()) {
                        case BOTH -> "bar";
                        case TENSION -> "tension bar";
                        case COMPRESSION -> "compression bar";
                    };
            out.row(
                    bar.name(),
                    kind,
                    bar.start(),
                    bar.end(),
                    bar.material().name(),
                    bar.section().name());
        } else if (member instanceof CableMember cable) {
            Object[] fields = new Object[MEMBERS.size()];
            Arrays.fill(fields, "");
            fields[0] = cable.name();
            fields[1] = "cable";
            fields[2] = cable.start();
            fields[3] = cable.end();
            fields[MEMBERS.indexOf("unstressed length")] = cable.cable().unstressedLength();
            fields[MEMBERS.indexOf("weight per length")] = cable.cable().weightPerLength();
            fields[MEMBERS.indexOf("axial stiffness")] = cable.cable().axialStiffness();
            out.row(fields);
        } else if (member instanceof SpringLink link) {
            if (!link.axis().equals(Vector.X)) {
                throw new IllegalArgumentException(
                        "axis of link "
                                + link.name()
                                + " is "
                                + link.axis()
                                + "; allowed in a table is x.");
            }
            out.row(
                    link.name(),
                    "link",
                    link.start(),
                    link.end(),
                    "",
                    "",
                    "",
                    link.upward().x(),
                    link.upward().y(),
                    link.upward().z(),
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    "",
                    words(link.stiffness(), 0));
        }
    }

    private static String words(EndConnection joint, double usual) {
        List<String> parts = new ArrayList<>();
        for (Motion motion : Motion.values()) {
            double k = joint.stiffness(motion);
            if (k != usual) {
                parts.add(k == 0 ? motion.toString() : motion + " = " + CsvWriter.number(k));
            }
        }
        return String.join("; ", parts);
    }

    private static void write(Section section, CsvWriter out) {
        Shape shape = section.shape();
        if (shape == null) {
            out.row(
                    section.name(),
                    "given",
                    section.area(),
                    Double.isInfinite(section.shearAreaY()) ? "" : section.shearAreaY(),
                    Double.isInfinite(section.shearAreaZ()) ? "" : section.shearAreaZ(),
                    section.torsionConstant(),
                    section.inertiaY(),
                    section.inertiaZ());
            return;
        }
        List<Object> fields = new ArrayList<>(List.of(section.name()));
        double[] sizes;
        if (shape instanceof Box box) {
            fields.add("box");
            sizes =
                    new double[] {
                        box.width(), box.height(), box.webThickness(), box.flangeThickness()
                    };
        } else if (shape instanceof ISection i) {
            fields.add("I");
            sizes = new double[] {i.width(), i.height(), i.webThickness(), i.flangeThickness()};
        } else if (shape instanceof Tube tube) {
            fields.add("tube");
            sizes = new double[] {Double.NaN, tube.diameter(), tube.thickness(), Double.NaN};
        } else if (shape instanceof Rectangle rectangle) {
            fields.add("rectangle");
            sizes = new double[] {rectangle.width(), rectangle.height(), Double.NaN, Double.NaN};
        } else {
            throw new IllegalArgumentException(
                    "section "
                            + section.name()
                            + " has a shape of "
                            + shape.getClass().getSimpleName().toLowerCase(Locale.ROOT)
                            + "; allowed in a table are box, I, tube and rectangle.");
        }
        for (int i = 0; i < 6; i++) {
            fields.add("");
        }
        for (double size : sizes) {
            fields.add(Double.isNaN(size) ? "" : size);
        }
        out.row(fields.toArray());
    }

    /**
     * Writes load cases as a table that reads back as the same cases.
     *
     * @param cases the cases
     * @return CSV text
     * @throws IllegalArgumentException if a weight or cable pull of several members names one with a
     *     {@code ;} in its name
     */
    public static String writeLoads(List<LoadCase> cases) {
        CsvWriter out =
                new CsvWriter(String.join(",", LOADS.stream().map(FrameTables::headed).toList()));
        for (LoadCase one : cases) {
            for (Load load : one.loads()) {
                Object[] fields = new Object[LOADS.size()];
                Arrays.fill(fields, "");
                fields[0] = one.name();
                fill(load, fields);
                out.row(fields);
            }
        }
        return out.text();
    }

    /** A column of loads with the unit in which it is written. */
    private static String headed(String column) {
        String unit =
                switch (column.replaceAll(" [xyz]$", "")) {
                    case "at", "to", "movement", "length", "start", "middle", "end", "slip" -> "m";
                    case "force", "tension" -> "N";
                    case "moment" -> "N·m";
                    case "intensity", "end intensity" -> "N/m";
                    case "line moment", "end line moment" -> "N·m/m";
                    case "rotation", "kink" -> "rad";
                    case "acceleration" -> "m/s²";
                    case "rise" -> "K";
                    case "gradient" -> "K/m";
                    default -> "";
                };
        return unit.isEmpty() ? column : column + " [" + unit + "]";
    }

    private static String listed(List<String> members) {
        for (String member : members) {
            if (member.contains(";")) {
                throw new IllegalArgumentException(
                        "member " + member + " has ; in its name; allowed in a list are others.");
            }
        }
        return String.join("; ", members);
    }

    private static void put(Object[] fields, String first, Vector vector) {
        int at = LOADS.indexOf(first);
        fields[at] = vector.x();
        fields[at + 1] = vector.y();
        fields[at + 2] = vector.z();
    }

    private static void put(Object[] fields, String column, Object value) {
        fields[LOADS.indexOf(column)] = value;
    }

    private static void head(Object[] fields, String kind, String on) {
        put(fields, "kind", kind);
        put(fields, "on", on);
    }

    private static void along(Object[] fields, double from, double to, LoadAxes axes) {
        put(fields, "at", from);
        if (to < Double.POSITIVE_INFINITY) {
            put(fields, "to", to);
        }
        put(fields, "axes", axes.name().toLowerCase(Locale.ROOT));
    }

    private static void fill(Load load, Object[] fields) {
        if (load instanceof NodalLoad node) {
            head(fields, "node", node.node());
            put(fields, "force x", node.force());
            put(fields, "moment x", node.moment());
        } else if (load instanceof PointLoad point) {
            head(fields, "point", point.member());
            along(fields, point.position(), Double.POSITIVE_INFINITY, point.axes());
            put(fields, "force x", point.force());
            put(fields, "moment x", point.moment());
        } else if (load instanceof LineLoad line) {
            head(fields, "line", line.member());
            along(fields, line.from(), line.to(), line.axes());
            put(fields, "intensity x", line.atFrom());
            put(fields, "end intensity x", line.atTo());
        } else if (load instanceof LineMoment line) {
            head(fields, "line moment", line.member());
            along(fields, line.from(), line.to(), line.axes());
            put(fields, "line moment x", line.atFrom());
            put(fields, "end line moment x", line.atTo());
        } else if (load instanceof SelfWeight weight) {
            head(fields, "weight", listed(weight.members()));
            put(fields, "acceleration x", weight.acceleration());
        } else if (load instanceof CablePull pull) {
            head(fields, "cable pull", listed(pull.members()));
        } else if (load instanceof Warming warming) {
            head(fields, "temperature", warming.member());
            put(fields, "rise", warming.rise());
            put(fields, "gradient y", warming.gradientY());
            put(fields, "gradient z", warming.gradientZ());
        } else if (load instanceof LackOfFit misfit) {
            head(fields, "lack of fit", misfit.member());
            put(fields, "length", misfit.excess());
        } else if (load instanceof InitialForce initial) {
            head(fields, "initial force", initial.member());
            put(fields, "tension", initial.tension());
        } else if (load instanceof GroundMovement ground) {
            head(fields, "ground", ground.node());
            put(fields, "movement x", ground.translation());
            put(fields, "rotation x", ground.rotation());
        } else if (load instanceof Tendon tendon) {
            head(fields, "tendon", tendon.member());
            put(fields, "tension", tendon.force());
            put(fields, "start y", tendon.startY());
            put(fields, "start z", tendon.startZ());
            put(fields, "middle y", tendon.middleY());
            put(fields, "middle z", tendon.middleZ());
            put(fields, "end y", tendon.endY());
            put(fields, "end z", tendon.endZ());
        } else if (load instanceof Dislocation cut) {
            head(fields, "dislocation", cut.member());
            put(fields, "at", cut.position());
            put(fields, "component", cut.component().symbol());
            put(fields, cut.component().isMoment() ? "kink" : "slip", cut.amount());
        }
    }
}
