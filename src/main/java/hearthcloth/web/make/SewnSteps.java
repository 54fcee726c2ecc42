package hearthcloth.web.make;

import hearthcloth.cloth.Step;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project.Stage;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** What is told of steps that are done and undone at the machine. */
final class SewnSteps {

    private SewnSteps() {}

    /** What a step sews. */
    static BenchFact.Seam seam(AtTheMachine step) {
        String up = SewSide.bar(step)
                .flatMap(bar -> step.seam())
                .map(SewnSteps::showing)
                .orElse("");
        return new BenchFact.Seam(
                step.kind().name().toLowerCase(Locale.ROOT), SewSide.bar(step).orElse(""), up);
    }

    private static String showing(Step seam) {
        return seam.patches(seam.added()).get(0).showing().name();
    }

    /** A step that is done now. */
    static BenchFact done(SavedCloth cloth, List<AtTheMachine> steps, int step, Instant now) {
        return new BenchFact.Sewn(step, seam(steps.get(step)), now.toString(), null, isLast(cloth, steps, step));
    }

    /** Whether the cloth is sewn with this step; one that she noted as sewn before is so already. */
    static boolean isLast(SavedCloth cloth, List<AtTheMachine> steps, int step) {
        return step + 1 == steps.size() && cloth.document().life().stage() == Stage.CUT;
    }

    /** The name of a step in the journal: {@code sewed 2B on}, or {@code step 1 sewn} where no bar is sewn on. */
    static String label(List<AtTheMachine> steps, int step) {
        return SewSide.bar(steps.get(step)).map(bar -> "sewed " + bar + " on").orElse("step " + (step + 1) + " sewn");
    }

    /** All steps from one on opened again. */
    static BenchFact unpicked(SavedCloth cloth, List<AtTheMachine> steps, int from) {
        int to = cloth.document().bench().sewn();
        List<String> bars = new ArrayList<>();
        steps.subList(Math.min(from, steps.size()), Math.min(to, steps.size()))
                .forEach(step -> SewSide.bar(step).ifPresent(bars::add));
        Collections.reverse(bars);
        return new BenchFact.Unpicked(from, to, bars, cloth.document().life().stage() == Stage.SEWN);
    }
}
