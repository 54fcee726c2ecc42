package hearthcloth.store.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Rect;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Bound;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;

/** Writes a whole plan as JSON and reads it back: the cloth in its notation, each piece's cuts as nested cuts. */
final class PlanCodec {

    private PlanCodec() {}

    static JsonNode write(Plan plan) {
        ObjectNode node = DesignCodec.object();
        node.putObject("story")
                .put("title", plan.story().title())
                .put("goodAt", plan.story().goodAt())
                .<ObjectNode>set("chosen", DesignCodec.texts(plan.story().chosen()))
                .set("cautions", DesignCodec.texts(plan.story().cautions()));
        node.put("work", Notation.print(plan.cloth().work()));
        node.set("making", DesignCodec.making(plan.cloth().making()));
        node.set("rules", DesignCodec.rules(plan.rules()));
        node.set("cuts", DesignCodec.list(plan.cuts(), PlanCodec::cut));
        node.putObject("bound")
                .put("joins", plan.bound().joins())
                .put("lostMm2", plan.bound().lostMm2())
                .put("touchedMm2", plan.bound().touchedMm2());
        return node;
    }

    static Plan read(JsonNode node) {
        JsonNode story = DesignCodec.field(node, "story");
        JsonNode bound = DesignCodec.field(node, "bound");
        return new Plan(
                new Plan.Story(
                        DesignCodec.field(story, "title").asText(),
                        DesignCodec.field(story, "goodAt").asText(),
                        DesignCodec.texts(DesignCodec.field(story, "chosen")),
                        DesignCodec.texts(DesignCodec.field(story, "cautions"))),
                new Cloth(
                        Notation.parse(DesignCodec.field(node, "work").asText()),
                        DesignCodec.making(DesignCodec.field(node, "making"))),
                DesignCodec.rules(DesignCodec.field(node, "rules")),
                DesignCodec.list(DesignCodec.field(node, "cuts"), PlanCodec::cut),
                new Bound(
                        DesignCodec.field(bound, "joins").asInt(),
                        DesignCodec.field(bound, "lostMm2").asDouble(),
                        DesignCodec.field(bound, "touchedMm2").asDouble()));
    }

    private static JsonNode cut(PieceCut cut) {
        ObjectNode node = DesignCodec.piece(cut.piece());
        node.set("tree", tree(cut.tree()));
        return node;
    }

    private static PieceCut cut(JsonNode node) {
        Piece piece = DesignCodec.piece(node);
        Rect whole = Rect.at(Length.ZERO, Length.ZERO, piece.size());
        return new PieceCut(piece, tree(DesignCodec.field(node, "tree"), whole));
    }

    private static JsonNode tree(CutTree tree) {
        if (tree instanceof CutTree.Parted cut) {
            ObjectNode node = DesignCodec.object()
                    .put("upright", cut.upright())
                    .put("at", cut.line().nm());
            node.set("first", tree(cut.first()));
            node.set("second", tree(cut.second()));
            return node;
        }
        if (tree instanceof CutTree.Kept kept) {
            return DesignCodec.object().put("patch", kept.patch()).put("turned", kept.turned());
        }
        return DesignCodec.object();
    }

    private static CutTree tree(JsonNode node, Rect at) {
        if (node.has("at")) {
            boolean upright = node.get("upright").asBoolean();
            Length line = DesignCodec.length(node, "at");
            Rect first = upright
                    ? Rect.at(at.x(), at.y(), new Size(line.minus(at.x()), at.height()))
                    : Rect.at(at.x(), at.y(), new Size(at.width(), line.minus(at.y())));
            Rect second = upright
                    ? Rect.at(line, at.y(), new Size(at.right().minus(line), at.height()))
                    : Rect.at(at.x(), line, new Size(at.width(), at.bottom().minus(line)));
            return CutTree.parted(at, upright, line, tree(node.get("first"), first), tree(node.get("second"), second));
        }
        return node.has("patch")
                ? new CutTree.Kept(
                        at, node.get("patch").asText(), node.get("turned").asBoolean())
                : new CutTree.Left(at);
    }
}
