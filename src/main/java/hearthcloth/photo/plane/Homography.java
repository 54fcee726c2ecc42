package hearthcloth.photo.plane;

import boofcv.factory.geo.FactoryMultiView;
import boofcv.struct.geo.AssociatedPair;
import hearthcloth.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.ejml.data.DMatrixRMaj;

/**
 * A projective map of the plane that takes four places to four others (docs/sources.md#plane-measuring); BoofCV solves
 * for it (normalised direct linear transform).
 */
public final class Homography {

    private final double[] h;

    private Homography(double[] h) {
        this.h = h;
    }

    public static Homography of(List<Point> from, List<Point> to) {
        List<AssociatedPair> pairs = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            pairs.add(new AssociatedPair(
                    from.get(i).x(), from.get(i).y(), to.get(i).x(), to.get(i).y()));
        }
        DMatrixRMaj matrix = new DMatrixRMaj(3, 3);
        if (!FactoryMultiView.homographyDLT(true).process(pairs, matrix)) {
            throw new IllegalArgumentException("the four places lie on a line");
        }
        return new Homography(matrix.data.clone());
    }

    public Point map(Point spot) {
        double w = h[6] * spot.x() + h[7] * spot.y() + h[8];
        return new Point(
                (h[0] * spot.x() + h[1] * spot.y() + h[2]) / w, (h[3] * spot.x() + h[4] * spot.y() + h[5]) / w);
    }

    /**
     * Where the camera is: its place above the plane, and its height, in units of the plane. The middle of the picture must be
     * the origin.
     *
     * @param focal length in pixels
     */
    public Eye eye(double focal) {
        double[] one = {h[0] / focal, h[3] / focal, h[6]};
        double[] two = {h[1] / focal, h[4] / focal, h[7]};
        double[] far = {h[2] / focal, h[5] / focal, h[8]};
        double unit = Math.sqrt(Math.sqrt(dot(one, one) * dot(two, two)));
        double[] up = cross(one, two);
        double x = -dot(one, far) / (unit * unit);
        double y = -dot(two, far) / (unit * unit);
        return new Eye(new Point(x, y), Math.abs(dot(up, far)) / (unit * unit * unit));
    }

    /** A camera's foot on the plane, and how far it is above it. */
    public record Eye(Point foot, double height) {}

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    /**
     * How far this map is from one that a camera of the given focal length, in pixels, makes of a true rectangle's
     * axes: zero when the two axes come out at right angles and to one scale. The middle of the picture must be the
     * origin.
     */
    public double skew(double focal) {
        double[] off = offCamera(focal);
        return Math.abs(off[0]) + Math.abs(off[1]);
    }

    /** The same in its two parts: the logarithm of one axis' scale over the other's, and the cosine of their angle. */
    public double[] offCamera(double focal) {
        double[] across = {h[0] / focal, h[3] / focal, h[6]};
        double[] down = {h[1] / focal, h[4] / focal, h[7]};
        double one = Math.sqrt(dot(across, across));
        double two = Math.sqrt(dot(down, down));
        return new double[] {Math.log(one / two), dot(across, down) / (one * two)};
    }
}
