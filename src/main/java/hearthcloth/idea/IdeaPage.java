package hearthcloth.idea;

import hearthcloth.cloth.making.Face;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.draw.PlanSheets;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.letters.FontSubset;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.GuidelineWords;
import hearthcloth.guideline.file.GuidelineFile;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Caution;
import hearthcloth.sew.Guide;
import hearthcloth.sew.Task;
import hearthcloth.stash.Stash;
import hearthcloth.words.Language;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.teaching.TeachingWords;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tail;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.tie.Wrapped;
import hearthcloth.wrap.tying.Tying;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Writes the page: her words, an example with its pictures, how it is sewn, and the planner with all it needs. The page asks
 * for nothing from any network; her words are text in it and never a program.
 */
public final class IdeaPage {

    /** The largest page; a telephone loads it in a moment. */
    public static final int MOST_BYTES = 1_500_000;

    private static final String PLANNER = "/idea/planner.js.gz";
    private static final Pattern PLACE = Pattern.compile("\\{\\{(\\w+)}}");

    /** Steps of the search for the example. */
    private static final long STEPS = 6_000;

    /** A box of no gift in particular; the steps name no measure. */
    private static final Gift BOX = Gift.parse("box 30 x 20 x 8 cm", null);

    private final Guideline guideline;
    private final Ruler ruler;

    private IdeaPage(Guideline guideline) {
        this.guideline = guideline;
        this.ruler = guideline.told().ruler();
    }

    /**
     * The page of a guideline.
     *
     * @param heap from which its example is planned
     * @throws MissingPlannerException where this program was built without the planner for pages
     */
    public static String of(Guideline guideline, Stash heap) {
        return new IdeaPage(guideline).page(heap);
    }

    private String page(Stash heap) {
        Optional<String> favourite = heap.fabrics().stream().findFirst().map(fabric -> fabric.name());
        Fitted fitted =
                GuidelinePlanner.fit(guideline, heap, new Ask(favourite, 1, 1), 1, Budget.steps(STEPS), seen -> {});
        Optional<Plan> plan = fitted.cloths().stream().findFirst().map(Fitted.Nearest::plan);
        Guideline.Told told = guideline.told();
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("name", escaped(told.name()));
        parts.put("by", escaped(told.by()));
        parts.put("told", paragraphs(told.words()));
        parts.put("picture", told.picture().map(IdeaPage::picture).orElse(""));
        parts.put(
                "rules",
                inEach(voice -> list(GuidelineWords.of(guideline).stream()
                        .map(rule -> rule.in(voice))
                        .toList())));
        parts.put("example", plan.map(this::example).orElse(""));
        parts.put("making", plan.map(this::making).orElse(""));
        parts.put("words", PageWords.json());
        parts.put("languages", PageWords.choices());
        parts.put("unit", ruler.isMetric() ? "cm" : "in");
        parts.put("sample", ruler.isMetric() ? SAMPLE_CM : SAMPLE_IN);
        parts.put("letters", FontSubset.pageFaces());
        parts.put("style", resource("page.css"));
        parts.put("script", resource("page.js"));
        parts.put("worker", resource("worker.js"));
        parts.put("guideline", base64(GuidelineFile.write(guideline).getBytes(StandardCharsets.UTF_8)));
        parts.put("planner", DenseText.of(bytes(PLANNER)));
        return filled(resource("page.html"), parts);
    }

    private static final String SAMPLE_IN =
            "9 x 12 in, rust linen\n6 x 20 in, 3 of them, oat linen\n5 x 18 in, 4 of them, slate poplin\n4 x 22 in, 4 of them, moss print";

    private static final String SAMPLE_CM =
            "24 x 30 cm, rust linen\n15 x 50 cm, 3 of them, oat linen\n12 x 45 cm, 4 of them, slate poplin\n10 x 55 cm, 4 of them, moss print";

    private static String filled(String page, Map<String, String> parts) {
        return PLACE.matcher(page)
                .replaceAll(found -> Matcher.quoteReplacement(parts.getOrDefault(found.group(1), "")));
    }

    private static String picture(Guideline.Picture picture) {
        return "<img class=\"hers\" src=\"data:" + picture.kind() + ";base64," + picture.base64() + "\" alt=\""
                + escaped(picture.words()) + "\">";
    }

