package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.Vector;
import hearthcloth.measure.Length;
import hearthcloth.measure.Size;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.SourceTable;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.Facet;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.tie.TiedFold;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawn knot is a reef: its crossings, found again from the two lines alone, are those of docs/sources.md#reef-knot. */
class ReefStrandsTest {

    private static final Length TAIL = Length.cm(12);

    /** Where the two strands cross, seen from above, and whether the first lies on top. */
    private record Crossing(double alongFirst, double alongSecond, boolean firstOver) {}

    private static Fold fold() {
        Gift gift = Gift.parse("box 30 x 20 x 8 cm", null);
        return TiedFold.of(Tie.FOUR_CORNER.fit(gift, Size.square(Length.cm(75)), TAIL));
    }

    @Test
    void crossings_are_those_of_a_reef_and_not_of_a_granny() {
        for (ReefKnot knot : fold().knots()) {
            ReefStrands reef = ReefStrands.of(knot);
            List<Crossing> crossings = new ArrayList<>(crossings(knot, reef.first(), reef.second()));
            crossings.sort(Comparator.comparingDouble(Crossing::alongFirst));
            List<SourceTable.Row> rows = SourceTable.rows("knot_crossings.csv").stream()
                    .sorted(Comparator.comparingDouble(row -> row.number("order_along_A")))
                    .toList();
            assertThat(crossings).hasSize(rows.size());
            List<Boolean> reefs = rows.stream()
                    .map(row -> row.text("over_in_reef").equals("A"))
                    .toList();
            assertThat(crossings.stream().map(Crossing::firstOver)).isEqualTo(reefs);
            assertThat(crossings(knot, reef.first(), reef.first())).isEmpty();
            assertThat(crossings(knot, reef.second(), reef.second())).isEmpty();
        }
    }

    @Test
    void strands_are_as_long_as_the_cloth_the_knot_takes_and_the_rest_is_the_free_end() {
        Fold fold = fold();
        for (ReefKnot knot : fold.knots()) {
            ReefStrands reef = ReefStrands.of(knot);
            double mean = (length(reef.first()) + length(reef.second())) / 2;
            assertThat(mean).isCloseTo(knot.taken(), within(1e-9));
            assertThat(length(reef.first())).isCloseTo(knot.taken(), within(0.12 * knot.taken()));
            for (ReefKnot.Lead lead : knot.leads()) {
                double corner = fold.laying().whole().corners().stream()
                        .mapToDouble(point -> lead.axis().dot(point.minus(lead.from())))
                        .max()
                        .orElseThrow();
                double free = fold.facets().stream()
                        .filter(facet -> facet.part() == Facet.Part.TAIL)
                        .flatMap(facet -> facet.cloth().corners().stream())
                        .mapToDouble(point -> lead.axis().dot(point.minus(lead.from())))
                        .max()
                        .orElseThrow();
                assertThat(free).isCloseTo(corner, within(1e-9));
            }
        }
    }

    private static List<Crossing> crossings(ReefKnot knot, List<Vector> one, List<Vector> two) {
        List<Crossing> found = new ArrayList<>();
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < two.size(); j++) {
                if (one == two && Math.abs(i - j) < 2) {
                    continue;
                }
                double[] a = flat(knot, one.get(i - 1));
                double[] b = flat(knot, one.get(i));
                double[] c = flat(knot, two.get(j - 1));
                double[] d = flat(knot, two.get(j));
                double turn = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
                double s = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / turn;
                double t = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / turn;
                if (s >= 0 && s < 1 && t >= 0 && t < 1) {
                    double over = a[2] + s * (b[2] - a[2]) - c[2] - t * (d[2] - c[2]);
                    found.add(new Crossing(i + s, j + t, over > 0));
                }
            }
        }
        return found;
    }

    private static double[] flat(ReefKnot knot, Vector place) {
        Vector from = place.minus(knot.at());
        return new double[] {from.dot(knot.along()), from.dot(knot.across()), from.dot(knot.up())};
    }

    private static double length(List<Vector> line) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            sum += line.get(i).minus(line.get(i - 1)).length();
        }
        return sum;
    }
}
