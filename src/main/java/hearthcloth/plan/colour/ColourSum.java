package hearthcloth.plan.colour;

import hearthcloth.number.Elementary;
import java.util.BitSet;

/** Adds up {@link ColourFigures} tile by tile and pair by pair. For one use. */
final class ColourSum {

    private final FabricDifferences differences;
    private final BitSet mixed = new BitSet();
    private double edge;
    private double standsOut;
    private double own;
    private double hearthUnlike;
    private double shared;
    private double same;
    private double alike;
    private double unlike;
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
        lightX += weight * tile.middleX();
        lightY += weight * tile.middleY();
        right = Math.max(right, tile.right());
        bottom = Math.max(bottom, tile.bottom());
    }

    /** Two tiles that meet along so many millimetres. */
    void meeting(Tile one, Tile other, double mm) {
        boolean isOwn = one.fabric() == other.fabric();
        if (one.bar() == other.bar()) {
            mixed.set(one.bar(), mixed.get(one.bar()) || !isOwn);
        } else if (mm > 0) {
            double apart = differences.between(one.fabric(), other.fabric());
            if (one.bar() == 0 || other.bar() == 0) {
                hearth(mm, apart, isOwn, differences.gap(one.fabric(), other.fabric()));
            } else {
                bars(mm, apart, isOwn);
            }
        }
    }

    private void hearth(double meets, double apart, boolean isOwn, double gap) {
        edge += meets;
        own += isOwn ? meets : 0;
        standsOut += EdgeCost.standsOut(apart, gap) ? meets : 0;
        hearthUnlike += meets * EdgeCost.unlike(apart);
    }

    private void bars(double meets, double apart, boolean isOwn) {
        shared += meets;
        same += isOwn ? meets : 0;
        alike += isOwn ? 0 : meets * EdgeCost.alike(apart);
        unlike += meets * EdgeCost.unlike(apart);
    }

    /** How far the lightness of all tiles lies from the middle, as a share of the longer side. */
    double offCentre() {
        double offX = light == 0 ? 0 : lightX / light - right / 2;
        double offY = light == 0 ? 0 : lightY / light - bottom / 2;
        double side = Math.max(right, bottom);
        return side == 0 ? 0 : Elementary.hypot(offX, offY) / side;
    }

    ColourFigures figures() {
        return new ColourFigures(
                new ColourFigures.Hearth(edge, standsOut, own, hearthUnlike),
                new ColourFigures.Neighbours(shared, same, alike, unlike),
                mixed.cardinality(),
                offCentre());
    }
}
