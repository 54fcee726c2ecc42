package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.image.LensModel;
import java.util.List;

/**
 * What a {@link FloorScale} is made of, as plain numbers. This is what is stored of a reading, so that sizes can be measured
 * again on another day without the picture.
 *
 * @param pictureWidth of the upright picture, in pixels
 * @param sheetWidth of the sheet as it lies, in millimetres
 * @param sheet its corners in the picture; of several sheets those of each in turn
 * @param deviation of these corners, in pixels
 * @param views how the floor shows: first as read, then as it would be with each measured part one deviation off
 */
public record KeptScale(
        int pictureWidth,
        int pictureHeight,
        double sheetWidth,
        double sheetHeight,
        List<Point> sheet,
        double deviation,
        List<View> views) {

    public KeptScale {
        sheet = List.copyOf(sheet);
        views = List.copyOf(views);
    }

    /**
     * One way in which the floor may show: how the lens distorts, and where a rectangle of the sheet's size appears.
     *
     * @param middle of the lens, in pixels
     * @param unit half the picture's diagonal, in pixels
     * @param corners of the rectangle in the picture
     */
    public record View(Point middle, double unit, double kappa, double kappaDeviation, List<Point> corners) {
        public View {
            corners = List.copyOf(corners);
        }

        private View enlarged(double times) {
            return new View(
                    middle.times(times),
                    unit * times,
                    kappa,
                    kappaDeviation,
                    corners.stream().map(place -> place.times(times)).toList());
        }
    }

    static KeptScale of(List<FloorPlane> planes, SheetFinder.Found found, int pictureWidth, int pictureHeight) {
        FloorPlane.Turned size = found.size();
        List<Point> rectangle = FloorPlane.rectangle(size.width(), size.height());
        List<View> views = planes.stream()
                .map(plane -> new View(
                        plane.lens().middle(),
                        plane.lens().unit(),
                        plane.lens().kappa(),
                        plane.lens().deviation(),
                        rectangle.stream().map(plane::raw).toList()))
                .toList();
        return new KeptScale(
                pictureWidth, pictureHeight, size.width(), size.height(), found.corners(), found.deviation(), views);
    }

    /** The scale of the same photograph at {@code times} the size. */
    KeptScale enlarged(double times) {
        List<View> larger = views.stream().map(view -> view.enlarged(times)).toList();
        return new KeptScale(
                (int) Math.round(pictureWidth * times),
                (int) Math.round(pictureHeight * times),
                sheetWidth,
                sheetHeight,
                sheet.stream().map(place -> place.times(times)).toList(),
                deviation * times,
                larger);
    }

    /** The scale made again; it measures exactly what the stored one measured. */
    public FloorScale scale() {
        List<FloorPlane> planes = views.stream()
                .map(view -> FloorPlane.of(
                        new LensModel(view.middle(), view.unit(), view.kappa(), view.kappaDeviation()),
                        view.corners(),
                        sheetWidth,
                        sheetHeight))
                .toList();
        SheetFinder.Found found =
                new SheetFinder.Found(-1, sheet, new FloorPlane.Turned(sheetWidth, sheetHeight), 0, 0, deviation);
        return new FloorScale(planes, found, pictureWidth, pictureHeight);
    }
}
