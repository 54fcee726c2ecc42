package hearthcloth.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.colour.Lab;
import hearthcloth.gather.Grain;
import hearthcloth.gather.Group;
import hearthcloth.gather.Rim;
import hearthcloth.gather.Sorted;
import hearthcloth.gather.Sorting;
import hearthcloth.measure.Length;
import hearthcloth.photo.Doubt;
import hearthcloth.photo.KeptScale;
import hearthcloth.photo.LargestRectangle.Box;
import hearthcloth.photo.Look;
import hearthcloth.photo.Measured;
import hearthcloth.photo.Outline;
import hearthcloth.photo.Piece;
import hearthcloth.geometry.Point;
import hearthcloth.stash.Fabric;
import java.util.Optional;

/** How what was read off a photograph is written as JSON and read back: exactly, so that sizes stay what they were. */
final class PhotoCodec {

    private PhotoCodec() {}

    static String text(KeptScale scale) {
        ObjectNode node = Codec.object()
                .put("width", scale.pictureWidth())
                .put("height", scale.pictureHeight())
                .put("sheetWidth", scale.sheetWidth())
                .put("sheetHeight", scale.sheetHeight())
                .put("deviation", scale.deviation());
        node.set("sheet", Codec.list(scale.sheet(), PhotoCodec::spot));
        node.set("views", Codec.list(scale.views(), PhotoCodec::view));
        return node.toString();
    }

    static KeptScale scale(String text) {
        JsonNode node = tree(text);
        return new KeptScale(
                Codec.field(node, "width").asInt(),
                Codec.field(node, "height").asInt(),
                number(node, "sheetWidth"),
                number(node, "sheetHeight"),
                Codec.list(Codec.field(node, "sheet"), PhotoCodec::spot),
                number(node, "deviation"),
                Codec.list(Codec.field(node, "views"), PhotoCodec::view));
    }

    private static JsonNode view(KeptScale.View view) {
        ObjectNode node = Codec.object()
                .put("unit", view.unit())
                .put("kappa", view.kappa())
                .put("off", view.kappaDeviation());
        node.set("middle", spot(view.middle()));
        node.set("corners", Codec.list(view.corners(), PhotoCodec::spot));
        return node;
    }

    private static KeptScale.View view(JsonNode node) {
        return new KeptScale.View(
                spot(Codec.field(node, "middle")),
                number(node, "unit"),
                number(node, "kappa"),
                number(node, "off"),
                Codec.list(Codec.field(node, "corners"), PhotoCodec::spot));
    }

    static String text(Sorting sorting) {
        ObjectNode node = Codec.object();
        node.set("pieces", Codec.list(sorting.pieces(), PhotoCodec::sorted));
        node.set("groups", Codec.list(sorting.groups(), PhotoCodec::group));
        return node.toString();
    }

    static Sorting sorting(String text) {
        JsonNode node = tree(text);
        return new Sorting(
                Codec.list(Codec.field(node, "pieces"), PhotoCodec::sorted),
                Codec.list(Codec.field(node, "groups"), PhotoCodec::group));
    }

    private static JsonNode group(Group group) {
        return Codec.object()
                .put("id", group.id())
                .put("name", group.name())
                .put("faces", group.faces().name())
                .put("nap", group.nap().name())
                .put("washed", group.washed().name());
    }

    private static Group group(JsonNode node) {
        return new Group(
                Codec.field(node, "id").asText(),
                Codec.field(node, "name").asText(),
                Codec.word(Fabric.Faces.class, node, "faces"),
                Codec.word(Fabric.Nap.class, node, "nap"),
                Codec.word(hearthcloth.stash.Piece.Washed.class, node, "washed"));
    }

    private static JsonNode sorted(Sorted sorted) {
        ObjectNode node = Codec.object()
                .put("key", sorted.key())
                .put("byHand", sorted.byHand())
                .put("dropped", sorted.dropped())
                .put("checked", sorted.checked())
                .put("group", sorted.group());
        node.set("piece", piece(sorted.piece()));
        if (sorted.rim() instanceof Rim.Drawn drawn) {
            node.set("drawn", Codec.list(drawn.pixels(), DoubleNode::valueOf));
        }
        sorted.grain().ifPresent(grain -> {
            node.put("grain", grain.angleRad());
            node.set("along", box(grain.usable()));
        });
        return node;
    }

