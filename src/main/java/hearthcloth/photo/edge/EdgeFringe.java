package hearthcloth.photo.edge;

import java.util.List;

/** Tells the threads of a frayed side from the shade beside a clean one and from a soft lens. */
final class EdgeFringe {

    /**
     * Colours change this many times more among threads than on the ground, and by at least {@link #LEAST_UNREST} steps
     * of 255.
     */
    private static final double RESTLESS = 1.6;

    private static final double LEAST_UNREST = 6;

    /** Threads lie closer than this many places along a side. */
    private static final int FEW = 2;

    /** Among threads the level of cloth differs so much from place to place, beyond what the ground's does. */
    private static final double THREADED = 0.16;

    private final int reach;
    private final List<double[]> levels;
    private final List<float[]> colours;
    private final double[] shares;

    /**
     * What is seen along a side.
     *
     * @param reach how many pixels a strip goes to either side of its middle line
     * @param levels how much each place looks like cloth, by position along the side and by pixels outwards
     * @param colours of the same places, in steps of 255
     * @param shares the position of each place along the side, from 0 to 1
     */
    EdgeFringe(int reach, List<double[]> levels, List<float[]> colours, double[] shares) {
        this.reach = reach;
        this.levels = levels;
        this.colours = colours;
        this.shares = shares;
    }

    /**
     * Whether what fades out beyond the line does so by threads: there is cloth at one place and ground at the next. Shade and a
     * soft lens fade alike all along the side.
     */
    boolean isThreaded(double[] ends, int last) {
        double sum = 0;
        for (int t = reach + 2; t <= last; t++) {
            sum += flicker(t, ends);
        }
        double calm = flicker(Math.min(2 * reach - 2, last + reach / 2), ends);
        return sum / Math.max(1, last - reach - 1) > THREADED + calm;
    }

    /** Root mean square difference of cloth's level between neighbouring places, at one distance outwards. */
    private double flicker(int t, double[] ends) {
        double squares = 0;
        int count = 0;
        for (int s = 0; s + 1 < levels.size(); s++) {
            double here = level(s, t, ends);
            double next = level(s + 1, t, ends);
            squares += (here - next) * (here - next);
            count++;
        }
        return Math.sqrt(squares / Math.max(1, count));
    }

    private double level(int s, int t, double[] ends) {
        double[] own = levels.get(s);
        return Math.max(0, Math.min(1, own[Math.max(0, Math.min(own.length - 1, at(s, t, ends)))]));
    }

    /**
     * How far out, in pixels, colours change along the side more than the ground's do; threads do this and shade does
     * not.
     */
    double threads(double[] ends) {
        double calm = Double.MAX_VALUE;
        for (int t = reach + reach / 2; t <= 2 * reach - 2; t++) {
            calm = Math.min(calm, unrest(t, ends));
        }
        int t = reach + 2;
        while (t < 2 * reach && unrest(t, ends) > RESTLESS * calm + LEAST_UNREST) {
            t++;
        }
        return t - reach - 2;
    }

    /**
     * Root mean square difference between colours a few places apart, at one distance outwards all along the side, as the deviation of
     * one of them. The edge of a shadow that runs slantwise beside the piece differs only from far to far.
     */
    private double unrest(int t, double[] ends) {
        double squares = 0;
        int count = 0;
        for (int s = 0; s + FEW < levels.size(); s++) {
            int at = at(s, t, ends);
            int other = at(s + FEW, t, ends);
            if (isSeen(s, at) && isSeen(s + FEW, other)) {
                for (int c = 0; c < 3; c++) {
                    double off = colours.get(s)[3 * at + c] - colours.get(s + FEW)[3 * other + c];
                    squares += off * off / 2;
                }
                count++;
            }
        }
        return count == 0 ? 0 : Math.sqrt(squares / count);
    }

    private int at(int place, int t, double[] ends) {
        return t + (int) Math.round(ends[0] + (ends[1] - ends[0]) * shares[place]);
    }

    private boolean isSeen(int place, int at) {
        return at >= 0 && at <= 2 * reach && !Float.isNaN(colours.get(place)[3 * at]);
    }
}
