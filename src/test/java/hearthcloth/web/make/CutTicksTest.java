package hearthcloth.web.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.measure.Ruler;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.sew.machine.SewingPace;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.Language;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.speech.Voice;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Ticks of a planned cloth's cuts ({@link CutTicks}) and what is left to sew at her pace ({@link OwnPace}). */
class CutTicksTest {

    private static final List<PieceTask> TASKS = Guide.of(
                    Planned.plans(Stashes.scraps(40, 3), 18, 1).get(0), Ruler.EIGHTHS)
            .cutting();

    private static final MakingWords WORDS = MakingWords.in(Language.ENGLISH);

    private static CutTicks ticks(Set<String> ticked) {
        return new CutTicks(TASKS, ticked, WORDS);
    }

    @Test
    void nothing_is_cut_at_first_and_all_is_when_every_line_is_ticked() {
        CutTicks none = ticks(Set.of());
        assertThat(none.done()).isEqualTo((int)
                TASKS.stream().filter(task -> task.lines().isEmpty()).count());
        Set<String> all = new HashSet<>();
        TASKS.forEach(task -> task.lines().forEach(line -> all.add(CutTicks.key(task, line.number()))));
        assertThat(ticks(all).done()).isEqualTo(TASKS.size());
        assertThat(ticks(all).first()).isEqualTo(TASKS.size() - 1);
    }

    /** Each cut in turn: one tick brings all before it, one step back takes the last alone. */
    @Test
    void a_cut_is_made_with_all_before_it_and_taken_back_one_at_a_time() {
        for (PieceTask task : TASKS) {
            for (CutLine line : task.lines()) {
                CutTicks made = ticks(ticks(Set.of()).after(task, String.valueOf(line.number())));
                for (CutLine other : task.lines()) {
                    assertThat(made.isCut(task, other)).isEqualTo(other.number() <= line.number());
                }
                CutTicks back = ticks(made.before(task));
                assertThat(back.isCut(task, line)).isFalse();
                assertThat(made.ticked()).hasSize(back.ticked().size() + 1);
            }
            assertThat(ticks(ticks(Set.of()).after(task, "all")).isCut(task)).isTrue();
            assertThat(ticks(Set.of()).before(task)).isEmpty();
        }
    }

    @Test
    void the_first_piece_is_the_first_that_is_not_cut() {
        CutTicks ticks = ticks(Set.of());
        for (int done = 0; done < TASKS.size(); done++) {
            assertThat(ticks.first()).isEqualTo(done);
            ticks = ticks(ticks.after(TASKS.get(done), "all"));
        }
        String id = TASKS.get(2).cut().piece().id();
        assertThat(ticks.number(ticks.piece(id))).isEqualTo(2);
        CutTicks all = ticks;
        assertThatThrownBy(() -> all.piece("gone"))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("load the page again");
    }

    @Test
    void how_long_is_left_is_said_only_where_her_pace_is_known() {
        List<AtTheMachine> steps = AtTheMachine.of(
                Guide.of(Planned.plans(Stashes.scraps(40, 3), 18, 1).get(0), Ruler.EIGHTHS),
                Voice.english(Ruler.EIGHTHS).sewing());
        assertThat(new OwnPace(new SewingPace(Map.of())).sentence(steps, WORDS)).isEmpty();
        Map<AtTheMachine.Kind, Long> tenMinutes = new java.util.EnumMap<>(AtTheMachine.Kind.class);
        for (AtTheMachine.Kind kind : AtTheMachine.Kind.values()) {
            tenMinutes.put(kind, 600L);
        }
        OwnPace pace = new OwnPace(new SewingPace(tenMinutes));
        assertThat(pace.sentence(List.of(), WORDS)).isEmpty();
        assertThat(pace.sentence(steps.subList(0, 1), WORDS)).isEqualTo("At your own pace about 10 min to go.");
        assertThat(pace.sentence(steps.subList(0, 7), WORDS)).isEqualTo("At your own pace about 1 h 10 min to go.");
    }
}
