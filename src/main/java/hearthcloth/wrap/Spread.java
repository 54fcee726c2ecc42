package hearthcloth.wrap;

import hearthcloth.measure.Size;

/**
 * The flat cloth under the gift, in real millimetres from the gift's middle.
 *
 * @param width the side that runs left to right before an eighth of a turn makes the cloth a diamond
 */
record Spread(double width, double height, double right, double away) {

    static Spread of(Size cloth, Placing placing) {
        Size laid = placing.quarterTurns() % 2 == 0 ? cloth : cloth.turned();
        return new Spread(
                Outward.mm(laid.width()),
                Outward.mm(laid.height()),
                Outward.mm(placing.right()),
                Outward.mm(placing.away()));
    }

    /**
     * How far the corner of a diamond reaches along its own axis. A cloth A × B with its edges at 45° to the gift has
     * its corners at ((A + B)/2√2, (B − A)/2√2) and so on: the mean side along the axis, half the difference to one
     * side.
     */
    double along(Corner corner) {
        return (width + height) / (2 * Math.sqrt(2)) - corner.right() * right - corner.away() * away;
    }

    /** How far the corner of a diamond lies to one side of its axis. */
    double aside(Corner corner) {
        double side = (height - width) / (2 * Math.sqrt(2));
        return corner.right() == 0 ? corner.away() * side - right : corner.right() * side - away;
    }

    /**
     * A value up to which the diamond |u| + |v| ≤ this value is all cloth: the largest where the cloth is square or the gift
     * in its middle, otherwise never too large.
     */
    double band() {
        return Math.min(width, height) / Math.sqrt(2) - Math.abs(right) - Math.abs(away);
    }
}
