package hearthcloth.wrap.tie;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Placing;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Visible;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The spare corners of a box left outside, held to the cloth they are of and to a cloth that was brought to rest. */
class SpareCornersTest {

    private static final Length TAIL = Length.cm(12);

    static Stream<Fit> fits() {
        return Stream.of(Tie.FOUR_CORNER, Tie.ERRAND, Tie.TWO_KNOT)
                .flatMap(tie -> Stream.of("30x20x8", "20x20x20", "40x30x3", "60x12x12", "10x8x4")
                        .map(box -> Gift.parse("box " + box + " cm", null))
                        .flatMap(gift -> fits(tie, gift)));
    }

    private static Stream<Fit> fits(Tie tie, Gift gift) {
        Length more = tie.smallestSquare(gift, TAIL).times(11).dividedBy(10, Rounding.UP);
        Placing off = Placing.CENTRED.shifted(Length.mm(11), Length.mm(-7)).turned(1);
        return Stream.of(
                tie.fit(gift, Size.square(tie.smallestSquare(gift, TAIL)), TAIL),
                tie.fit(gift, new Size(more.plus(Length.mm(20)), more), TAIL),
                tie.fit(gift, Size.square(more), TAIL, off));
    }

    @ParameterizedTest
    @MethodSource("fits")
    void cloth_is_never_stretched_and_every_bit_is_there_once(Fit fit) {
        Fold fold = TiedFold.asItFalls(TiedFold.of(fit)).orElseThrow();
        FoldJudge.isNeverStretched(fold);
        FoldJudge.isEveryBitOfTheClothOnce(fold);
    }

    /** The walls stay as they are, the top stays covered, and the corners are all that shows besides. */
    @ParameterizedTest
    @MethodSource("fits")
    void the_box_stays_covered_and_what_shows_more_is_both_sides_of_the_corners(Fit fit) {
        Fold tucked = TiedFold.of(fit);
        Visible before = Visible.of(tucked);
        Visible after = Visible.of(TiedFold.asItFalls(tucked).orElseThrow());
        Visible.Shares was = before.shares(tucked.laying().whole());
        Visible.Shares now = after.shares(tucked.laying().whole());
        assertThat(now.total()).isCloseTo(was.total(), within(1e-6 * was.total()));
        assertThat(now.top()).isCloseTo(was.top(), within(1e-6 * was.top()));
        assertThat(now.underneath()).isCloseTo(was.underneath(), within(1e-6 * was.underneath()));
        double fins = after.pieces().stream()
                .filter(piece -> piece.facet().plane().name().startsWith("spare"))
                .mapToDouble(piece -> piece.cloth().area())
                .sum();
        assertThat(fins).isPositive();
        assertThat(now.sides()).isCloseTo(was.sides() + fins, within(1e-6 * now.sides()));
    }

    @ParameterizedTest
    @MethodSource("fits")
    void beside_the_walls_a_corner_hangs_on_both_panels_by_the_upright_edge(Fit fit) {
        for (Facet facet : TiedFold.asItFalls(TiedFold.of(fit)).orElseThrow().facets()) {
            if (facet.plane().name().startsWith("spare")) {
                Gift.Box box = (Gift.Box) fit.gift();
                Vector edge = new Vector(box.along().nm() / 2e6, box.across().nm() / 2e6, 0);
                List<Vector> on = facet.corners().stream()
                        .filter(corner -> Math.abs(Math.abs(corner.x()) - edge.x()) < 1e-9
                                && Math.abs(Math.abs(corner.y()) - edge.y()) < 1e-9)
                        .toList();
                assertThat(on).hasSizeGreaterThanOrEqualTo(2);
                assertThat(facet.motion().inside().z()).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Test
    void a_tie_whose_corners_hands_lay_leaves_nothing_to_fall() {
        for (Tie tie : List.of(Tie.FLAT, Tie.EDGE_ALONG_EDGE)) {
            Gift gift = Gift.parse("box 30x20x8 cm", null);
            assertThat(TiedFold.asItFalls(
                            TiedFold.of(tie.fit(gift, Size.square(tie.smallestSquare(gift, TAIL)), TAIL))))
                    .isEmpty();
        }
        Gift bottle = Gift.parse("bottle 8 x 30 cm", null);
        Length side = Tie.ONE_BOTTLE.smallestSquare(bottle, TAIL);
        assertThat(TiedFold.asItFalls(TiedFold.of(Tie.ONE_BOTTLE.fit(bottle, Size.square(side), TAIL))))
                .isEmpty();
    }

    /**
     * Of what showed in the trial (docs/sources.md#spare-corners), in per cent: hearth and its twin, palest, twill, linen,
     * poplin. On the sides it is met within 2.5, where cloth hangs on the box; in all within 6.5, since gathers near the
     * knot, which are counted as ends here, showed more of the outer fabrics there.
     */
    @Test
    void what_shows_is_near_what_showed_of_a_cloth_brought_to_rest() throws IOException {
        Length side = new Length(Math.round(507.3844708404072 * Math.sqrt(2) * 1e6));
        Gift gift = Gift.parse("box 30x20x8 cm", null);
        Fold fold = TiedFold.asItFalls(TiedFold.of(Tie.FOUR_CORNER.fit(gift, Size.square(side), TAIL)))
                .orElseThrow();
        Map<String, double[]> shown = shown(Visible.of(fold));
        double sides = shown.values().stream().mapToDouble(here -> here[0]).sum();
        double all =
                sides + shown.values().stream().mapToDouble(here -> here[1]).sum();
        Map<String, double[]> trial = Map.of(
                "Madder check", new double[] {81.0, 70.2},
                "Foam cotton", new double[] {4.9, 11.8},
                "Rope twill", new double[] {11.9, 13.9},
                "Kelp linen", new double[] {1.6, 2.9},
                "Slate poplin", new double[] {0.6, 1.3});
        assertThat(shown.keySet()).isEqualTo(trial.keySet());
        shown.forEach((fabric, here) -> {
            double[] there = trial.getOrDefault(fabric, new double[2]);
            assertThat(100 * here[0] / sides).as(fabric + " on the sides").isCloseTo(there[0], within(2.5));
            assertThat(100 * (here[0] + here[1]) / all).as(fabric).isCloseTo(there[1], within(6.5));
        });
    }

    private static Map<String, double[]> shown(Visible visible) throws IOException {
        Map<String, double[]> shown = new TreeMap<>();
        Path file = Path.of("src", "test", "resources", "sources", "falling-corners-cloth.csv");
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            String[] cells = line.split(",", -1);
            if (line.startsWith("#") || line.startsWith("fabric,")) {
                continue;
            }
            List<Point> corners = new ArrayList<>();
            String[] numbers = cells[1].split(" ", -1);
            for (int i = 0; i < numbers.length; i += 2) {
                corners.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
            }
            Visible.Shares shares = visible.shares(ConvexPolygon.anticlockwise(corners));
            double[] here = shown.computeIfAbsent(cells[0], fabric -> new double[2]);
            here[0] += shares.sides();
            here[1] += shares.top();
        }
        return shown;
    }
}
