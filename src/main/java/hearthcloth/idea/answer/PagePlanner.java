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
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.json.JsonValue;
import hearthcloth.json.JsonWriter;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.words.Language;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
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
    private Optional<PlanSheets> warmed = Optional.empty();

    /**
     * What a reader asks.
     *
     * @param unit in or cm; anything else is as the idea says
     * @param language a tag such as de; pictures and guide are written in it
     */
    public record Question(String heap, String favourite, String unit, String language, int seed) {}

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
            Voice reader = Voice.of(language(question), Ruler.EIGHTHS);
            return faults(faulty.said().stream().map(one -> one.in(reader)).toList());
        }
        Guideline idea = inUnit(((GuidelineFile.Reading.Read) reading).guideline(), question.unit());
        Ruler ruler = idea.told().ruler();
        Voice voice = Voice.of(language(question), ruler);
        HeapText heap = HeapText.read(question.heap(), ruler.unit());
        if (!heap.faults().isEmpty()) {
            return faults(heap.faults().stream().map(one -> one.in(voice)).toList());
        }
        Optional<String> favourite = Optional.of(question.favourite())
                .filter(name -> heap.pieces().fabric(name).isPresent());
        Ask ask = new Ask(favourite, CLOTHS, question.seed());
        boolean[] told = new boolean[1];
        Fitted fitted = GuidelinePlanner.fit(idea, heap.pieces(), ask, 1, Budget.steps(STEPS), seen -> {
            if (!told[0] && seen.best().isPresent()) {
                told[0] = true;
                first.accept(svg(drawn(seen.best().get(), idea, voice).face(Face.FRONT)));
            }
        });
        sheets = fitted.cloths().stream()
                .map(cloth -> drawn(cloth.plan(), idea, voice))
                .toList();
        return answer(fitted, voice);
    }

    /**
     * Plans a first cloth that nobody sees and draws its front, while a reader still types: what a browser has run once it runs
     * sooner. One short step at a time, since a question that comes meanwhile waits for its end.
     *
     * @param step 0 reads, 1 reads and plans, 2 draws what was planned
     */
    public void warm(String guideline, String heap, int step) {
        if (step == 2) {
            warmed.ifPresent(drawn -> svg(drawn.face(Face.FRONT)));
        } else if (GuidelineFile.read(guideline) instanceof GuidelineFile.Reading.Read read) {
            Guideline idea = inUnit(read.guideline(), "in");
            Ruler ruler = idea.told().ruler();
            HeapText pieces = HeapText.read(heap, ruler.unit());
            Voice voice = Voice.of(Language.ENGLISH, ruler);
            warmed = step == 0
                    ? Optional.empty()
                    : GuidelinePlanner.first(idea, pieces.pieces(), new Ask(Optional.empty(), 1, 1))
                            .map(plan -> drawn(plan, idea, voice));
        }
    }

    private static Language language(Question question) {
        return Language.tagged(question.language()).orElse(Language.ENGLISH);
    }

    private static Guideline inUnit(Guideline idea, String unit) {
        return switch (unit) {
            case "cm" -> idea.by(Ruler.MILLIMETRES);
            case "in" -> idea.by(Ruler.EIGHTHS);
            default -> idea;
        };
    }

    private static PlanSheets drawn(Plan plan, Guideline idea, Voice voice) {
        return new PlanSheets(plan, voice, voice.ruler().isMetric() ? Paper.A4 : Paper.LETTER, idea.wrapped());
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

    private static JsonValue said(List<Sentence> sentences, Voice voice) {
        return texts(sentences.stream().map(one -> one.in(voice)).toList());
    }

    private String answer(Fitted fitted, Voice voice) {
        List<JsonValue> cloths = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            cloths.add(cloth(fitted.cloths().get(i), sheets.get(i), voice));
        }
        return JsonWriter.tight(JsonValue.object()
                .with("why", said(fitted.why(), voice))
                .with("cloths", JsonValue.of(cloths))
                .done());
    }

    private static JsonValue cloth(Fitted.Nearest nearest, PlanSheets drawn, Voice voice) {
        Plan plan = nearest.plan();
        return JsonValue.object()
                .with("title", plan.story().title().in(voice))
                .with("size", voice.write(plan.cloth().finished(), Rounding.NEAREST))
                .with("good", plan.story().goodAt().in(voice))
                .with("chosen", said(plan.story().chosen(), voice))
                .with("cautions", said(plan.story().cautions(), voice))
                .with("scraps", JsonValue.of(nearest.isScraps()))
                .with("bends", said(nearest.bends().stream().map(Bend::what).toList(), voice))
                .with("joins", plan.figures().joins())
                .with("patches", patches(plan, voice))
                .with("front", svg(drawn.face(Face.FRONT)))
                .with("back", svg(drawn.face(Face.BACK)))
                .done();
    }

    /** The cut list: a row for each patch. */
    private static JsonValue patches(Plan plan, Voice voice) {
        var sources = plan.sources();
        List<JsonValue> rows = new ArrayList<>();
        for (Laid laid : plan.cloth().laid()) {
            Plan.Source source = java.util.Objects.requireNonNull(
                    sources.get(laid.patch().place().id()));
            rows.add(JsonValue.object()
                    .with("patch", laid.patch().place().label())
                    .with("fabric", laid.patch().fabric())
                    .with("cut", voice.write(laid.cut(), Rounding.UP))
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
