package hearthcloth.plan.propose;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.judge.PlanJudge;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.fit.Draft;
import hearthcloth.plan.fit.DraftTrial;
import hearthcloth.plan.fit.Fitting;
import hearthcloth.plan.fit.LayoutCandidate;
import hearthcloth.plan.fit.Supply;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.Scheme;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Stash;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The laws of a plan over two thousand random stashes and cloths, joined and unjoined, square and oblong, with right
 * sides and nap: whatever is found passes the plain reader of its plan file, and nothing beats its bounds.
 */
class FittingLawsTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatever_is_found_can_be_cut_and_sewn(long seed) throws IOException {
        Random random = new Random(seed);
        int found = 0;
        int joined = 0;
        for (int round = 0; round < 250; round++) {
            Stash stash = Stashes.scraps(5 + random.nextInt(40), random.nextLong());
            Optional<DraftTrial> trial = fitted(design(random, stash), stash);
            if (trial.isPresent()) {
                found++;
                joined += trial.get().figures().joins() > 0 ? 1 : 0;
                isSound(ProposalSelection.plan(trial.get()), stash);
            }
        }
        assertThat(found).isGreaterThan(60);
        assertThat(joined).isGreaterThan(20);
    }

    private static Design design(Random random, Stash stash) {
        Making making = Making.inches();
        List<Length> widths = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            widths.add(Length.inches(20 + random.nextInt(20), 8));
        }
        Order order = List.of(Order.ROUND, Order.PAIRS, Order.TWO_SIDES).get(random.nextInt(3));
        List<Layout.Course> cut = Layout.courses(order, 1 + random.nextInt(3), widths);
        Size hearth = new Size(Length.inches(4 + random.nextInt(8)), Length.inches(4 + random.nextInt(8)));
        Layout layout = new Layout(Layout.hearthOfCut(hearth, cut, making), Layout.finishedOfCut(cut, making));
        List<Fabric> all = stash.fabrics();
        List<List<Fabric>> bars = new ArrayList<>();
        for (int i = 0; i < layout.courses().size(); i++) {
            bars.add(random.nextInt(3) == 0 ? List.of(all.get(random.nextInt(all.size()))) : all);
        }
        return new Design(order, layout, new Scheme(Scheme.Kind.ALL, all, bars), making, PiecingRules.inches());
    }

    private static Optional<DraftTrial> fitted(Design design, Stash stash) {
        Draft draft = new Draft(new LayoutCandidate(design.order(), 1, design.layout(), List.of()), design);
        return Fitting.fit(draft, new Supply(stash), 30, 1, Budget.steps(30));
    }

    private static void isSound(Plan plan, Stash stash) throws IOException {
        Set<String> napped = stash.fabrics().stream()
                .filter(fabric -> fabric.nap() == Fabric.Nap.LENGTHWISE)
                .map(Fabric::name)
                .collect(Collectors.toSet());
        String json = new PlanFolder(plan, Ruler.EIGHTHS, Paper.A4).planFile();
        assertThat(PlanJudge.faults(json, Ruler.EIGHTHS.step().nm(), napped)).isEmpty();
        assertThat(Layers.most(plan.cloth())).isLessThan(16);
        assertThat(JoinSpread.tooClose(plan)).isEmpty();
        assertThat(plan.bound().joins()).isLessThanOrEqualTo(plan.figures().joins());
        assertThat(plan.bound().lostMm2())
                .isLessThanOrEqualTo(plan.figures().areas().lost() * (1 + 1e-9) + 1e-6);
        assertThat(plan.bound().touchedMm2())
                .isLessThanOrEqualTo(plan.figures().areas().touched() * (1 + 1e-12));
    }
}
