package hearthcloth.draw.tied;

import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.settle.Settled;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;

/**
 * A cloth in space as triangles in sixteen-bit numbers. Rows of numbers are little-endian, in base 64, each number as what
 * it adds to the same of the one before.
 *
 * @param step millimetres to one of {@code places}, of which there are three a point
 * @param cloth where each point lies on the plan's front: the share of its width and of its height, in 65535ths
 * @param triangles three numbers each, anticlockwise seen from the inner face
 */
record Surface(double step, String places, String cloth, String triangles) {

    private static final int FULL = 65535;
    private static final int HALF = 32000;

    static Surface of(Drape.Mesh mesh, TiedModel.Plan plan) {
        return packed(mesh.places(), mesh.cloth(), mesh.triangles(), plan);
    }

    static Surface of(Settled cloth, TiedModel.Plan plan) {
        return packed(cloth.places(), cloth.cloth(), cloth.triangles(), plan);
    }

    private static Surface packed(
            List<Vector> places, List<Point> cloth, List<Integer> triangles, TiedModel.Plan plan) {
        double most = 1;
        for (Vector place : places) {
            most = Math.max(most, Math.max(Math.abs(place.x()), Math.max(Math.abs(place.y()), Math.abs(place.z()))));
        }
        double step = most / HALF;
        List<Integer> numbers = new ArrayList<>();
        List<Integer> shares = new ArrayList<>();
        for (int k = 0; k < places.size(); k++) {
            Vector place = places.get(k);
            numbers.add((int) Math.round(place.x() / step));
            numbers.add((int) Math.round(place.y() / step));
            numbers.add((int) Math.round(place.z() / step));
            TiedModel.Share at = plan.share(cloth.get(k));
            shares.add(whole(at.x()));
            shares.add(whole(at.y()));
        }
        return new Surface(step, packed(numbers, 3), packed(shares, 2), packed(triangles, 1));
    }

    private static int whole(double share) {
        return (int) Math.round(FULL * Math.max(0, Math.min(1, share)));
    }

    /** Each as what it adds to the one so many before, which is small and packs well on its way to the page. */
    private static String packed(List<Integer> numbers, int apart) {
        ByteBuffer bytes = ByteBuffer.allocate(2 * numbers.size()).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < numbers.size(); i++) {
            int before = i < apart ? 0 : numbers.get(i - apart);
            bytes.putShort((short) (numbers.get(i) - before));
        }
        return Base64.getEncoder().encodeToString(bytes.array());
    }
}
