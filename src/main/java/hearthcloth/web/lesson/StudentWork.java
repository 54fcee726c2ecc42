package hearthcloth.web.lesson;

import hearthcloth.cloth.Laid;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineWords;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.web.door.ClassDoor;
import hearthcloth.web.kit.PageView;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a student has before her on her phone: the idea, her scraps, her cloth and how far it has grown. */
@PageView.Template("class-mine.jte")
public record StudentWork(Shell shell, Idea idea, Form form, Optional<Cloth> cloth, Optional<Grown> grown)
        implements PageView {

    /** The idea, as a student reads it. */
    public record Idea(String name, String by, List<String> words, List<String> rules) {

        private static Idea of(Language language, Guideline idea) {
            Guideline.Told told = idea.told();
            Voice voice = Voice.of(language, told.ruler());
            return new Idea(
                    told.name(),
                    told.by(),
                    told.words().lines().filter(line -> !line.isBlank()).toList(),
                    GuidelineWords.of(idea).stream().map(rule -> rule.in(voice)).toList());
        }
    }

    /** Her scraps, as the form holds them. */
    public record Form(String heap, String favourite, boolean metric, List<String> faults) {

        private static Form of(Language language, Workplace place) {
            Workplace.Written written = place.written();
            Voice voice = Voice.of(language, written.ruler());
            return new Form(
                    written.heap(),
                    written.favourite(),
                    written.ruler().isMetric(),
                    place.found().faults().stream().map(one -> one.in(voice)).toList());
        }
    }

    /**
     * Her cloth.
     *
     * @param front as far as it is sewn
     * @param bends what of the idea it does not keep, in sentences
     * @param why what is short
     * @param isScraps where no hearth with bars came about
     */
    public record Cloth(
            String title, String size, String front, List<String> bends, List<String> why, boolean isScraps) {}

    /** A row of the cut list. */
    public record Row(String patch, String cut, String fabric, String piece) {}

    /** How far it has grown. */
    public record Grown(int sewn, int all, boolean isShown, boolean isAnother, List<Row> cuts) {}

    /** What stands round her page. */
    public record Shell(Language language, TeachingWords words, String token, String name, Workplace.Stage stage) {}

    /** Whether an answer came and there is no cloth in it. */
    public boolean isNone() {
        return shell.stage() == Workplace.Stage.ANSWERED
                && cloth.isEmpty()
                && form.faults().isEmpty();
    }

    public boolean isLooking() {
        return shell.stage() == Workplace.Stage.LOOKING;
    }

    static StudentWork of(Language language, ClassDoor.Student student, Guideline idea, Workplace place) {
        return new StudentWork(
                new Shell(
                        language,
                        TeachingWords.in(language),
                        student.token(),
                        student.name(),
                        place.found().stage()),
                Idea.of(language, idea),
                Form.of(language, place),
                place.cloth().map(near -> cloth(language, place, near)),
                place.plan().map(plan -> grown(place, plan)));
    }

    private static Cloth cloth(Language language, Workplace place, Fitted.Nearest near) {
        Plan plan = near.plan();
        Voice voice = Voice.of(language, place.written().ruler());
        String size = voice.write(plan.cloth().finished(), Rounding.NEAREST);
        return new Cloth(
                plan.story().title().in(voice),
                size,
                Growth.drawn(place, size),
                near.bends().stream().map(bend -> bend.what().in(voice)).toList(),
                place.found().why().stream().map(one -> one.in(voice)).toList(),
                near.isScraps());
    }

    private static Grown grown(Workplace place, Plan plan) {
        List<Row> rows = new ArrayList<>();
        var sources = plan.sources();
        for (Laid laid : plan.cloth().laid()) {
            Plan.Source source =
                    Objects.requireNonNull(sources.get(laid.patch().place().id()));
            rows.add(new Row(
                    laid.patch().place().label(),
                    place.written().ruler().write(laid.cut(), Rounding.UP),
                    laid.patch().fabric(),
                    source.from().piece().id()));
        }
        return new Grown(
                place.growing().sewn(),
                plan.cloth().steps().size(),
                place.growing().isShown(),
                place.found().cloths().size() > 1,
                rows);
    }
}