    private static Sorted sorted(JsonNode node) {
        Optional<Grain> grain = Optional.ofNullable(node.get("grain"))
                .map(angle -> new Grain(angle.asDouble(), box(Codec.field(node, "along"))));
        return new Sorted(
                Codec.field(node, "key").asText(),
                piece(Codec.field(node, "piece")),
                grain,
                rim(node),
                Codec.field(node, "dropped").asBoolean(),
                Codec.field(node, "checked").asBoolean(),
                Codec.field(node, "group").asText());
    }

    private static Rim rim(JsonNode node) {
        if (node.has("drawn")) {
            return new Rim.Drawn(Codec.list(node.get("drawn"), JsonNode::asDouble));
        }
        return Codec.field(node, "byHand").asBoolean() ? new Rim.Moved() : new Rim.Read();
    }

    private static JsonNode piece(Piece piece) {
        ObjectNode node = Codec.object().put("number", piece.number());
        node.set("floor", Codec.list(piece.outline().floor(), PhotoCodec::spot));
        node.set("picture", Codec.list(piece.outline().picture(), PhotoCodec::spot));
        node.set(
                "sides",
                Codec.list(
                        piece.outline().sides(),
                        side -> Codec.object()
                                .put("length", side.length().nm())
                                .put("off", side.giveOrTake().nm())));
        node.set("usable", box(piece.usable()));
        node.set("look", look(piece.look()));
        node.set(
                "doubts",
                Codec.list(
                        piece.doubts(),
                        doubt -> Codec.object().put("kind", doubt.kind().name()).put("sentence", doubt.sentence())));
        return node;
    }

    private static Piece piece(JsonNode node) {
        Outline outline = new Outline(
                Codec.list(Codec.field(node, "floor"), PhotoCodec::spot),
                Codec.list(Codec.field(node, "picture"), PhotoCodec::spot),
                Codec.list(Codec.field(node, "sides"), PhotoCodec::measured));
        return new Piece(
                Codec.field(node, "number").asInt(),
                outline,
                box(Codec.field(node, "usable")),
                look(Codec.field(node, "look")),
                Codec.list(
                        Codec.field(node, "doubts"),
                        doubt -> new Doubt(
                                Codec.word(Doubt.Kind.class, doubt, "kind"),
                                Codec.field(doubt, "sentence").asText())));
    }

    private static Measured measured(JsonNode node) {
        Length length = Codec.length(node, "length");
        return new Measured(length, Codec.length(node, "off"));
    }

    private static JsonNode box(Box box) {
        ObjectNode node = Codec.object()
                .put("width", box.width())
                .put("height", box.height())
                .put("angle", box.angleRad());
        node.set("middle", spot(box.middle()));
        return node;
    }

    private static Box box(JsonNode node) {
        return new Box(
                spot(Codec.field(node, "middle")),
                number(node, "width"),
                number(node, "height"),
                number(node, "angle"));
    }

    private static JsonNode look(Look look) {
        ObjectNode node = Codec.object().put("pattern", look.pattern().name()).put("contrast", look.contrast());
        node.set("colour", lab(look.colour()));
        node.set("one", lab(look.one()));
        node.set("two", lab(look.two()));
        return node;
    }

    private static Look look(JsonNode node) {
        return new Look(
                lab(Codec.field(node, "colour")),
                lab(Codec.field(node, "one")),
                lab(Codec.field(node, "two")),
                Codec.word(Look.Pattern.class, node, "pattern"),
                number(node, "contrast"));
    }

    private static JsonNode lab(Lab lab) {
        return JsonNodeFactory.instance
                .arrayNode()
                .add(lab.lightness())
                .add(lab.a())
                .add(lab.b());
    }

    private static Lab lab(JsonNode node) {
        return new Lab(
                node.get(0).asDouble(), node.get(1).asDouble(), node.get(2).asDouble());
    }

    private static JsonNode spot(Point spot) {
        return JsonNodeFactory.instance.arrayNode().add(spot.x()).add(spot.y());
    }

    private static Point spot(JsonNode node) {
        return new Point(node.get(0).asDouble(), node.get(1).asDouble());
    }

    private static double number(JsonNode node, String name) {
        return Codec.field(node, name).asDouble();
    }

    private static JsonNode tree(String text) {
        try {
            return Codec.JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new StoreException("What was read off this photograph cannot be read any more.", e);
        }
    }
}
