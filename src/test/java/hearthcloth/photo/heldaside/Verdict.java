package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import hearthcloth.measure.Unit;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.Reading;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle;
import hearthcloth.photo.plane.MeasuredLength;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;

/** Holds one reading against the truth. What was read is brought to the true floor through the picture. */
final class Verdict {

    private static final double SAME = 0.5;

    private final Shot shot;
    private final Reading.Read read;
    private final List<Geometry> seen = new ArrayList<>();
    private final Set<Integer> matched = new HashSet<>();

    Verdict(Shot shot, Reading.Read read) {
        this.shot = shot;
        this.read = read;
        for (ReadPiece piece : read.pieces()) {
            List<Point> floor =
                    piece.outline().picture().stream().map(shot::onFloor).toList();
            seen.add(GeometryFixer.fix(Rim.polygon(floor)));
        }
    }

    List<Judged> judged() {
        return shot.truth().pieces().stream().map(this::judged).toList();
    }

    /** Numbers of the pieces read that are no true piece; ask after {@link #judged}. */
    List<Integer> falseOnes() {
        List<Integer> wrong = new ArrayList<>();
        for (int i = 0; i < seen.size(); i++) {
            if (!matched.contains(i)) {
                wrong.add(read.pieces().get(i).number());
            }
        }
        return wrong;
    }

    private Judged judged(TruePiece truth) {
        Geometry real = Rim.polygon(truth.rim());
        for (int i = 0; i < seen.size(); i++) {
            double both = real.intersection(seen.get(i)).getArea();
            if (both / (real.getArea() + seen.get(i).getArea() - both) >= SAME) {
                matched.add(i);
                ReadPiece piece = read.pieces().get(i);
                String doubts = piece.doubts().stream()
                        .filter(Doubt::isOpen)
                        .map(d -> d.kind().name())
                        .sorted()
                        .collect(Collectors.joining(" "));
                return new Judged(truth, true, sides(truth, piece), usable(truth, piece), doubts);
            }
        }
        return new Judged(truth, false, List.of(), Judged.Usable.NONE, "");
    }

    /** Empty unless each true corner has one read corner of its own near it, in the same order. */
    private List<Judged.SideError> sides(TruePiece truth, ReadPiece piece) {
        List<Point> corners =
                piece.outline().picture().stream().map(shot::onFloor).toList();
        List<Double> sides = truth.sides();
        int n = sides.size();
        if (corners.size() != n) {
            return List.of();
        }
        double near = Math.max(5, 0.25 * Collections.min(sides));
        for (int shift = 0; shift < n; shift++) {
            for (int way = -1; way <= 1; way += 2) {
                if (fits(truth.corners(), corners, shift, way, near)) {
                    return errors(sides, piece.outline().sides(), shift, way);
                }
            }
        }
        return List.of();
    }

    private static boolean fits(List<Point> truth, List<Point> read, int shift, int way, double near) {
        int n = truth.size();
        for (int i = 0; i < n; i++) {
            if (truth.get(i).to(read.get(Math.floorMod(shift + way * i, n))) > near) {
                return false;
            }
        }
        return true;
    }

    private static List<Judged.SideError> errors(List<Double> truth, List<MeasuredLength> read, int shift, int way) {
        int n = truth.size();
        List<Judged.SideError> errors = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            MeasuredLength side = read.get(Math.floorMod(way > 0 ? shift + i : shift - i - 1, n));
            errors.add(new Judged.SideError(
                    truth.get(i),
                    side.length().in(Unit.MILLIMETRE),
                    side.giveOrTake().in(Unit.MILLIMETRE)));
        }
        return errors;
    }

    private Judged.Usable usable(TruePiece truth, ReadPiece piece) {
        LargestRectangle.Box box = piece.usable();
        List<Point> there = box.corners().stream()
                .map(corner -> shot.onFloor(read.scale().inPicture(corner)))
                .toList();
        Point a = there.get(0);
        Point b = there.get(1);
        Point c = there.get(2);
        Point middle = new Point((a.x() + c.x()) / 2, (a.y() + c.y()) / 2);
        double angle = Math.atan2(b.y() - a.y(), b.x() - a.x());
        double overhang = new UsableFit(truth.rim(), box.width(), box.height()).overhang(middle, angle);
        double best = LargestRectangle.inside(truth.rim()).area();
        return new Judged.Usable(overhang, box.area() / best);
    }
}
