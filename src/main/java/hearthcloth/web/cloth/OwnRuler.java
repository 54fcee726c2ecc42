package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.words.designing.DesigningWords;
import hearthcloth.work.Project;
import java.util.ArrayList;
import java.util.List;

/** A cloth that may have been planned with another ruler than she uses now; it keeps its own from the first cut on. */
record OwnRuler(PageContext room, SavedCloth cloth) {

    private boolean isBegun() {
        return cloth.document().life().stage() != Project.Stage.DESIGNED
                || !cloth.document().bench().ticked().isEmpty();
    }

    private Ruler own() {
        return ClothAsked.settings(room, cloth).ruler();
    }

    /**
     * The same design planned again: as long as nothing is cut, to the marks of the ruler she uses now; where the fabric
     * does not suffice for that, to those of its own.
     */
    Project again(Stash stash) {
        Design design = cloth.document().design();
        Ruler now = room.settings().ruler();
        if (!isBegun() && own() != now) {
            Making making = design.making();
            Margins margins = new Margins(making.leeway(), making.trim(), now.step());
            Design other =
                    new DesignEdits(design).making(new Making(making.seam(), making.hem(), margins, making.fell()));
            Project planned = DesignPlanning.settled(cloth, other, stash, now);
            if (planned.plan().isPresent()) {
                return planned.onPaper(room.settings().paper().word());
            }
        }
        return DesignPlanning.settled(cloth, design, stash, own());
    }

    /** What she should know before she cuts it, a sentence each. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>(room.store().atHand().warnings(cloth.id(), room.language()));
        Ruler own = own();
        if (own != room.settings().ruler()) {
            warnings.add(DesigningWords.in(room.language())
                    .warnRuler(isBegun() ? "yes" : "no", own.isMetric() ? "metric" : "inches"));
        }
        return warnings;
    }
}
