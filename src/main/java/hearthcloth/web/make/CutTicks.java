package hearthcloth.web.make;

import hearthcloth.sew.CutLine;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.json.StoreException;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.making.MakingWords;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Which cuts of a cloth are made: each is a tick that stays, by the piece's name and the cut's number in it. */
record CutTicks(List<PieceTask> tasks, Set<String> ticked, MakingWords words) {

    CutTicks {
        tasks = List.copyOf(tasks);
        ticked = Set.copyOf(ticked);
    }

    static CutTicks of(SavedCloth cloth, Settings settings) {
        return new CutTicks(
                Guide.of(ClothAsked.plan(cloth), settings.voice()).cutting(),
                cloth.document().bench().ticked(),
                MakingWords.in(settings.pages()));
    }

    static String key(PieceTask task, int number) {
        return task.cut().piece().id() + ":" + number;
    }

    static boolean isCut(PieceTask task, Set<String> ticked) {
        return task.cut().past() || task.lines().stream().allMatch(line -> ticked.contains(key(task, line.number())));
    }

    boolean isCut(PieceTask task) {
        return isCut(task, ticked);
    }

    boolean isCut(PieceTask task, CutLine line) {
        return task.cut().past() || ticked.contains(key(task, line.number()));
    }

    boolean isAllCut() {
        return done() == tasks.size();
    }

    int done() {
        return (int) tasks.stream().filter(this::isCut).count();
    }

    /** The first piece that is not cut, else the last; from 0. */
    int first() {
        for (int i = 0; i < tasks.size(); i++) {
            if (!isCut(tasks.get(i))) {
                return i;
            }
        }
        return tasks.size() - 1;
    }

    /** Whether it is a cut of this cloth that is still to be made, or was made since the last were. */
    boolean isOfNow(String key) {
        return tasks.stream()
                .filter(task -> !task.cut().past())
                .anyMatch(task -> task.lines().stream()
                        .anyMatch(line -> key(task, line.number()).equals(key)));
    }

    /** The piece with this id. */
    PieceTask piece(String id) {
        return tasks.stream()
                .filter(task -> task.cut().piece().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new StoreException(words.cutPieceGone()));
    }

    int number(PieceTask task) {
        return tasks.indexOf(task);
    }

    /**
     * The ticks when this cut of a piece is made, with all before it.
     *
     * @param number of the cut; any other word stands for all of them
     */
    Set<String> after(PieceTask task, String number) {
        int last = number.matches("\\d{1,3}") ? Integer.parseInt(number) : Integer.MAX_VALUE;
        Set<String> now = new HashSet<>(ticked);
        if (task.cut().past()) {
            return now;
        }
        task.lines().stream().filter(line -> line.number() <= last).forEach(line -> now.add(key(task, line.number())));
        return now;
    }

    /** The ticks when the last cut made in a piece is taken back. */
    Set<String> before(PieceTask task) {
        Set<String> now = new HashSet<>(ticked);
        task.lines().stream()
                .map(line -> key(task, line.number()))
                .filter(ticked::contains)
                .reduce((one, other) -> other)
                .ifPresent(now::remove);
        return now;
    }
}
