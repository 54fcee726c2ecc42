package hearthcloth.idea.answer;

import hearthcloth.cloth.Laid;
import hearthcloth.cloth.making.Face;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanSheets;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.guideline.Bend;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.SizeRule;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.tie.Wrapped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Plans for a page: the guideline's file and a typed heap in, cloths as JSON out; pictures of a cloth on demand. It keeps the
 * last answer.
 */
public final class PagePlanner {

    /** Cloths offered; two show that an idea is no pattern. */
    private static final int CLOTHS = 2;

    /** Steps after the first cloth, counted and not timed, so that every machine gives the same. */
    private static final long STEPS = 1_500;

    private List<PlanSheets> sheets = List.of();

    /** What a reader asks. */
    public record Question(String heap, String favourite, String unit, int seed) {}

    /**
     * Plans.
     *
     * @param guideline the text of its file
     * @param first receives the first cloth's front as SVG, as soon as there is one
     * @return an object with faults, or with why and cloths
     */
    public String plan(String guideline, Question question, Consumer<String> first) {
        sheets = List.of();
        GuidelineFile.Reading reading = GuidelineFile.read(guideline);
        if (reading instanceof GuidelineFile.Reading.Faulty faulty) {
            return faults(faulty.sentences());
        }
        Guideline idea = inUnit(((GuidelineFile.Reading.Read) reading).guideline(), question.unit());
        Ruler ruler = idea.told().ruler();
        HeapText heap = HeapText.read(question.heap(), ruler.unit());
        if (!heap.faults().isEmpty()) {
            return faults(heap.faults());
        }
        Optional<String> favourite = Optional.of(question.favourite())
                .filter(name -> heap.pieces().fabric(name).isPresent());
        Ask ask = new Ask(favourite, CLOTHS, question.seed());
        boolean[] told = new boolean[1];
        Fitted fitted = GuidelinePlanner.fit(idea, heap.pieces(), ask, 1, Budget.steps(STEPS), seen -> {
            if (!told[0] && seen.best().isPresent()) {
                told[0] = true;
                first.accept(svg(drawn(seen.best().get(), idea).face(Face.FRONT)));
            }
        });
        sheets =
                fitted.cloths().stream().map(cloth -> drawn(cloth.plan(), idea)).toList();
        return answer(fitted, ruler);
    }

    /** The same idea measured with the reader's ruler; the measures of its rules stay what they are. */
    private static Guideline inUnit(Guideline idea, String unit) {
        Guideline.Told told = idea.told();
        Ruler ruler = switch (unit) {
            case "cm" -> Ruler.MILLIMETRES;
            case "in" -> Ruler.EIGHTHS;
            default -> told.ruler();
        };
        return new Guideline(
                new Guideline.Told(told.name(), told.by(), told.words(), told.picture(), ruler),
                idea.size(),
                idea.shape(),
                idea.colours(),
                idea.sewing());
    }

    private static PlanSheets drawn(Plan plan, Guideline idea) {
        Ruler ruler = idea.told().ruler();
        Tail tail = ruler.isMetric() ? Tail.METRIC : Tail.INCHES;
        Optional<Wrapped> gift = idea.size() instanceof SizeRule.ForGift wished
                ? Optional.of(new Wrapped(wished.gift(), wished.tie(), tail, Placing.CENTRED))
                : Optional.empty();
        return new PlanSheets(plan, ruler, ruler.isMetric() ? Paper.A4 : Paper.LETTER, gift);
    }

    private static String svg(Picture picture) {
        return SvgWriter.writeBare(picture);
    }

    private static String faults(List<String> sentences) {
        return JsonWriter.tight(
                JsonValue.object().with("faults", texts(sentences)).done());
    }

    private static JsonValue texts(List<String> sentences) {
        List<JsonValue> texts = new ArrayList<>();
        sentences.forEach(sentence -> texts.add(JsonValue.of(sentence)));
        return JsonValue.of(texts);
    }

    private static JsonValue said(List<Sentence> sentences, Ruler ruler) {
        Voice voice = Voice.english(ruler);
        return texts(sentences.stream().map(one -> one.in(voice)).toList());
    }

    private String answer(Fitted fitted, Ruler ruler) {
        List<JsonValue> cloths = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            cloths.add(cloth(fitted.cloths().get(i), sheets.get(i), ruler));
        }
        return JsonWriter.tight(JsonValue.object()
                .with("why", said(fitted.why(), ruler))
                .with("cloths", JsonValue.of(cloths))
                .done());
    }

    private static JsonValue cloth(Fitted.Nearest nearest, PlanSheets drawn, Ruler ruler) {
        Plan plan = nearest.plan();
        return JsonValue.object()
                .with("title", plan.story().title().english())
                .with("size", ruler.write(plan.cloth().finished(), Rounding.NEAREST))
                .with("good", plan.story().goodAt().in(Voice.english(ruler)))
                .with("chosen", said(plan.story().chosen(), ruler))
                .with("cautions", said(plan.story().cautions(), ruler))
                .with("bends", texts(bends(nearest)))
                .with("joins", plan.figures().joins())
                .with("patches", patches(plan, ruler))
                .with("front", svg(drawn.face(Face.FRONT)))
                .with("back", svg(drawn.face(Face.BACK)))
                .done();
    }

    private static List<String> bends(Fitted.Nearest nearest) {
        return nearest.isScraps()
                ? List.of("Your pieces give no hearth with bars round it; the scraps are laid together as they are.")
                : nearest.bends().stream().map(Bend::what).toList();
    }

    /** The cut list: a row for each patch. */
    private static JsonValue patches(Plan plan, Ruler ruler) {
        var sources = plan.sources();
        List<JsonValue> rows = new ArrayList<>();
        for (Laid laid : plan.cloth().laid()) {
            Plan.Source source = java.util.Objects.requireNonNull(
                    sources.get(laid.patch().place().id()));
            rows.add(JsonValue.object()
                    .with("patch", laid.patch().place().label())
                    .with("fabric", laid.patch().fabric())
                    .with("cut", ruler.write(laid.cut(), Rounding.UP))
                    .with("from", source.from().piece().id())
                    .done());
        }
        return JsonValue.of(rows);
    }

    /**
     * Pictures of a cloth of the last answer, as a JSON list of SVG texts.
     *
     * @param kind cut, tied or guide
     */
    public String pictures(int cloth, String kind) {
        PlanSheets drawn = sheets.get(cloth);
        List<Picture> pictures = switch (kind) {
            case "cut" -> List.of(drawn.cutSheet());
            case "tied" -> drawn.tiedSheet().stream().toList();
            case "guide" -> drawn.guidePages();
            default -> throw new IllegalArgumentException(kind);
        };
        return JsonWriter.tight(texts(pictures.stream().map(PagePlanner::svg).toList()));
    }

    /** The plan file of a cloth of the last answer. */
    public String planFile(int cloth) {
        return sheets.get(cloth).planFile();
    }
}
