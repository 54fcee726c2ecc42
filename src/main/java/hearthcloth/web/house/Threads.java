package hearthcloth.web.house;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Step;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ThreadChoice;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.SeamThread;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.store.Store;
import hearthcloth.web.kit.FormFields;
import hearthcloth.words.Language;
import hearthcloth.words.framing.FramingWords;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** The threads she has, one line each as she wrote them, and which of them suits a cloth. */
public record Threads(List<Spool> threads) {

    private static final String SETTING = "threads";
    private static final int MOST = 200;
    private static final int LONGEST = 80;

    /** One of her threads. */
    record Spool(String name, Colour colour) {}

    public static Threads of(Store store) {
        return read(store.setting(SETTING).orElse(""), Language.ENGLISH);
    }

    /**
     * Reads lines such as {@code cream} or {@code old navy #27344d}.
     *
     * @throws MeasureException naming the line and the mend
     */
    static Threads read(String written, Language language) {
        FramingWords words = FramingWords.in(language);
        List<Spool> threads = new ArrayList<>();
        for (String line :
                written.lines().map(String::strip).filter(one -> !one.isEmpty()).toList()) {
            if (line.length() > LONGEST || threads.size() == MOST) {
                throw new MeasureException(words.threadsMany(String.valueOf(LONGEST), String.valueOf(MOST)));
            }
            int hex = line.lastIndexOf('#');
            String colour = hex < 0 ? line : line.substring(hex);
            String name = hex <= 0 ? line : line.substring(0, hex).strip();
            try {
                threads.add(new Spool(name, FormFields.colour(colour, language)));
            } catch (MeasureException e) {
                throw new MeasureException(words.threadsColour(line, name));
            }
        }
        return new Threads(threads);
    }

    void keep(Store store, String written) {
        store.set(SETTING, written);
    }

    /** As she may change them again. */
    public String written() {
        return String.join(
                "\n",
                threads.stream()
                        .map(thread -> thread.name().contains("#")
                                ? thread.name()
                                : thread.name() + " " + thread.colour().hex())
                        .toList());
    }

    /** Which of her threads, or a thread like which fabric where she has named none, shows least and most on one seam. */
    public String sentence(Plan plan, Step seam, Voice voice) {
        FramingWords words = FramingWords.in(voice.language());
        List<Spool> own = threads.isEmpty()
                ? plan.fabrics().stream()
                        .map(fabric -> new Spool(voice.printing().coloursLike(fabric.name()), fabric.colour()))
                        .toList()
                : threads;
        SeamThread<Spool> thread = SeamThread.of(plan.cloth(), seam, plan.fabrics(), own, Spool::colour);
        return thread.least().equals(thread.most())
                ? words.threadsSeamOne(thread.least().name())
                : words.threadsSeam(thread.least().name(), thread.most().name());
    }

    /** How much a cloth takes and which of hers show least and most on the fabrics that its seams cross. */
    public String sentence(Plan plan, Voice voice) {
        FramingWords words = FramingWords.in(voice.language());
        Cloth cloth = plan.cloth();
        ThreadNeed need = ThreadNeed.of(cloth, Stitch.USUAL);
        String much = words.threadsNeed(voice.run(need.total(), Rounding.UP), voice.run(need.each(), Rounding.UP));
        if (threads.isEmpty()) {
            return much;
        }
        List<Colour> crossed =
                plan.fabrics().stream().map(fabric -> fabric.colour()).toList();
        Spool least = ThreadChoice.showingLeast(threads, Spool::colour, crossed).thread();
        Spool most = ThreadChoice.showingMost(threads, Spool::colour, crossed).thread();
        return voice.sentences(List.of(
                much,
                least.equals(most)
                        ? words.threadsSuitsOne(least.name())
                        : words.threadsSuits(least.name(), most.name())));
    }
}
