package hearthcloth.photo;

import hearthcloth.colour.Colour;
import hearthcloth.colour.Lab;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ddogleg.clustering.AssignCluster;
import org.ddogleg.clustering.ConfigKMeans;
import org.ddogleg.clustering.FactoryClustering;
import org.ddogleg.clustering.kmeans.StandardKMeans;
import org.ddogleg.clustering.misc.ListAccessor;

/**
 * The main colours of any picture she loves, a garden or a wall: its pixels in CIELAB in a few groups by k-means, and of
 * each group the colour of the picture that lies nearest its mean. The same picture always gives the same colours.
 */
public final class PictureColours {

    /** Places looked at along the longer side. */
    private static final int PLACES = 96;

    private static final long SEED = 1;

    private PictureColours() {}

    /**
     * One of them.
     *
     * @param share of the picture, from 0 to 1
     */
    public record Main(Colour colour, double share) {}

    /**
     * Up to {@code most} colours, the one that takes most of the picture first.
     *
     * @throws IllegalArgumentException with a sentence, where the picture cannot be read
     */
    public static List<Main> of(byte[] bytes, int most) {
        List<Colour> places = Photograph.ofAny(bytes).colours(PLACES);
        List<double[]> points = places.stream().map(PictureColours::point).toList();
        int groups = (int) Math.min(most, places.stream().distinct().count());
        StandardKMeans<double[]> means = FactoryClustering.kMeans(new ConfigKMeans(), 3, double[].class);
        means.initialize(SEED);
        means.process(
                new ListAccessor<>(points, (from, to) -> System.arraycopy(from, 0, to, 0, 3), double[].class), groups);
        AssignCluster<double[]> assignment = means.getAssignment();
        List<Main> found = new ArrayList<>();
        for (int group = 0; group < groups; group++) {
            List<Colour> members = new ArrayList<>();
            for (int i = 0; i < places.size(); i++) {
                if (assignment.assign(points.get(i)) == group) {
                    members.add(places.get(i));
                }
            }
            if (!members.isEmpty()) {
                found.add(new Main(middle(members), (double) members.size() / places.size()));
            }
        }
        found.sort(Comparator.comparingDouble(Main::share).reversed());
        return found;
    }

    private static double[] point(Colour colour) {
        Lab lab = colour.lab();
        return new double[] {lab.lightness(), lab.a(), lab.b()};
    }

    private static Colour middle(List<Colour> members) {
        double[] sum = new double[3];
        for (Colour member : members) {
            double[] point = point(member);
            for (int i = 0; i < 3; i++) {
                sum[i] += point[i] / members.size();
            }
        }
        Lab mean = new Lab(sum[0], sum[1], sum[2]);
        return members.stream()
                .min(Comparator.comparingDouble(member -> member.lab().apart(mean)))
                .orElseThrow();
    }
}
