package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.EdgeFit;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.PrintedSheetParameters;
import hearthcloth.photo.plane.Homography;
import hearthcloth.photo.plane.MeasuringSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds measuring sheets. Marks that lie to each other as on the print belong to one sheet; three of them make it certain,
 * since cloth does not lie so. Then every mark that shows at all is measured in the full picture.
 */
public final class MeasuringSheetFinder {

    private final PixelImage picture;
    private final LensModel lens;
    private final PrintedSheetParameters printed;
    private final EdgeParameters.Steps steps;

    private MeasuringSheetFinder(PixelImage picture, PrintedSheetParameters printed, EdgeParameters.Steps steps) {
        this.picture = picture;
        this.lens = LensModel.unknown(picture);
        this.printed = printed;
        this.steps = steps;
    }

    /**
     * The sheets in a picture, the one that shows most of its marks first.
     *
     * @param thorough whether to look in the finer picture too where the reduced one shows too little
     */
    public static List<MarkedSheet> in(
            PixelImage picture,
            LabThumbnail coarse,
            boolean thorough,
            PrintedSheetParameters printed,
            EdgeParameters.Steps steps) {
        MeasuringSheetFinder finder = new MeasuringSheetFinder(picture, printed, steps);
        List<CodedMarks.Seen> seen = CodedMarks.in(coarse, printed.reading());
        List<MarkedSheet> found = finder.sheets(seen);
        if (found.isEmpty() && (thorough || !seen.isEmpty()) && coarse.step > 1) {
            found = finder.sheets(CodedMarks.in(picture, coarse.step / 2, printed.reading()));
        }
        return found;
    }

    private List<MarkedSheet> sheets(List<CodedMarks.Seen> seen) {
        List<CodedMarks.Seen> left = new ArrayList<>(seen);
        List<MarkedSheet> found = new ArrayList<>();
        while (left.size() >= printed.together().leastMarks()) {
            List<CodedMarks.Seen> together = largest(left);
            if (together.size() < printed.together().leastMarks()) {
                break;
            }
            left.removeAll(together);
            measured(together).ifPresent(found::add);
        }
        found.sort(Comparator.comparingInt((MarkedSheet sheet) -> -sheet.marks().size()));
        return found;
    }

    private List<CodedMarks.Seen> largest(List<CodedMarks.Seen> among) {
        List<CodedMarks.Seen> best = List.of();
        for (CodedMarks.Seen seed : among) {
            List<CodedMarks.Seen> group = agreeing(seed, among);
            best = group.size() > best.size() ? group : best;
        }
        return best;
    }

    private List<CodedMarks.Seen> agreeing(CodedMarks.Seen seed, List<CodedMarks.Seen> among) {
        Parallel parallel = Parallel.of(seed);
        List<CodedMarks.Seen> group = new ArrayList<>();
        for (CodedMarks.Seen one : among) {
            double far = one.mark().middle().to(seed.mark().middle());
            Point expected = parallel.raw(one.mark().middle());
            double near = (printed.together().nearShare() * far + MeasuringSheet.MARK_MM / 4) * parallel.pixelsPerMm();
            boolean first = group.stream().noneMatch(other -> other.mark().equals(one.mark()));
            if (one.equals(seed)
                    || (first && !one.mark().equals(seed.mark()) && middle(one).to(expected) < near)) {
                group.add(one);
            }
        }
        return group.size() < printed.together().leastMarks() ? group : settled(group);
    }

    /** Without those that lie elsewhere than all others say, the worst first. */
    private List<CodedMarks.Seen> settled(List<CodedMarks.Seen> group) {
        List<CodedMarks.Seen> kept = new ArrayList<>(group);
        while (kept.size() >= printed.together().leastMarks()) {
            Homography toPrint = toPrint(kept);
            CodedMarks.Seen worst = kept.stream()
                    .max(Comparator.comparingDouble(one -> off(one, toPrint)))
                    .orElseThrow();
            if (off(worst, toPrint) < printed.together().nearMm()) {
                return kept;
            }
            kept.remove(worst);
        }
        return kept;
    }

    private static double off(CodedMarks.Seen one, Homography toPrint) {
        return toPrint.map(middle(one)).to(one.mark().middle());
    }

    private static Homography toPrint(List<CodedMarks.Seen> marks) {
        return Homography.of(corners(marks), prints(marks));
    }

    private static List<Point> corners(List<CodedMarks.Seen> marks) {
        return marks.stream().flatMap(one -> one.corners().stream()).toList();
    }

    private static List<Point> prints(List<CodedMarks.Seen> marks) {
        return marks.stream().flatMap(one -> one.mark().corners().stream()).toList();
    }

    private static Point middle(CodedMarks.Seen one) {
        List<Point> c = one.corners();
        return c.get(0).towards(c.get(2), 0.5).towards(c.get(1).towards(c.get(3), 0.5), 0.5);
    }

    /** How one mark shows, without perspective: enough to tell where its neighbours are about. */
    private record Parallel(MeasuringSheet.Mark mark, Point corner, Point across, Point down) {

