package hearthcloth.store.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.colour.Colour;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;

/**
 * Writes the parts of a design as JSON and reads them back. Lengths are whole nanometres. Only documents of this
 * program are read; anything else is refused by an exception that names the field.
 */
public final class DesignCodec {

    public static final ObjectMapper JSON = new ObjectMapper();

    private DesignCodec() {}

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    public static <T> ArrayNode list(Collection<T> items, Function<T, JsonNode> write) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        items.forEach(item -> array.add(write.apply(item)));
        return array;
    }

    public static <T> List<T> list(JsonNode array, Function<JsonNode, T> read) {
        List<T> items = new ArrayList<>();
        array.forEach(node -> items.add(read.apply(node)));
        return items;
    }

    public static List<String> texts(JsonNode array) {
        return list(array, JsonNode::asText);
    }

    public static ArrayNode texts(Collection<String> texts) {
        return list(texts, JsonNodeFactory.instance::textNode);
    }

    public static JsonNode field(JsonNode node, String name) {
        JsonNode value = node.get(name);
        if (value == null) {
            throw new IllegalArgumentException("the document lacks \"" + name + "\"");
        }
        return value;
    }

    public static Length length(JsonNode node, String name) {
        return new Length(field(node, name).longValue());
    }

    static JsonNode size(Size size) {
        return object().put("width", size.width().nm())
                .put("height", size.height().nm());
    }

    static Size size(JsonNode node) {
        return new Size(length(node, "width"), length(node, "height"));
    }

    static <E extends Enum<E>> E word(Class<E> type, JsonNode node, String name) {
        return Enum.valueOf(type, field(node, name).asText());
    }

    static JsonNode making(Making making) {
        ObjectNode node = object().put("fell", making.fell().name());
        SeamKind seam = making.seam();
        node.putObject("seam")
                .put("name", seam.name())
                .put("build", seam.build().name())
                .put("narrow", seam.narrow().nm())
                .put("wide", seam.wide().nm())
                .put("band", seam.band().nm());
        Hem hem = making.hem();
        node.putObject("hem")
                .put("first", hem.first().nm())
                .put("second", hem.second().nm())
                .put("corner", hem.corner().name());
        Margins margins = making.margins();
        node.putObject("margins")
                .put("leeway", margins.leeway().nm())
                .put("trim", margins.trim().nm())
                .put("mark", margins.mark().nm());
        return node;
    }

    static Making making(JsonNode node) {
        JsonNode seam = field(node, "seam");
        JsonNode hem = field(node, "hem");
        JsonNode margins = field(node, "margins");
        return new Making(
                new SeamKind(
                        field(seam, "name").asText(),
                        word(SeamKind.Build.class, seam, "build"),
                        length(seam, "narrow"),
                        length(seam, "wide"),
                        length(seam, "band")),
                new Hem(length(hem, "first"), length(hem, "second"), word(Hem.Corner.class, hem, "corner")),
                new Margins(length(margins, "leeway"), length(margins, "trim"), length(margins, "mark")),
                word(Face.class, node, "fell"));
    }

    static JsonNode rules(PiecingRules rules) {
        return object().put("leastPiece", rules.leastPiece().nm())
                .put("clearance", rules.clearance().nm())
                .put("mostJoins", rules.mostJoins());
    }

    static PiecingRules rules(JsonNode node) {
        return new PiecingRules(
                length(node, "leastPiece"),
                length(node, "clearance"),
                field(node, "mostJoins").asInt());
    }

    static JsonNode fabric(Fabric fabric) {
        return object().put("name", fabric.name())
                .put("colour", fabric.colour().hex())
                .put("faces", fabric.faces().name())
                .put("nap", fabric.nap().name());
    }

    static Fabric fabric(JsonNode node) {
        return new Fabric(
                field(node, "name").asText(),
                Colour.parse(field(node, "colour").asText()),
                word(Fabric.Faces.class, node, "faces"),
                word(Fabric.Nap.class, node, "nap"));
    }

    public static ObjectNode piece(Piece piece) {
        ObjectNode node = object().put("id", piece.id())
                .put("washed", piece.washed().name())
                .put("row", piece.row());
        node.set("fabric", fabric(piece.fabric()));
        node.set("size", size(piece.size()));
        return node;
    }

    public static Piece piece(JsonNode node) {
        return new Piece(
                field(node, "id").asText(),
                fabric(field(node, "fabric")),
                size(field(node, "size")),
                word(Piece.Washed.class, node, "washed"),
                field(node, "row").asInt());
    }

    static JsonNode design(Design design) {
        ObjectNode node = object().put("order", design.order().name());
        node.set("hearth", size(design.layout().hearth()));
        node.set(
                "courses",
                list(
                        design.layout().courses(),
                        course -> object().put("side", course.side().name())
                                .put("width", course.width().nm())));
        node.put("kind", design.scheme().kind().name());
        node.set("hearthFabrics", list(design.scheme().hearth(), DesignCodec::fabric));
        node.set("barFabrics", list(design.scheme().bars(), bar -> list(bar, DesignCodec::fabric)));
        node.set("making", making(design.making()));
        node.set("rules", rules(design.rules()));
        return node;
    }

    static Design design(JsonNode node) {
        List<Layout.Course> courses = list(
                field(node, "courses"),
                course -> new Layout.Course(word(Side.class, course, "side"), length(course, "width")));
        Scheme scheme = new Scheme(
                word(Scheme.Kind.class, node, "kind"),
                list(field(node, "hearthFabrics"), DesignCodec::fabric),
                list(field(node, "barFabrics"), bar -> list(bar, DesignCodec::fabric)));
        return new Design(
                word(Order.class, node, "order"),
                new Layout(size(field(node, "hearth")), courses),
                scheme,
                making(field(node, "making")),
                rules(field(node, "rules")));
    }
}
