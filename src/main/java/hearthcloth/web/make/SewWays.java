package hearthcloth.web.make;

import hearthcloth.cloth.making.Face;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignFit;
import hearthcloth.plan.rework.RemainingPlan.Resewn;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.web.gift.HeldGift;
import hearthcloth.web.gift.Wished;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Swatches;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.Purpose;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.Workbench;
import hearthcloth.wrap.Capacity;
import java.util.List;
import java.util.Optional;

/**
 * The ways on from a step whose measure is not as planned, each drawn in full, to choose one.
 *
 * @param step its number, from 0
 * @param asked what she measured, as the form says it again
 * @param told what it means, in a sentence
 */
public record SewWays(SavedCloth cloth, int step, Asked asked, String told, List<Way> ways) {

    private static final int MOST_TIES = 2;

    /** What she measured: of the work, or of the bar before it is sewn on; what she left out is empty. */
    public record Asked(String width, String height, String bar) {}

    /**
     * One way on.
     *
     * @param key what is posted to choose it
     * @param size of the cloth then
     * @param words what it means, one sentence each
     * @param lacking what is short; then it cannot be chosen
     * @param picture of the cloth then
     */
    public record Way(String key, String title, String size, List<String> words, List<String> lacking, String picture) {
        public boolean isOpen() {
            return lacking.isEmpty();
        }
    }

    /** What all ways of one cloth have in common: how they are drawn, and how the one she takes is booked. */
    record Desk(PageContext room, SavedCloth cloth) {

        /** How she is spoken to, by the ruler the cloth is cut to. */
        Voice voice() {
            return ClothAsked.settings(room, cloth).voice();
        }

        MakingWords words() {
            return MakingWords.in(voice().language());
        }

        Ruler ruler() {
            return ClothAsked.settings(room, cloth).ruler();
        }

        /** Sentences of the planner, as she reads them. */
        List<String> said(List<Sentence> sentences) {
            Voice voice = ClothAsked.settings(room, cloth).voice();
            return sentences.stream().map(one -> one.in(voice)).toList();
        }

        Workbench bench() {
            return new Workbench(
                    cloth.document(),
                    room.store().atHand().freeFor(cloth.id()),
                    room.store().stash().nextPiece(),
                    ruler());
        }

        /** The size a design finishes at, as it is written. */
        String size(Design design) {
            return voice().write(design.layout().finished(), Rounding.NEAREST);
        }

        String picture(Optional<Plan> plan, Design design) {
            Swatches swatches = new Swatches(
                    plan.map(Plan::fabrics).orElseGet(design::fabrics),
                    room.store().swatches().across());
            return ClothDrawing.still(
                    plan.map(Plan::cloth).orElseGet(() -> DesignFit.unfitted(design)),
                    Face.FRONT,
                    swatches,
                    words().waysPicture(size(design)));
        }

        /** Whether it ties what it is for; where it is for nothing, what it ties at most. */
        List<String> ties(Size size) {
            String fits = Wished.of(room.store(), cloth)
                    .fits(size, ClothAsked.settings(room, cloth).voice());
            if (!fits.isEmpty()) {
                return List.of(fits);
            }
            return Capacity.of(size, Purpose.tail(ruler()).usual()).stream()
                    .map(capacity -> HeldGift.of(
                            capacity, ClothAsked.settings(room, cloth).voice()))
                    .filter(HeldGift::fits)
                    .limit(MOST_TIES)
                    .map(holds -> words().waysTies(holds.largest(), holds.tie()))
                    .toList();
        }

        String cutting(Resewn resewn) {
            if (resewn.cuts().isEmpty()) {
                return words().waysNoCut();
            }
            List<String> bars = resewn.cuts().stream()
                    .flatMap(cut -> cut.tree().kept().stream())
                    .map(kept -> kept.patch().replaceFirst("\\..*", ""))
                    .distinct()
                    .sorted()
                    .toList();
            return words().waysToCut(
                            String.join(", ", bars), bars.size(), resewn.cuts().size());
        }

        /** Books a way; where to look next: at what is to be cut now, or at the next step. */
        String book(Deed deed) {
            List<PieceCut> cuts = room.store().book(cloth, deed, room.settings().voice()).document().plan().stream()
                    .flatMap(plan -> plan.cuts().stream())
                    .toList();
            return cuts.stream()
                    .filter(cut -> !cut.past())
                    .findFirst()
                    .map(first -> "/cut/" + cloth.id() + "?piece=" + cuts.indexOf(first))
                    .orElse("/sew/" + cloth.id());
        }
    }
}
