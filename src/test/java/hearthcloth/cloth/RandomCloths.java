package hearthcloth.cloth;

import hearthcloth.cloth.layout.Layout;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.Making;
import hearthcloth.cloth.making.Margins;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Cloths by chance, the same for the same seed: bars laid on any sides and joined anyhow, and free patchwork. */
public final class RandomCloths {

    private static final Length LEAST = Length.mm(40);
    private static final String[] FABRICS = {"oat", "kelp", "sla\"te", "r\\ust", "shell 2 x 2 same", "(moss |> дым)"};

    private final Random random;
    private int free;

    private RandomCloths(long seed) {
        this.random = new Random(seed);
    }

    /** {@code count} cloths of seeds 1, 2 …: free ones and laid-out ones in turn. */
    public static Stream<Cloth> many(int count) {
        return IntStream.rangeClosed(1, count).mapToObj(RandomCloths::of);
    }

    public static Cloth of(long seed) {
        RandomCloths chance = new RandomCloths(seed);
        return seed % 2 == 0 ? chance.laidOut() : chance.free();
    }

    private Cloth free() {
        Size size = new Size(length(80, 600), length(80, 600));
        return new Cloth(split(size, 5), making());
    }

    private Assembly split(Size size, int deeper) {
        Join join = random.nextBoolean() ? Join.BESIDE : Join.BELOW;
        Length across = join.across(size);
        if (deeper == 0 || random.nextInt(6) == 0 || across.isLessThan(LEAST.times(2))) {
            free++;
            return new Patch(new Place.Free(free), fabric(), size, showing());
        }
        Length first = LEAST.plus(
                        new Length(random.nextLong(across.minus(LEAST.times(2)).nm() + 1)))
                .roundedTo(Length.inches(1, 64), Rounding.UP);
        Length edge = join.edge(size);
        return Seam.of(
                join,
                half(),
                split(join.size(first, edge), deeper - 1),
                split(join.size(across.minus(first), edge), deeper - 1));
    }

    private Cloth laidOut() {
        Making making = making();
        List<Layout.Course> courses = new ArrayList<>();
        for (int i = random.nextInt(14); i >= 0; i--) {
            courses.add(new Layout.Course(any(List.of(Side.values())), length(40, 120)));
        }
        Layout layout = new Layout(new Size(length(60, 300), length(60, 300)), courses);
        List<List<Layout.Part>> bars =
                layout.slots().stream().map(slot -> parts(slot.length())).toList();
        return new Cloth(layout.sewn(fabric(), showing(), bars), making);
    }

    private List<Layout.Part> parts(Length bar) {
        List<Layout.Part> parts = new ArrayList<>();
        Length left = bar;
        while (!left.isLessThan(LEAST.times(2)) && random.nextInt(3) == 0) {
            Length part = LEAST.plus(
                    new Length(random.nextLong(left.minus(LEAST.times(2)).nm() + 1)));
            parts.add(new Layout.Part(fabric(), showing(), part));
            left = left.minus(part);
        }
        parts.add(new Layout.Part(fabric(), showing(), left));
        return parts;
    }

    private Making making() {
        List<SeamKind> table = SeamKind.table();
        SeamKind seam = random.nextBoolean()
                ? SeamKind.felled(Length.mm(1 + random.nextInt(8)), Length.mm(8 + random.nextInt(9)))
                : any(table);
        Hem hem = new Hem(
                Length.mm(random.nextInt(12)), Length.mm(random.nextInt(12)), any(List.of(Hem.Corner.values())));
        Length mark = random.nextBoolean() ? Length.mm(1) : Length.inches(1, 8);
        Margins margins = new Margins(Length.mm(random.nextInt(15)), Length.mm(random.nextInt(4)), mark);
        return new Making(seam, hem, margins, random.nextBoolean() ? Face.FRONT : Face.BACK);
    }

    private Length length(int least, int most) {
        return Length.mm(least)
                .plus(new Length(random.nextLong(Length.mm(most - (long) least).nm())));
    }

    private String fabric() {
        return any(List.of(FABRICS));
    }

    private Showing showing() {
        return any(List.of(Showing.values()));
    }

    private Half half() {
        return any(List.of(Half.values()));
    }

    private <T> T any(List<T> choice) {
        return choice.get(random.nextInt(choice.size()));
    }
}
