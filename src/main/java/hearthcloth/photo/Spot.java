package hearthcloth.photo;

/** A place: in pixels of the picture or in millimetres on the floor, as the place that holds it says. Immutable. */
public record Spot(double x, double y) {

    /** The distance to {@code other}, in the unit of both. */
    public double to(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /** The place {@code share} of the way to {@code other}. */
    Spot towards(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
