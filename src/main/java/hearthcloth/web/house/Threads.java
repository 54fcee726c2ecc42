package hearthcloth.web.house;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Step;
import hearthcloth.colour.Colour;
import hearthcloth.colour.ThreadChoice;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.thread.SeamThread;
import hearthcloth.sew.thread.Stitch;
import hearthcloth.sew.thread.ThreadNeed;
import hearthcloth.store.Store;
import hearthcloth.web.kit.FormFields;
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
        return read(store.setting(SETTING).orElse(""));
    }

    /**
     * Reads lines such as {@code cream} or {@code old navy #27344d}.
     *
     * @throws MeasureException naming the line and the mend
     */
    static Threads read(String written) {
        List<Spool> threads = new ArrayList<>();
        for (String line :
                written.lines().map(String::strip).filter(one -> !one.isEmpty()).toList()) {
            if (line.length() > LONGEST || threads.size() == MOST) {
                throw new MeasureException("write up to " + MOST + " threads of up to " + LONGEST + " letters each");
            }
            int hex = line.lastIndexOf('#');
            String colour = hex < 0 ? line : line.substring(hex);
            String name = hex <= 0 ? line : line.substring(0, hex).strip();
            try {
                threads.add(new Spool(name, FormFields.colour(colour)));
            } catch (MeasureException e) {
                throw new MeasureException("the thread \"" + line
                        + "\" has no colour we know; write its colour after it," + " such as " + name + " #8a9a5b");
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
    public String sentence(Plan plan, Step seam) {
        List<Spool> own = threads.isEmpty()
                ? plan.fabrics().stream()
                        .map(fabric -> new Spool("one like " + fabric.name(), fabric.colour()))
                        .toList()
                : threads;
        SeamThread<Spool> thread = SeamThread.of(plan.cloth(), seam, plan.fabrics(), own, Spool::colour);
        return "Thread for this seam: " + thread.least().name() + " shows least"
                + (thread.least().equals(thread.most())
                        ? "."
                        : ", " + thread.most().name() + " most.");
    }

    /** How much a cloth takes and which of hers show least and most on the fabrics that its seams cross. */
    public String sentence(Plan plan, Ruler ruler) {
        Cloth cloth = plan.cloth();
        ThreadNeed need = ThreadNeed.of(cloth, Stitch.USUAL);
        String much = "Thread: " + ruler.run(need.total(), Rounding.UP) + " in all, with thread ends and 15 % extra; "
                + ruler.run(need.each(), Rounding.UP) + " of it on the bobbin.";
        if (threads.isEmpty()) {
            return much;
        }
        List<Colour> crossed =
                plan.fabrics().stream().map(fabric -> fabric.colour()).toList();
        Spool least = ThreadChoice.showingLeast(threads, Spool::colour, crossed).thread();
        Spool most = ThreadChoice.showingMost(threads, Spool::colour, crossed).thread();
        return much + " Of your threads " + least.name() + " shows least on these fabrics"
                + (least.equals(most) ? "." : ", " + most.name() + " most.");
    }
}
