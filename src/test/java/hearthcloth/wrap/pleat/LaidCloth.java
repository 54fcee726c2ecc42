package hearthcloth.wrap.pleat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hearthcloth.geometry.ConvexPolygon;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.fold.Facet;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Laid facets looked at from outside: what is where, whether cloth is lost, stretched or torn. */
record LaidCloth(List<Facet> facets) {

    /** No bit of the cloth is lost or there twice. */
    LaidCloth isAllOf(ConvexPolygon region) {
        double sum = facets.stream().mapToDouble(facet -> facet.cloth().area()).sum();
        assertThat(sum).isCloseTo(region.area(), within(1e-6 * region.area()));
        for (Facet facet : facets) {
            assertThat(facet.cloth().and(region).area())
                    .isCloseTo(facet.cloth().area(), within(1e-6 * facet.cloth().area() + 1e-9));
        }
        return this;
    }

    /** Every facet keeps its lengths and lies in the plane it names. */
    LaidCloth isNeverStretched() {
        for (Facet facet : facets) {
            Vector u = facet.motion().u();
            Vector v = facet.motion().v();
            assertThat(u.length()).isCloseTo(1, within(1e-9));
            assertThat(v.length()).isCloseTo(1, within(1e-9));
            assertThat(u.dot(v)).isCloseTo(0, within(1e-9));
            assertThat(Math.abs(facet.motion().inside().dot(facet.plane().out())))
                    .isCloseTo(1, within(1e-9));
        }
        return this;
    }

    /** No two places of the cloth come to lie farther apart than they are on it, as they would where it is torn. */
    LaidCloth isOneSheet(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            Facet one = facets.get(random.nextInt(facets.size()));
            Facet two = facets.get(random.nextInt(facets.size()));
            Point a = some(one.cloth(), random);
            Point b = some(two.cloth(), random);
            double apart = one.motion().at(a).minus(two.motion().at(b)).length();
            assertThat(apart).isLessThan(a.to(b) + 1e-6);
        }
        return this;
    }

    static Point some(ConvexPolygon outline, Random random) {
        Point first = outline.corners().get(0);
        int third = 2 + random.nextInt(outline.corners().size() - 2);
        double a = random.nextDouble();
        double b = random.nextDouble() * (1 - a);
        return first.plus(outline.corners().get(third - 1).minus(first).times(a))
                .plus(outline.corners().get(third).minus(first).times(b));
    }

    /** Where a point of the cloth lies: once for each facet that holds it. */
    List<Vector> at(Point point) {
        List<Vector> places = new ArrayList<>();
        for (Facet facet : holding(point)) {
            places.add(facet.motion().at(point));
        }
        return places;
    }

    List<Facet> holding(Point point) {
        ConvexPolygon spot =
                ConvexPolygon.rectangle(point.x() - 1e-3, point.y() - 1e-3, point.x() + 1e-3, point.y() + 1e-3);
        return facets.stream()
                .filter(facet -> !facet.cloth().and(spot).isEmpty())
                .toList();
    }

    /** All facets that hold this point lay it in this place. */
    LaidCloth hasAt(Point point, Vector place) {
        assertThat(at(point))
                .as("%s", point)
                .isNotEmpty()
                .allSatisfy(there -> assertThat(there.minus(place).length())
                        .as("%s lies at %s and not at %s", point, there, place)
                        .isLessThan(1e-6));
        return this;
    }
}