    private static String paragraphs(String words) {
        StringBuilder out = new StringBuilder();
        for (String paragraph : words.split("\n\\s*\n|\n", -1)) {
            out.append(paragraph.isBlank() ? "" : "<p>" + escaped(paragraph.strip()) + "</p>\n");
        }
        return out.toString();
    }

    private static String list(List<String> lines) {
        StringBuilder out = new StringBuilder("<ul>");
        lines.forEach(line -> out.append("<li>").append(escaped(line)).append("</li>"));
        return out.append("</ul>").toString();
    }

    private PlanSheets drawn(Plan plan) {
        return new PlanSheets(plan, ruler, ruler.isMetric() ? Paper.A4 : Paper.LETTER, guideline.wrapped());
    }

    private String example(Plan plan) {
        PlanSheets drawn = drawn(plan);
        StringBuilder out = new StringBuilder("<div class=\"pictures\">");
        String size = ruler.write(plan.cloth().finished(), Rounding.NEAREST);
        out.append(figure(drawn.face(Face.FRONT), "ideaExample", size));
        out.append(figure(drawn.face(Face.BACK), "ideaExampleBack", ""));
        drawn.tiedSheet().ifPresent(sheet -> out.append(figure(sheet, "ideaTied", "")));
        return out.append("</div>").toString();
    }

    /** A picture whose caption the page writes in its reader's language. */
    private static String figure(Picture picture, String caption, String size) {
        return "<figure>" + SvgWriter.writeBare(picture) + "<figcaption data-w=\"" + caption + "\" data-size=\""
                + escaped(size) + "\"></figcaption></figure>";
    }

    /** How such a cloth is sewn and tied, in each language; the page shows its reader's. */
    private String making(Plan plan) {
        return inEach(voice -> making(plan, voice));
    }

    /** A part of the page in each language; the page shows its reader's. */
    private String inEach(Function<Voice, String> said) {
        StringBuilder out = new StringBuilder();
        for (Language language : Language.values()) {
            out.append("<div lang=\"")
                    .append(language.tag())
                    .append("\" data-in=\"")
                    .append(language.tag())
                    .append(language == Language.ENGLISH ? "\">" : "\" hidden>")
                    .append(said.apply(Voice.of(language, ruler)))
                    .append("</div>");
        }
        return out.toString();
    }

    /** What the guide of the example says that holds for all, and how the gift is tied. */
    private String making(Plan plan, Voice voice) {
        Guide guide = Guide.of(plan, voice);
        StringBuilder out = new StringBuilder();
        List<Task> tasks =
                new ArrayList<>(List.of(guide.sewing().layout(), guide.sewing().trial()));
        guide.sewing().seams().stream().limit(1).forEach(seam -> tasks.add(seam.task()));
        tasks.addAll(guide.hemming());
        for (Task task : tasks) {
            List<String> lines = new ArrayList<>(task.lines());
            lines.addAll(task.warnings());
            out.append(heading(task.title())).append(list(lines));
        }
        out.append(tying(voice));
        out.append(heading(voice.printing().washingTitle()))
                .append(list(guide.notes().washing()));
        out.append(heading(voice.printing().careTitle())).append("<ul>");
        for (Caution caution : guide.notes().cautions()) {
            out.append("<li><strong>")
                    .append(escaped(caution.topic()))
                    .append("</strong> ")
                    .append(escaped(caution.words()))
                    .append("</li>");
        }
        return out.append("</ul>").toString();
    }

    /** The steps of its gift's tie; where the idea is for no gift, of the tie that most boxes are carried in. */
    private String tying(Voice voice) {
        Wrapped gift = guideline.wrapped().orElseGet(() -> Wrapped.of(BOX, Tie.FOUR_CORNER, Tail.METRIC));
        Tying tying = Tying.of(gift.tie(), gift.gift(), voice.tying());
        List<String> lines = new ArrayList<>();
        tying.steps().forEach(step -> lines.add(step.words()));
        if (gift.tie().isKnotted()) {
            lines.addAll(tying.knot());
        }
        lines.addAll(tying.cautions());
        return heading(TeachingWords.in(voice.language()).ideaTying()) + list(lines);
    }

    private static String heading(String words) {
        return "<h3>" + escaped(words) + "</h3>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private static String resource(String name) {
        return new String(bytes("/hearthcloth/idea/" + name), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) {
        try (InputStream in = IdeaPage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new MissingPlannerException();
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
