package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Showing;
import hearthcloth.cloth.layout.Order;
import hearthcloth.colour.Colour;
import hearthcloth.plan.colour.ColourGoal;
import hearthcloth.plan.colour.LeastAmiss;
import hearthcloth.plan.colour.SchemeRule;
import hearthcloth.plan.colour.TurnedPatches;
import hearthcloth.plan.fit.CutAnswer;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.model.Contrast;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Which face of a cloth with two faces and no right side lies outside, against every way there is. */
class TurnedPatchesTest {

    private static final ColourGoal READS = ColourGoal.flat(Contrast.READS);

    private static Fabric twoFaced(String name, int one, int other, Fabric.Faces faces) {
        return new Fabric(name, Colour.of(one), faces, Fabric.Nap.ANY, Optional.of(Colour.of(other)));
    }

    private static DraftTrial trial(Fabric hearth, Fabric bars, int rounds) {
        return Trials.trial(Trials.shape(Order.ROUND, rounds, 64, 16), Scheme.Kind.FIELD, hearth, bars);
    }

    private static List<Fabric> fabrics(CutAnswer answer) {
        return answer.used().stream().map(Piece::fabric).distinct().toList();
    }

    private static double amiss(CutAnswer answer) {
        return READS.amissMm(answer.cloth(), fabrics(answer));
    }

    private static List<String> patches(CutAnswer answer) {
        return answer.cloth().patches().stream()
                .map(patch -> patch.place().id())
                .toList();
    }

    /** The least of all ways of turning these patches. */
    private static double leastOfAll(CutAnswer answer, List<String> patches) {
        double least = Double.POSITIVE_INFINITY;
        for (int way = 0; way < 1 << patches.size(); way++) {
            Set<String> turned = new LinkedHashSet<>();
            for (int i = 0; i < patches.size(); i++) {
                if ((way >> i & 1) == 1) {
                    turned.add(patches.get(i));
                }
            }
            least = Math.min(least, amiss(answer.turned(turned)));
        }
        return least;
    }

    /**
     * A grey hearth of 8 in among bars of 2 in that are grey on one face and white on the other. Grey outside, the hearth is lost on
     * the front: 32 in of edge, twice. White outside it is lost on the back, which counts half: 32 in in all. Both ways the bars meet
     * themselves along 8 in on the front and, half, on the back: 12 in. So 44 in of 76 are left, and no other turning has less.
     */
    @Test
    void the_face_that_a_hearth_stands_out_from_lies_outside() {
        CutAnswer answer = trial(Trials.GREY, twoFaced("Double", 0x777777, 0xffffff, Fabric.Faces.SAME), 1)
                .answer();
        assertThat(amiss(answer)).isCloseTo(25.4 * (2 * 32 + 12), within(1e-3));

        CutAnswer better = TurnedPatches.of(answer, READS);
        assertThat(better.turned()).hasSize(4).doesNotContain("hearth");
        assertThat(amiss(better)).isCloseTo(25.4 * (32 + 12), within(1e-3));
        assertThat(amiss(better)).isCloseTo(leastOfAll(answer, patches(answer)), within(1e-6));
        assertThat(better.found()).isEqualTo(answer.found());
    }

    @Test
    void the_plan_is_cut_the_same_way_and_says_which_face_lies_outside() {
        DraftTrial trial = trial(Trials.GREY, twoFaced("Double", 0x777777, 0xffffff, Fabric.Faces.SAME), 1);
        Plan plain = ProposalSelection.plan(trial);
        Plan turned = ProposalSelection.plan(trial.answered(TurnedPatches.of(trial.answer(), READS)));
        assertThat(turned.cuts()).isEqualTo(plain.cuts());
        assertThat(plain.cloth().patches())
                .filteredOn(patch -> patch.showing() == Showing.WRONG)
                .isEmpty();
        for (Patch patch : turned.cloth().patches()) {
            assertThat(patch.showing()).isEqualTo(patch.fabric().equals("Double") ? Showing.WRONG : Showing.SAME);
        }
        assertThat(SchemeRule.holds(Scheme.Kind.FIELD, turned.cloth(), turned.fabrics()))
                .isTrue();
    }

    @Test
    void a_fabric_with_a_right_side_or_alike_from_both_is_never_turned() {
        for (Fabric bars : List.of(
                twoFaced("Right", 0x777777, 0xffffff, Fabric.Faces.RIGHT),
                twoFaced("Alike", 0x777777, 0x777777, Fabric.Faces.SAME))) {
            CutAnswer answer = trial(Trials.GREY, bars, 1).answer();
            assertThat(TurnedPatches.of(answer, READS)).isSameAs(answer);
        }
    }

    /** Seed 7; hearth and bars of two faces each: 512 ways. */
    @Test
    void no_way_of_turning_is_better() {
        SplittableRandom chance = new SplittableRandom(7);
        int gained = 0;
        for (int i = 0; i < 20; i++) {
            Fabric hearth = twoFaced("Hearth", chance.nextInt(0x1000000), chance.nextInt(0x1000000), Fabric.Faces.SAME);
            Fabric bars = twoFaced("Bars", chance.nextInt(0x1000000), chance.nextInt(0x1000000), Fabric.Faces.SAME);
            CutAnswer answer = trial(hearth, bars, 2).answer();
            CutAnswer better = TurnedPatches.of(answer, READS);
            double now = amiss(better);
            assertThat(now).isLessThanOrEqualTo(amiss(answer));
            double least = leastOfAll(answer, patches(answer));
            assertThat(now).isCloseTo(least, within(1e-6));
            gained += now < amiss(answer) - 1 ? 1 : 0;

            // what is said to be the least there must be is less than any way of turning has
            LeastAmiss bound = LeastAmiss.of(better.cloth(), Trials.plenty(hearth, bars), READS);
            assertThat(bound.boundMm()).isLessThanOrEqualTo(least + 1e-6);
        }
        assertThat(gained).isGreaterThan(10);
    }

    /** Five points of L* where one face lies outside and fifty where the other does: halves only by the second. */
    @Test
    void a_name_is_true_of_the_faces_that_lie_outside() {
        Fabric bars = twoFaced("Double", 0x777777, 0xffffff, Fabric.Faces.SAME);
        CutAnswer answer = trial(Trials.BLACK, bars, 1).answer();
        assertThat(SchemeRule.holds(Scheme.Kind.HALVES, answer.cloth(), fabrics(answer)))
                .isFalse();
        Set<String> light = new LinkedHashSet<>();
        for (Patch patch : answer.cloth().patches()) {
            if (patch.place() instanceof hearthcloth.cloth.Place.Bar bar && SchemeRule.isLightSide(bar)) {
                light.add(patch.place().id());
            }
        }
        CutAnswer halves = answer.turned(light);
        assertThat(SchemeRule.holds(Scheme.Kind.HALVES, halves.cloth(), fabrics(halves)))
                .isTrue();
    }
}
