package hearthcloth.work.design;

import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.work.Project;
import java.util.Optional;

/**
 * The ruler a cloth is cut with: it keeps its own from the first cut on, whatever she uses now.
 *
 * @param now the ruler she uses now
 */
public record OwnRuler(Project cloth, Ruler now) {

    /** The one whose marks it is cut to. */
    public Ruler own() {
        return Ruler.ofStep(cloth.design().making().margins().mark()).orElse(now);
    }

    /** Whether she uses another one now. */
    public boolean isOther() {
        return own() != now;
    }

    /** Whether something of it is cut, so that its marks stay. */
    public boolean isBegun() {
        return cloth.life().stage() != Project.Stage.DESIGNED
                || !cloth.bench().ticked().isEmpty()
                || cloth.plan().stream().flatMap(plan -> plan.cuts().stream()).anyMatch(PieceCut::past);
    }

    /** The same design to the marks of the ruler she uses now; empty where it is that already, or must stay as it is. */
    Optional<Design> toNewMarks() {
        if (isBegun() || !isOther()) {
            return Optional.empty();
        }
        Making making = cloth.design().making();
        Margins margins = new Margins(making.leeway(), making.trim(), now.step());
        return Optional.of(new DesignEdits(cloth.design())
                .making(new Making(making.seam(), making.hem(), margins, making.fell())));
    }
}