        static Parallel of(CodedMarks.Seen seen) {
            List<Point> c = seen.corners();
            double side = 2 * MeasuringSheet.MARK_MM;
            return new Parallel(
                    seen.mark(),
                    middle(seen),
                    new Point(
                            (c.get(1).x()
                                            - c.get(0).x()
                                            + c.get(2).x()
                                            - c.get(3).x())
                                    / side,
                            (c.get(1).y()
                                            - c.get(0).y()
                                            + c.get(2).y()
                                            - c.get(3).y())
                                    / side),
                    new Point(
                            (c.get(3).x()
                                            - c.get(0).x()
                                            + c.get(2).x()
                                            - c.get(1).x())
                                    / side,
                            (c.get(3).y()
                                            - c.get(0).y()
                                            + c.get(2).y()
                                            - c.get(1).y())
                                    / side));
        }

        Point raw(Point print) {
            double x = print.x() - mark.middle().x();
            double y = print.y() - mark.middle().y();
            return corner.plus(x * across.x() + y * down.x(), x * across.y() + y * down.y());
        }

        double pixelsPerMm() {
            return Math.max(Math.hypot(across.x(), across.y()), Math.hypot(down.x(), down.y()));
        }
    }

    private Optional<MarkedSheet> measured(List<CodedMarks.Seen> group) {
        Homography toPicture = Homography.of(prints(group), corners(group));
        List<MarkedSheet.Placed> placed = new ArrayList<>();
        double sharp = 0;
        for (MeasuringSheet.Mark mark : MeasuringSheet.marks()) {
            List<Point> rough = group.stream()
                    .filter(one -> one.mark().equals(mark))
                    .findFirst()
                    .map(CodedMarks.Seen::corners)
                    .orElseGet(() -> mark.corners().stream().map(toPicture::map).toList());
            Optional<FittedPolygon> fitted = fitted(rough).filter(at -> isLike(mark, at.corners()));
            if (fitted.isPresent()) {
                sharp += fitted.get().sharpness();
                for (int i = 0; i < 4; i++) {
                    double deviation = Math.hypot(end(fitted.get(), i), end(fitted.get(), (i + 3) % 4));
                    placed.add(new MarkedSheet.Placed(
                            mark.corners().get(i), fitted.get().corners().get(i), deviation));
                }
            }
        }
        if (placed.size() < 4 * printed.together().leastMarks()) {
            return Optional.empty();
        }
        return Optional.of(new MarkedSheet(
                placed,
                field(
                        toPicture,
                        new Point(-printed.paper().besideMm(), -printed.paper().beyondMm()),
                        beyond()),
                field(toPicture, MeasuringSheet.WHITE.get(0), MeasuringSheet.WHITE.get(1)),
                4 * sharp / placed.size()));
    }

    private Point beyond() {
        return new Point(
                MeasuringSheet.WIDTH_MM + printed.paper().besideMm(),
                MeasuringSheet.HEIGHT_MM + printed.paper().beyondMm());
    }

    private static List<Point> field(Homography toPicture, Point from, Point to) {
        return List.of(from, new Point(to.x(), from.y()), to, new Point(from.x(), to.y())).stream()
                .map(toPicture::map)
                .toList();
    }

    private double end(FittedPolygon at, int side) {
        return 1.5 * Math.hypot(at.fits().get(side).deviation(), printed.rims().leastDeviation());
    }

    /** A mark's outline in the full picture, where all four sides show. */
    private Optional<FittedPolygon> fitted(List<Point> rough) {
        double cell = shortest(rough) / MeasuringSheet.CELLS;
        int reach = (int) Math.max(2, Math.round(printed.rims().reach() * cell));
        boolean inside = rough.stream().allMatch(c -> picture.holds(c.x(), c.y(), reach + 3));
        if (!inside || cell < 2) {
            return Optional.empty();
        }
        List<EdgeFit> sides = new SubpixelEdges(picture, reach, false, steps).of(rough);
        FittedPolygon at =
                FittedPolygon.of(rough, sides, lens, 1.2, printed.rims().leash() * cell);
        boolean shows =
                at.fits().stream().allMatch(fit -> fit.share() > printed.rims().leastShare());
        boolean moved = rough.equals(at.corners());
        return shows && !moved ? Optional.of(at) : Optional.empty();
    }

    private static double shortest(List<Point> corners) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < 4; i++) {
            least = Math.min(least, corners.get(i).to(corners.get((i + 1) % 4)));
        }
        return least;
    }

    /** Whether the cells inside an outline are as printed: black ones darker than the mean of the black and white ones. */
    private boolean isLike(MeasuringSheet.Mark mark, List<Point> corners) {
        List<Point> square = FloorPlane.rectangle(MeasuringSheet.CELLS, MeasuringSheet.CELLS);
        Homography cells = Homography.of(square, corners);
        double[] value = new double[MeasuringSheet.CELLS * MeasuringSheet.CELLS];
        double[] mean = new double[2];
        int[] count = new int[2];
        for (int i = 0; i < value.length; i++) {
            int column = i % MeasuringSheet.CELLS;
            int row = i / MeasuringSheet.CELLS;
            double[] sum = new double[3];
            Point at = cells.map(new Point(column + 0.5, row + 0.5));
            picture.add(at.x(), at.y(), 1, sum);
            value[i] = sum[0] + sum[1] + sum[2];
            int which = mark.isBlack(column, row) ? 1 : 0;
            mean[which] += value[i];
            count[which]++;
        }
        double between = (mean[0] / count[0] + mean[1] / count[1]) / 2;
        int like = 0;
        for (int i = 0; i < value.length; i++) {
            like += value[i] < between == mark.isBlack(i % MeasuringSheet.CELLS, i / MeasuringSheet.CELLS) ? 1 : 0;
        }
        return like >= printed.reading().leastLike() * value.length;
    }
}
