package hearthcloth.work.design;

import hearthcloth.cloth.Place;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.layout.Order;
import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.DesignEdits;
import hearthcloth.work.Project;
import hearthcloth.work.Purpose;
import java.util.Comparator;
import java.util.List;

/** A plan she keeps as a cloth of hers. */
public record ClothKept(Plan plan) {

    /**
     * The cloth.
     *
     * @param purpose what it is for, whatever is planned next
     * @param paper the word of the paper its guide is printed on
     */
    public Project on(Purpose purpose, String paper) {
        return Project.of(design(), plan, purpose).onPaper(paper);
    }

    /** What is decided of it: bar by bar, or of scraps and blocks as a whole. */
    Design design() {
        boolean isBarred = plan.cloth().patches().stream()
                .allMatch(patch -> patch.place() instanceof Place.Hearth || patch.place() instanceof Place.Bar);
        return isBarred ? DesignEdits.settled(plan, order()) : Design.undivided(plan);
    }

    /** The order its bars were laid in, read off the first round; round the square where it is none of the usual ones. */
    private Order order() {
        List<Side> sides = plan.cloth().laid().stream()
                .map(laid -> laid.patch().place())
                .filter(Place.Bar.class::isInstance)
                .map(Place.Bar.class::cast)
                .filter(bar -> bar.round() == 1 && bar.part() <= 1)
                .sorted(Comparator.comparingInt(Place.Bar::order))
                .map(Place.Bar::side)
                .toList();
        for (Order order : Order.values()) {
            if (order.sides().equals(sides)) {
                return order;
            }
        }
        return Order.ROUND;
    }
}
