package hearthcloth.store.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle.Box;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.stash.Fabric;
import hearthcloth.work.photo.MarkedGrain;
import hearthcloth.work.photo.OutlineOrigin;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.SortedPiece;
import java.util.Optional;

/** Writes what was read from a photograph as JSON and reads it back exactly, so that sizes do not change. */
public final class PhotoCodec {

    private PhotoCodec() {}

    public static String text(KeptScale scale) {
        ObjectNode node = DesignCodec.object()
                .put("width", scale.pictureWidth())
                .put("height", scale.pictureHeight())
                .put("sheetWidth", scale.sheetWidth())
                .put("sheetHeight", scale.sheetHeight())
                .put("deviation", scale.deviation());
        node.set("sheet", DesignCodec.list(scale.sheet(), PhotoCodec::spot));
        node.set("views", DesignCodec.list(scale.views(), PhotoCodec::view));
        return node.toString();
    }

    public static KeptScale scale(String text) {
        JsonNode node = tree(text);
        return new KeptScale(
                DesignCodec.field(node, "width").asInt(),
                DesignCodec.field(node, "height").asInt(),
                number(node, "sheetWidth"),
                number(node, "sheetHeight"),
                DesignCodec.list(DesignCodec.field(node, "sheet"), PhotoCodec::spot),
                number(node, "deviation"),
                DesignCodec.list(DesignCodec.field(node, "views"), PhotoCodec::view));
    }

    private static JsonNode view(KeptScale.View view) {
        ObjectNode node = DesignCodec.object()
                .put("unit", view.unit())
                .put("kappa", view.kappa())
                .put("off", view.kappaDeviation());
        node.set("middle", spot(view.middle()));
        node.set("corners", DesignCodec.list(view.corners(), PhotoCodec::spot));
        return node;
    }

    private static KeptScale.View view(JsonNode node) {
        return new KeptScale.View(
                spot(DesignCodec.field(node, "middle")),
                number(node, "unit"),
                number(node, "kappa"),
                number(node, "off"),
                DesignCodec.list(DesignCodec.field(node, "corners"), PhotoCodec::spot));
    }

    public static String text(PhotoSorting sorting) {
        ObjectNode node = DesignCodec.object();
        node.set("pieces", DesignCodec.list(sorting.pieces(), PhotoCodec::sorted));
        node.set("groups", DesignCodec.list(sorting.groups(), PhotoCodec::group));
        return node.toString();
    }

    public static PhotoSorting sorting(String text) {
        JsonNode node = tree(text);
        return new PhotoSorting(
                DesignCodec.list(DesignCodec.field(node, "pieces"), PhotoCodec::sorted),
                DesignCodec.list(DesignCodec.field(node, "groups"), PhotoCodec::group));
    }

    private static JsonNode group(PieceGroup group) {
        return DesignCodec.object()
                .put("id", group.id())
                .put("name", group.name())
                .put("faces", group.faces().name())
                .put("nap", group.nap().name())
                .put("washed", group.washed().name());
    }

    private static PieceGroup group(JsonNode node) {
        return new PieceGroup(
                DesignCodec.field(node, "id").asText(),
                DesignCodec.field(node, "name").asText(),
                DesignCodec.word(Fabric.Faces.class, node, "faces"),
                DesignCodec.word(Fabric.Nap.class, node, "nap"),
                DesignCodec.word(hearthcloth.stash.Piece.Washed.class, node, "washed"));
    }

    private static JsonNode sorted(SortedPiece sorted) {
        ObjectNode node = DesignCodec.object()
                .put("key", sorted.key())
                .put("byHand", sorted.byHand())
                .put("dropped", sorted.dropped())
                .put("checked", sorted.checked())
                .put("group", sorted.group());
        node.set("piece", piece(sorted.piece()));
        if (sorted.rim() instanceof OutlineOrigin.Drawn drawn) {
            node.set("drawn", DesignCodec.list(drawn.pixels(), DoubleNode::valueOf));
        }
        sorted.grain().ifPresent(grain -> {
            node.put("grain", grain.angleRad());
            node.set("along", box(grain.usable()));
        });
        return node;
    }

