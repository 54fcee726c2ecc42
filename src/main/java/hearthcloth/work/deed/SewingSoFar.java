package hearthcloth.work.deed;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.Step;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.MendingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Stage;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The steps of a cloth at the machine, and which of them are done.
 *
 * @param steps all of them, in any language
 */
public record SewingSoFar(Project cloth, List<AtTheMachine> steps) {

    public SewingSoFar {
        steps = List.copyOf(steps);
    }

    static SewingSoFar of(Project cloth, Ruler ruler) {
        return new SewingSoFar(cloth, steps(cloth.plan().orElseThrow(), ruler));
    }

    static List<AtTheMachine> steps(Plan plan, Ruler ruler) {
        return AtTheMachine.of(Guide.of(plan, ruler), Voice.english(ruler).sewing());
    }

    /** How many bars are sewn on when so many steps are done. */
    public int bars(int done) {
        return (int) steps.subList(0, Math.min(done, steps.size())).stream()
                .filter(one -> one.kind() == AtTheMachine.Kind.SEAM)
                .count();
    }

    /** How many bars are sewn on now. */
    int bars() {
        return bars(cloth.bench().sewn());
    }

    /** The bar a step sews on; empty where it sews on none. */
    public static Optional<String> bar(AtTheMachine step) {
        return step.kind() != AtTheMachine.Kind.SEAM
                ? Optional.empty()
                : step.seam()
                        .map(seam -> seam.patches(seam.added()).get(0).place())
                        .filter(place -> place instanceof Place.Bar)
                        .map(place -> ((Place.Bar) place).bar());
    }

    /** What a step sews. */
    BenchFact.Seam seam(int step) {
        AtTheMachine one = steps.get(step);
        String up =
                bar(one).flatMap(bar -> one.seam()).map(SewingSoFar::showing).orElse("");
        return new BenchFact.Seam(one.kind().name().toLowerCase(Locale.ROOT), bar(one).orElse(""), up);
    }

    private static String showing(Step seam) {
        return seam.patches(seam.added()).get(0).showing().name();
    }

    /** Whether the cloth is sewn with this step; one that she noted as sewn before is so already. */
    boolean isLast(int step) {
        return step + 1 == steps.size() && cloth.life().stage() == Stage.CUT;
    }

    /** A step is done; empty where it is not the next one, as when another device was quicker. */
    public Optional<Deed> done(int step, Instant now) {
        if (step != cloth.bench().sewn() || step >= steps.size()) {
            return Optional.empty();
        }
        Sentence label = bar(steps.get(step))
                .map(bar -> MendingSentences.deedSewn(Argument.text(bar), Argument.text(""), "bar"))
                .orElseGet(() -> MendingSentences.deedSewn(Argument.number(step + 1L), Argument.text(""), "step"));
        return Optional.of(Deed.of(label, new BenchFact.Sewn(step, seam(step), now.toString(), null, isLast(step))));
    }

    /** This step and those after it are to do again; empty where it is not done. */
    public Optional<Deed> unpicked(int from) {
        int to = cloth.bench().sewn();
        if (from >= to) {
            return Optional.empty();
        }
        int undone = Math.min(to, steps.size()) - from - 1;
        Optional<String> first = bar(steps.get(Math.min(from, steps.size() - 1)));
        List<String> bars = new ArrayList<>();
        steps.subList(Math.min(from, steps.size()), Math.min(to, steps.size()))
                .forEach(step -> bar(step).ifPresent(bars::add));
        Collections.reverse(bars);
        return Optional.of(Deed.of(
                MendingSentences.deedUnpicked(
                        Math.max(0, undone),
                        first.map(Argument::text).orElse(Argument.number(from + 1L)),
                        first.isPresent() ? "bar" : "step"),
                new BenchFact.Unpicked(from, to, bars, cloth.life().stage() == Stage.SEWN)));
    }
}
