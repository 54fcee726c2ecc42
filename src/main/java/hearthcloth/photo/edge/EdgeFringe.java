package hearthcloth.photo.edge;

import hearthcloth.photo.parameter.EdgeParameters;
import java.util.List;

/** Tells the threads of a frayed side from the shade beside a clean one and from a soft lens. */
final class EdgeFringe {

    private final int reach;
    private final List<double[]> levels;
    private final List<float[]> colours;
    private final double[] shares;
    private final EdgeParameters.Threads parameters;

    /**
     * What is seen along a side.
     *
     * @param reach how many pixels a strip goes to either side of its middle line
     * @param levels how much each place looks like cloth, by position along the side and by pixels outwards
     * @param colours of the same places, in steps of 255
     * @param shares the position of each place along the side, from 0 to 1
     */
    EdgeFringe(
            int reach,
            List<double[]> levels,
            List<float[]> colours,
            double[] shares,
            EdgeParameters.Threads parameters) {
        this.reach = reach;
        this.levels = levels;
        this.colours = colours;
        this.shares = shares;
        this.parameters = parameters;
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
        return sum / Math.max(1, last - reach - 1) > parameters.threaded() + calm;
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
        while (t < 2 * reach && unrest(t, ends) > parameters.restless() * calm + parameters.leastUnrest()) {
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
        for (int s = 0; s + parameters.few() < levels.size(); s++) {
            int at = at(s, t, ends);
            int other = at(s + parameters.few(), t, ends);
            if (isSeen(s, at) && isSeen(s + parameters.few(), other)) {
                for (int c = 0; c < 3; c++) {
                    double off = colours.get(s)[3 * at + c] - colours.get(s + parameters.few())[3 * other + c];
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
