package hearthcloth.draw.picture;

/** A place on paper: millimetres to the right and down from the top left corner. */
public record Point(double x, double y) {

    public Point movedBy(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
