package hearthcloth.plan.colour;

import java.util.BitSet;

/** Adds up {@link ColourFigures} tile by tile and pair by pair. For one use. */
final class ColourSum {

    private final FabricDifferences differences;
    private final BitSet mixed = new BitSet();
    private double edge;
    private double standsOut;
    private double own;
    private double shared;
    private double same;
    private double alike;
    private double light;
    private double lightX;
    private double lightY;
    private double right;
    private double bottom;

    ColourSum(FabricDifferences differences) {
        this.differences = differences;
    }

    void tile(Tile tile) {
        double weight = differences.lightness(tile.fabric()) * tile.areaMm2();
        light += weight;
        lightX += weight * (tile.x() + tile.right()) / 2;
        lightY += weight * (tile.y() + tile.bottom()) / 2;
        right = Math.max(right, tile.right());
        bottom = Math.max(bottom, tile.bottom());
    }

    void pair(Tile one, Tile other) {
        if (one.bar() == other.bar()) {
            if (one.fabric() != other.fabric()) {
                mixed.set(one.bar());
            }
            return;
        }
        double meets = one.meets(other);
        if (meets > 0) {
            double apart = differences.between(one.fabric(), other.fabric());
            boolean isOwn = one.fabric() == other.fabric();
            if (one.bar() == 0 || other.bar() == 0) {
                hearth(meets, apart, isOwn, gap(one, other));
            } else {
                bars(meets, apart, isOwn);
            }
        }
    }

    private double gap(Tile one, Tile other) {
        return Math.abs(differences.lightness(one.fabric()) - differences.lightness(other.fabric()));
    }

    private void hearth(double meets, double apart, boolean isOwn, double gap) {
        edge += meets;
        own += isOwn ? meets : 0;
        standsOut += apart >= ColourFigures.STANDS_OUT && gap >= ColourFigures.STANDS_OUT_LIGHTNESS ? meets : 0;
    }

    private void bars(double meets, double apart, boolean isOwn) {
        shared += meets;
        same += isOwn ? meets : 0;
        alike += isOwn ? 0 : meets * Math.max(0, 1 - apart / ColourFigures.ALIKE);
    }

    ColourFigures figures() {
        double offX = light == 0 ? 0 : lightX / light - right / 2;
        double offY = light == 0 ? 0 : lightY / light - bottom / 2;
        double side = Math.max(right, bottom);
        return new ColourFigures(
                new ColourFigures.Hearth(edge, standsOut, own),
                new ColourFigures.Neighbours(shared, same, alike),
                mixed.cardinality(),
                side == 0 ? 0 : Math.hypot(offX, offY) / side);
    }
}
