package hearthcloth.cutstock.piecing;

import java.util.List;

/**
 * Cloths pieced from one heap, each scrap used in one of them.
 *
 * @param cloths those that can be made, in the order of the job; one that is missing could not even be made smaller
 * @param figures what the plan costs
 */
public record PiecingPlan(List<PiecedCloth> cloths, Figures figures) {

    public PiecingPlan {
        cloths = List.copyOf(cloths);
    }

    /**
     * What a plan costs.
     *
     * @param missing net area that the cloths lack of their wished sizes
     * @param wished net area of the wished cloths
     * @param lost area of the scraps that becomes neither patch nor offcut that goes back
     * @param cut cut area of the patches
     * @param seams how many seams join them
     */
    public record Figures(long missing, long wished, long lost, long cut, int seams) implements Comparable<Figures> {

        /** Whether every cloth has its wished size. */
        public boolean full() {
            return missing == 0;
        }

        /** What is lost, in percent of the patches' cut area. */
        public double lostPercent() {
            return cut == 0 ? 0 : 100.0 * lost / cut;
        }

        @Override
        public int compareTo(Figures other) {
            int bySize = Long.compare(missing, other.missing);
            int byLoss = bySize != 0 ? bySize : Double.compare(lostPercent(), other.lostPercent());
            return byLoss != 0 ? byLoss : Integer.compare(seams, other.seams);
        }
    }
}