    private static SortedPiece sorted(JsonNode node) {
        Optional<MarkedGrain> grain = Optional.ofNullable(node.get("grain"))
                .map(angle -> new MarkedGrain(angle.asDouble(), box(DesignCodec.field(node, "along"))));
        return new SortedPiece(
                DesignCodec.field(node, "key").asText(),
                piece(DesignCodec.field(node, "piece")),
                grain,
                rim(node),
                DesignCodec.field(node, "dropped").asBoolean(),
                DesignCodec.field(node, "checked").asBoolean(),
                DesignCodec.field(node, "group").asText());
    }

    private static OutlineOrigin rim(JsonNode node) {
        if (node.has("drawn")) {
            return new OutlineOrigin.Drawn(DesignCodec.list(node.get("drawn"), JsonNode::asDouble));
        }
        return DesignCodec.field(node, "byHand").asBoolean() ? new OutlineOrigin.Moved() : new OutlineOrigin.Read();
    }

    private static JsonNode piece(ReadPiece piece) {
        ObjectNode node = DesignCodec.object().put("number", piece.number());
        node.set("floor", DesignCodec.list(piece.outline().floor(), PhotoCodec::spot));
        node.set("picture", DesignCodec.list(piece.outline().picture(), PhotoCodec::spot));
        node.set(
                "sides",
                DesignCodec.list(
                        piece.outline().sides(),
                        side -> DesignCodec.object()
                                .put("length", side.length().nm())
                                .put("off", side.giveOrTake().nm())));
        node.set("usable", box(piece.usable()));
        node.set("look", look(piece.look()));
        node.set(
                "doubts",
                DesignCodec.list(
                        piece.doubts(),
                        doubt -> DesignCodec.object()
                                .put("kind", doubt.kind().name())
                                .put("sentence", doubt.sentence())));
        return node;
    }

    private static ReadPiece piece(JsonNode node) {
        PieceOutline outline = new PieceOutline(
                DesignCodec.list(DesignCodec.field(node, "floor"), PhotoCodec::spot),
                DesignCodec.list(DesignCodec.field(node, "picture"), PhotoCodec::spot),
                DesignCodec.list(DesignCodec.field(node, "sides"), PhotoCodec::measured));
        return new ReadPiece(
                DesignCodec.field(node, "number").asInt(),
                outline,
                box(DesignCodec.field(node, "usable")),
                look(DesignCodec.field(node, "look")),
                DesignCodec.list(
                        DesignCodec.field(node, "doubts"),
                        doubt -> new Doubt(
                                DesignCodec.word(Doubt.Kind.class, doubt, "kind"),
                                DesignCodec.field(doubt, "sentence").asText())));
    }

    private static MeasuredLength measured(JsonNode node) {
        Length length = DesignCodec.length(node, "length");
        return new MeasuredLength(length, DesignCodec.length(node, "off"));
    }

    private static JsonNode box(Box box) {
        ObjectNode node = DesignCodec.object()
                .put("width", box.width())
                .put("height", box.height())
                .put("angle", box.angleRad());
        node.set("middle", spot(box.middle()));
        return node;
    }

    private static Box box(JsonNode node) {
        return new Box(
                spot(DesignCodec.field(node, "middle")),
                number(node, "width"),
                number(node, "height"),
                number(node, "angle"));
    }

    private static JsonNode look(PieceAppearance look) {
        ObjectNode node =
                DesignCodec.object().put("pattern", look.pattern().name()).put("contrast", look.contrast());
        node.set("colour", lab(look.colour()));
        node.set("one", lab(look.one()));
        node.set("two", lab(look.two()));
        return node;
    }

    private static PieceAppearance look(JsonNode node) {
        return new PieceAppearance(
                lab(DesignCodec.field(node, "colour")),
                lab(DesignCodec.field(node, "one")),
                lab(DesignCodec.field(node, "two")),
                DesignCodec.word(PieceAppearance.Pattern.class, node, "pattern"),
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
        return DesignCodec.field(node, name).asDouble();
    }

    private static JsonNode tree(String text) {
        try {
            return DesignCodec.JSON.readTree(text);
        } catch (JsonProcessingException e) {
            throw new StoreException("What was read off this photograph cannot be read any more.", e);
        }
    }
}
