package hearthcloth.guideline.fit;

import hearthcloth.guideline.Bend;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import java.util.List;

/**
 * What a heap makes of a guideline.
 *
 * @param cloths the nearest first; empty only where the heap makes no cloth at all
 * @param why what is short where a rule had to be bent, in sentences; may be empty
 */
public record Fitted(List<Nearest> cloths, List<Sentence> why) {

    /**
     * A cloth and the rules it does not keep.
     *
     * @param isScraps where no cloth with a hearth was found and the scraps are laid together as they are
     */
    public record Nearest(Plan plan, List<Bend> bends, boolean isScraps) {
        public Nearest {
            bends = List.copyOf(bends);
        }

        public boolean keepsAll() {
            return bends.isEmpty() && !isScraps;
        }
    }

    public Fitted {
        cloths = List.copyOf(cloths);
        why = List.copyOf(why);
    }
}
