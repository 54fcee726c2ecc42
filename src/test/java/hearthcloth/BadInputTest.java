package hearthcloth;

import static org.assertj.core.api.Assertions.assertThatCode;

import hearthcloth.cloth.layout.Order;
import hearthcloth.cloth.making.Making;
import hearthcloth.cutstock.search.Budget;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.OpenShape;
import hearthcloth.plan.model.PiecingRules;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.model.PlanOutcome;
import hearthcloth.plan.model.Wish;
import hearthcloth.plan.propose.Planner;
import hearthcloth.plan.propose.Stashes;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.archive.Archive;
import hearthcloth.store.journal.DocumentEdit;
import hearthcloth.store.json.KeptCloth;
import hearthcloth.web.TestPhotographs;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Good input spoiled in seeded ways, and whatever the fuzzer once found: each refused in words or taken, never a trace. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BadInputTest {

    private static final int SPOILED = 150;
    private static final Path FOUND = Path.of("src/test/resources/hearthcloth/found");

    private Map<String, List<byte[]>> seeds = Map.of();

    @BeforeAll
    void lay(@TempDir Path folder) throws IOException {
        seeds = seeds(folder);
    }

    @ParameterizedTest
    @ValueSource(strings = {"stash", "archive", "wish", "cloth", "image", "journal"})
    void spoiled_input_is_refused_or_taken(String taker) throws IOException {
        Random random = new Random(20_261_130);
        var takes = java.util.Objects.requireNonNull(BadInput.TAKERS.get(taker));
        for (byte[] good : seeds.getOrDefault(taker, List.of())) {
            takes.accept(good);
            for (int i = 0; i < SPOILED; i++) {
                byte[] bad = spoiled(good, random);
                assertThatCode(() -> takes.accept(bad))
                        .as(taker + " " + java.util.Base64.getEncoder().encodeToString(bad))
                        .doesNotThrowAnyException();
            }
        }
        for (Path found : found(taker)) {
            byte[] bad = Files.readAllBytes(found);
            assertThatCode(() -> takes.accept(bad)).as(found.toString()).doesNotThrowAnyException();
        }
    }

    private static List<Path> found(String taker) throws IOException {
        if (!Files.isDirectory(FOUND.resolve(taker))) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(FOUND.resolve(taker))) {
            return files.sorted().toList();
        }
    }

    private static byte[] spoiled(byte[] good, Random random) {
        byte[] bad = random.nextInt(8) == 0 ? Arrays.copyOf(good, random.nextInt(good.length + 1)) : good.clone();
        for (int i = random.nextInt(6); i >= 0 && bad.length > 0; i--) {
            int at = random.nextInt(bad.length);
            int more = Math.min(random.nextInt(9), bad.length - at);
            switch (random.nextInt(4)) {
                case 0 -> bad[at] = (byte) random.nextInt(256);
                case 1 -> Arrays.fill(bad, at, at + more, (byte) random.nextInt(256));
                case 2 -> System.arraycopy(bad, random.nextInt(bad.length - more + 1), bad, at, more);
                default -> Arrays.fill(bad, at, at + more, (byte) '9');
            }
        }
        return bad;
    }

    /** Good input of every kind. */
    private static Map<String, List<byte[]>> seeds(Path folder) throws IOException {
        Map<String, List<byte[]>> seeds = new TreeMap<>();
        seeds.put("stash", examples());
        seeds.put(
                "wish",
                Stream.of("box 30 x 20 x 8 cm", "bottle 3 in x 12 1/2 in", "book 8 x 5 x 1 1/2 in", "ball 9\"")
                        .map(text -> text.getBytes(StandardCharsets.UTF_8))
                        .toList());
        Store store = Store.open(folder.resolve("work.db"), Clock.systemUTC());
        store.stash()
                .edit(new StashEdit("add 60", List.of(), Stashes.scraps(60, 3).pieces()));
        Project cloth = cloth(store);
        store.cloths().keep("dawn", "Dawn", cloth);
        seeds.put("archive", List.of(Archive.of(store).bytes()));
        seeds.put("cloth", List.of(KeptCloth.text(cloth).getBytes(StandardCharsets.UTF_8)));
        String edit = DocumentEdit.of("{\"a\":1,\"b\":2}", "{\"a\":1,\"b\":3}").text();
        seeds.put("journal", List.of(edit.getBytes(StandardCharsets.UTF_8)));
        byte[] photograph = TestPhotographs.few();
        seeds.put("image", List.of(Arrays.copyOf(photograph, Math.min(photograph.length, 6_000))));
        seeds.put("photograph", List.of(photograph));
        return seeds;
    }

    private static List<byte[]> examples() throws IOException {
        List<byte[]> files = new ArrayList<>();
        for (String name : List.of("scraps.csv", "metric.csv", "strips.csv")) {
            files.add(Files.readAllBytes(Path.of("examples", name)));
        }
        return files;
    }

    private static Project cloth(Store store) {
        Wish wish = new Wish(
                new Wish.Target(Optional.of(Size.square(Length.inches(30))), false),
                OpenShape.shape(),
                Making.inches(),
                PiecingRules.inches(),
                new Wish.Preferences(List.of(), 1, 1, Ruler.EIGHTHS));
        Plan plan = ((PlanOutcome.Proposals)
                        Planner.plan(store.stash().whole(), wish, 1, Budget.steps(2_000), progress -> {}))
                .plans()
                .get(0);
        return Project.of(DesignEdits.settled(plan, Order.ROUND), plan, Purpose.NOTHING);
    }

    /** Writes good input for the fuzzer to begin with, a folder for each taker, into the folder named. */
    public static void main(String[] words) throws IOException {
        Path into = Path.of(words[0]);
        for (var taker : seeds(Files.createTempDirectory("seeds")).entrySet()) {
            Path there = Files.createDirectories(into.resolve(taker.getKey()));
            for (int i = 0; i < taker.getValue().size(); i++) {
                Files.write(there.resolve("good-" + i), taker.getValue().get(i));
            }
        }
    }
}
