package hearthcloth.plan.colour;

/**
 * A whole choice of a fabric for each bar, changed bar by bar; what it costs is kept up to date, so that a look at a change
 * costs no more than the few bars it meets.
 */
final class BarChoice {

    /** Less of a fabric than this, in square millimetres, is none: sums of many areas are no more exact. */
    private static final double NEAR = 1e-6;

    private final BarColouring problem;
    private final int[] chosen;
    private final double[] left;
    private final BarColouring.Light light;
    private int impossible;
    private int lacking;
    private double sum;

    BarChoice(BarColouring problem, int[] chosen) {
        this.problem = problem;
        this.chosen = chosen.clone();
        this.left = new double[problem.fabrics()];
        this.light = problem.new Light(chosen);
        for (int fabric = 0; fabric < left.length; fabric++) {
            left[fabric] = problem.room(fabric);
        }
        for (int bar = 0; bar < chosen.length; bar++) {
            take(bar, chosen[bar]);
            for (BarColouring.Meeting meeting : problem.meetingsOf(bar)) {
                sum += meeting.other() < bar ? problem.between(meeting, chosen[bar], chosen[meeting.other()]) : 0;
            }
        }
    }

    private void take(int bar, int fabric) {
        double alone = problem.alone(bar, fabric);
        impossible += alone == Double.POSITIVE_INFINITY ? 1 : 0;
        sum += alone == Double.POSITIVE_INFINITY ? 0 : alone;
        double was = left[fabric];
        left[fabric] -= problem.area(bar);
        lacking += was >= -NEAR && left[fabric] < -NEAR ? 1 : 0;
    }

    private void give(int bar, int fabric) {
        double alone = problem.alone(bar, fabric);
        impossible -= alone == Double.POSITIVE_INFINITY ? 1 : 0;
        sum -= alone == Double.POSITIVE_INFINITY ? 0 : alone;
        double was = left[fabric];
        left[fabric] += problem.area(bar);
        lacking -= was < -NEAR && left[fabric] >= -NEAR ? 1 : 0;
    }

    int chosen(int bar) {
        return chosen[bar];
    }

    /** Gives a bar another fabric. */
    void set(int bar, int fabric) {
        int was = chosen[bar];
        if (was == fabric) {
            return;
        }
        give(bar, was);
        take(bar, fabric);
        for (BarColouring.Meeting meeting : problem.meetingsOf(bar)) {
            int other = chosen[meeting.other()];
            sum += problem.between(meeting, fabric, other) - problem.between(meeting, was, other);
        }
        light.add(bar, was, -1);
        light.add(bar, fabric, 1);
        chosen[bar] = fabric;
    }

    /** Lets two bars exchange their fabrics. */
    void exchange(int bar, int other) {
        int was = chosen[bar];
        set(bar, chosen[other]);
        set(other, was);
    }

    /** All of it; infinite where there is not enough of a fabric or a bar cannot be of its fabric. */
    double cost() {
        return impossible > 0 || lacking > 0 ? Double.POSITIVE_INFINITY : sum + light.unbalancedMm();
    }
}
