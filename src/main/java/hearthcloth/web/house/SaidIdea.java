package hearthcloth.web.house;

import hearthcloth.guideline.ColourRule;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.SentCloth;
import hearthcloth.guideline.Taken;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.file.PlanReader;
import hearthcloth.measure.MeasureException;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.handing.HandingWords;
import hearthcloth.words.sentence.Sentence;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** An idea as a form of the workroom says it, or as a file does that somebody sent. */
public final class SaidIdea {

    private SaidIdea() {}

    static Plan plan(PageContext room, SavedCloth cloth) {
        if (cloth.document().isFree()) {
            throw new MeasureException(words(room).scraps());
        }
        return cloth.document()
                .plan()
                .orElseThrow(() -> new StoreException(words(room).lacks()));
    }

    /**
     * The idea in one of her cloths, as a form says it: of each choice whether it is kept.
     *
     * @throws MeasureException where a cloth of scraps is meant
     */
    public static Guideline of(PageContext room, Context context, SavedCloth cloth) {
        Plan plan = plan(room, cloth);
        String name = PageContext.field(context, "name");
        Guideline.Told told = new Guideline.Told(
                name.isBlank() ? cloth.name() : name,
                PageContext.field(context, "by"),
                PageContext.field(context, "words"),
                Optional.empty(),
                room.settings().ruler());
        Taken taken = new Taken(new SentCloth(cloth.name(), plan.cloth(), plan.fabrics(), plan.rules()), told);
        ColourRule colours = taken.colours(said(context, "colours"), said(context, "middle"));
        return new Guideline(
                told,
                taken.size(said(context, "size")),
                new Guideline.ShapeRule(
                        taken.hearth(said(context, "hearth")),
                        taken.bars(said(context, "bars")),
                        taken.rounds(said(context, "rounds")),
                        taken.order(said(context, "order"))),
                colours,
                taken.sewing(Optional.empty()));
    }

    /** Her own rule where she wrote one, else what she chose. */
    private static String said(Context context, String rule) {
        String own = PageContext.field(context, rule + "-own");
        String chosen = PageContext.field(context, rule);
        return !own.isBlank() ? own : chosen.isBlank() ? "open" : chosen;
    }

    /** A guideline file, or a plan file as a guideline that keeps the shares of the cloth in it. */
    public static Guideline read(PageContext room, String text) {
        if (!text.contains("\"hearthcloth-plan\"")) {
            GuidelineFile.Reading reading = GuidelineFile.read(text);
            if (reading instanceof GuidelineFile.Reading.Read read) {
                return read.guideline();
            }
            throw refused(room, ((GuidelineFile.Reading.Faulty) reading).said());
        }
        PlanReader.Reading reading = PlanReader.read(text);
        if (reading instanceof PlanReader.Reading.Faulty faulty) {
            throw refused(room, faulty.said());
        }
        SentCloth cloth = ((PlanReader.Reading.Read) reading).cloth();
        Guideline.Told told = new Guideline.Told(
                cloth.title(), "", "", Optional.empty(), room.settings().ruler());
        Taken taken = new Taken(cloth, told);
        return new Guideline(
                told,
                taken.size(Taken.KEPT),
                new Guideline.ShapeRule(
                        taken.hearth(Taken.SHARE),
                        taken.bars("open"),
                        taken.rounds(Taken.KEPT),
                        taken.order(Taken.KEPT)),
                taken.colours(Taken.KEPT, "any"),
                taken.sewing(Optional.empty()));
    }

    private static RuntimeException refused(PageContext room, List<Sentence> said) {
        return Uploads.refused(
                422,
                words(room)
                        .refused(room.settings()
                                .voice()
                                .sentences(said.stream()
                                        .map(one -> one.in(room.settings().voice()))
                                        .toList())));
    }

    private static HandingWords words(PageContext room) {
        return HandingWords.in(room.language());
    }
}
