package hearthcloth.ideapage;

import hearthcloth.idea.answer.PagePlanner;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/** What a page's worker may ask of the planner. */
public final class PageDoor {

    private static final PagePlanner PLANNER = new PagePlanner();

    /** Receives the first cloth's front as SVG. */
    @JSFunctor
    public interface First extends JSObject {
        void shown(String svg);
    }

    private PageDoor() {}

    /** Nothing is done before something is asked. */
    public static void main(String[] args) {}

    /** Plans; see {@link PagePlanner#plan}. */
    @JSExport
    public static String plan(
            String guideline, String heap, String favourite, String unit, String language, First first) {
        return PLANNER.plan(guideline, new PagePlanner.Question(heap, favourite, unit, language, 1), first::shown);
    }

    /** A first cloth that nobody sees; see {@link PagePlanner#warm}. */
    @JSExport
    public static void warm(String guideline, String heap, int step) {
        PLANNER.warm(guideline, heap, step);
    }

    /** Pictures of a cloth; see {@link PagePlanner#pictures}. */
    @JSExport
    public static String pictures(int cloth, String kind) {
        return PLANNER.pictures(cloth, kind);
    }

    /** The plan file of a cloth. */
    @JSExport
    public static String planFile(int cloth) {
        return PLANNER.planFile(cloth);
    }
}
