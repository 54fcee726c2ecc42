package hearthcloth.web.lesson;

import hearthcloth.cutstock.search.Budget;
import hearthcloth.guideline.Guideline;
import hearthcloth.guideline.fit.Ask;
import hearthcloth.guideline.fit.Fitted;
import hearthcloth.guideline.fit.GuidelinePlanner;
import hearthcloth.idea.answer.HeapText;
import hearthcloth.measure.Ruler;
import hearthcloth.web.door.ClassDoor;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.UnaryOperator;

/**
 * The one class that may be going on in a workroom: its idea, who is in, and what each has before her. Cloths are looked for
 * one after another beside the pages, so that many students do not hold each other up. Kept in memory alone. Thread-safe.
 */
public final class Classroom implements AutoCloseable {

    /** Cloths offered; two show that an idea is no pattern. */
    private static final int CLOTHS = 2;

    /** Steps of each search, counted and not timed, so that a busy machine gives the same cloth. */
    private static final long STEPS = 1_500;

    private final ClassDoor door;
    private final Map<String, Workplace> places = new ConcurrentHashMap<>();
    private final ExecutorService planning = Executors.newSingleThreadExecutor(Classroom::quietly);
    private volatile Optional<Guideline> idea = Optional.empty();

    public Classroom(Clock clock) {
        this.door = new ClassDoor(clock);
    }

    /** Pages come first. */
    @SuppressWarnings("ThreadPriorityCheck") // only who waits less is chosen so, nothing rests on it
    private static Thread quietly(Runnable work) {
        Thread thread = new Thread(work, "class");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    /** Who comes in, and goes. */
    public ClassDoor door() {
        return door;
    }

    /** What is followed; empty while there is no class. */
    Optional<Guideline> idea() {
        return idea;
    }

    synchronized void begin(Guideline other) {
        places.clear();
        door.open();
        idea = Optional.of(other);
    }

    /** Puts everybody out and forgets what they had before them. */
    synchronized void end() {
        door.close();
        idea = Optional.empty();
        places.clear();
    }

    void out(String student) {
        door.out(student);
        places.remove(student);
    }

    Workplace of(ClassDoor.Student student, Ruler ruler) {
        return places.getOrDefault(student.id(), Workplace.empty(ruler));
    }

    void change(ClassDoor.Student student, UnaryOperator<Workplace> change) {
        places.computeIfPresent(student.id(), (id, now) -> change.apply(now));
    }

    /** Begins to look for a cloth from what she wrote; what she had before her is given up. */
    void ask(ClassDoor.Student student, Workplace.Written written) {
        Workplace now = of(student, written.ruler()).asking(written);
        places.put(student.id(), now);
        idea.ifPresent(rules -> planning.execute(() -> look(student, written, rules)));
    }

    private void look(ClassDoor.Student student, Workplace.Written written, Guideline rules) {
        Workplace before = places.get(student.id());
        if (before == null || !before.written().equals(written)) {
            return;
        }
        Workplace.Found found;
        try {
            found = found(written, rules);
        } catch (RuntimeException | StackOverflowError e) {
            found = new Workplace.Found(Workplace.Stage.ANSWERED, List.of(), List.of(), List.of());
        }
        Workplace.Found answer = found;
        // an answer to what she has written over since is nobody's
        change(student, now -> now.written().equals(written) ? now.with(answer) : now);
    }

    private static Workplace.Found found(Workplace.Written written, Guideline rules) {
        HeapText heap = HeapText.read(written.heap(), written.ruler().unit());
        if (!heap.faults().isEmpty()) {
            return new Workplace.Found(Workplace.Stage.ANSWERED, heap.faults(), List.of(), List.of());
        }
        Optional<String> favourite = Optional.of(written.favourite())
                .filter(name -> heap.pieces().fabric(name).isPresent());
        Fitted fitted = GuidelinePlanner.fit(
                rules.by(written.ruler()),
                heap.pieces(),
                new Ask(favourite, CLOTHS, 1),
                1,
                Budget.steps(STEPS),
                seen -> {});
        return new Workplace.Found(Workplace.Stage.ANSWERED, List.of(), fitted.cloths(), fitted.why());
    }

    @Override
    public void close() {
        end();
        planning.shutdownNow();
    }
}
