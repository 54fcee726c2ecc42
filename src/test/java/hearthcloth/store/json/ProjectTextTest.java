package hearthcloth.store.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hearthcloth.cloth.layout.Order;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.propose.Planned;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Bench;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Project.Stage;
import hearthcloth.work.Purpose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Everything kept of a cloth is read back as it was, and what is not a cloth of ours is refused. */
public class ProjectTextTest {

    private static final String[] WORDS = {"", "Aunt Mo", "\"quoted\" \\ back", "<b>&amp;", "布 🎁", "two\nlines"};

    public static List<Project> documents() {
        Random random = new Random(5);
        List<Project> documents = new ArrayList<>();
        for (int seed = 0; seed < 3; seed++) {
            for (Plan plan : Planned.plans(Stashes.scraps(60, seed), 24 + 3 * seed, 4)) {
                Order order = List.of(Order.values()).get(random.nextInt(3));
                Project bare = Project.of(DesignEdits.settled(plan, order), plan, Purpose.NOTHING);
                documents.add(bare);
                documents.add(marked(bare, random));
            }
        }
        return documents;
    }

    private static Keepsake keepsake(Random random) {
        Keepsake.Measured real = new Keepsake.Measured(
                Length.cm(60 + random.nextInt(9)),
                Length.cm(60),
                random.nextBoolean() ? List.of() : List.of(Length.cm(84), Length.cm(85)));
        return new Keepsake(
                random.nextBoolean() ? null : real,
                word(random),
                random.nextBoolean() ? List.of() : List.of(new Keepsake.Use("4 May", word(random), "")));
    }

    private static final Sentence SHORT = PlanningSentences.shortOf(
            Argument.names(Argument.Joined.OR, List.of("Oat", "Kelp \"\\;(")),
            Argument.of(Length.inches(7), Rounding.UP),
            "proven",
            Argument.row(Argument.Joined.COMMAS, List.of(PlanningSentences.hearth(), Argument.text("2C"))),
            Argument.of(Length.inches(4), Rounding.UP));

    private static Project marked(Project bare, Random random) {
        boolean planned = random.nextBoolean();
        Life life = new Life(
                List.of(Stage.values()).get(random.nextInt(3)),
                word(random),
                word(random),
                word(random),
                random.nextInt(9),
                random.nextBoolean() ? null : new Purpose("bottle 8 x 30 cm", word(random), ""),
                random.nextBoolean() ? null : "a4",
                random.nextBoolean() ? null : keepsake(random));
        return new Project(
                bare.design(),
                planned ? bare.plan() : Optional.empty(),
                planned ? List.of() : List.of(SHORT, Sentence.itself(word(random))),
                new Bench(
                        Set.of("1A", "hearth"),
                        Set.of("4:1", "4-2:3", "12"),
                        5,
                        List.of(new Project.Measure(3, Length.inches(49, 4), Length.inches(97, 8))),
                        List.of(new Project.Done("seam", java.time.Instant.parse("2026-05-04T10:00:00Z")))),
                life);
    }

    private static String word(Random random) {
        return WORDS[random.nextInt(WORDS.length)];
    }

    @Test
    void what_is_written_of_any_cloth_is_read_back_the_same() {
        assertThat(documents()).hasSizeGreaterThan(8).allSatisfy(document -> {
            Project back = KeptCloth.read(KeptCloth.text(document));
            assertThat(back).isEqualTo(document);
            assertThat(KeptCloth.text(back)).isEqualTo(KeptCloth.text(document));
        });
    }

    @Test
    void a_plan_read_back_gives_the_same_plan_file() {
        Plan plan = Planned.plans(Stashes.scraps(60, 3), 30, 1).get(0);
        Project document = Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING);
        Plan back = KeptCloth.read(KeptCloth.text(document)).plan().orElseThrow();

        assertThat(file(back)).isEqualTo(file(plan));
        assertThat(back.checked()).isEqualTo(plan);
    }

    private static String file(Plan plan) {
        return new PlanFolder(plan, Ruler.EIGHTHS, Paper.A4).planFile();
    }

    @Test
    void what_is_no_cloth_of_ours_is_refused() {
        for (String text : new String[] {
            "",
            "null",
            "[]",
            "kelp",
            "{}",
            "{\"format\":\"hearthcloth-plan\",\"version\":1}",
            "{\"format\":\"hearthcloth-cloth\",\"version\":2}",
            "{\"format\":\"hearthcloth-cloth\",\"version\":1}"
        }) {
            assertThatThrownBy(() -> KeptCloth.read(text)).as(text).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
