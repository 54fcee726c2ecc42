package hearthcloth.photo.heldaside;

import java.util.Random;

/** Light on the floor: a window or lamp to one side, the room's own light, somebody's shadow. */
final class RoomLight {

    private final double keyX;
    private final double keyY;
    private final double keyHeight;
    private final Tint key;
    private final Tint fill;
    private final Shadow shadow;

    /** A person's shadow, an ellipse with a wide soft edge. */
    private record Shadow(double x, double y, double angle, double wide, double depth) {}

    RoomLight(Random chance, double reach) {
        double towards = 2 * Math.PI * chance.nextDouble();
        double away = reach * (0.8 + 2.2 * chance.nextDouble());
        this.keyX = away * Math.cos(towards);
        this.keyY = away * Math.sin(towards);
        this.keyHeight = reach * (1.1 + 1.4 * chance.nextDouble());
        double share = 0.35 + 0.45 * chance.nextDouble();
        double warm = 0.16 * (chance.nextDouble() - 0.5);
        double green = 0.06 * (chance.nextDouble() - 0.5);
        double apart = 0.14 * (chance.nextDouble() - 0.5);
        this.key = new Tint(share * (1 + warm + apart), share * (1 + green), share * (1 - warm - apart));
        this.fill = new Tint((1 - share) * (1 + warm), (1 - share) * (1 + green), (1 - share) * (1 - warm));
        double side = 2 * Math.PI * chance.nextDouble();
        double depth = chance.nextInt(3) == 0 ? 0 : 0.12 + 0.33 * chance.nextDouble();
        double at = reach * (0.2 + 0.5 * chance.nextDouble());
        this.shadow = new Shadow(
                at * Math.cos(side), at * Math.sin(side), side, reach * (0.25 + 0.3 * chance.nextDouble()), depth);
    }

    /** Light that falls on a place, about 1. */
    void at(double x, double y, double[] out) {
        double dx = keyX - x;
        double dy = keyY - y;
        double here = keyHeight * keyHeight + dx * dx + dy * dy;
        double middle = keyHeight * keyHeight + keyX * keyX + keyY * keyY;
        double falloff = Math.pow(middle / here, 1.5);
        double lit = 1 - shadow.depth * shade(x, y);
        out[0] = lit * (key.red() * falloff + fill.red());
        out[1] = lit * (key.green() * falloff + fill.green());
        out[2] = lit * (key.blue() * falloff + fill.blue()) * (2 - lit < 1.3 ? 1 + 0.1 * (1 - lit) : 1.03);
    }

    /** How far the shadow of something 1 mm high reaches at the middle, away from the key light. */
    double castX() {
        return -keyX / keyHeight;
    }

    double castY() {
        return -keyY / keyHeight;
    }

    private double shade(double x, double y) {
        double c = Math.cos(shadow.angle);
        double s = Math.sin(shadow.angle);
        double u = c * (x - shadow.x) + s * (y - shadow.y);
        double v = -s * (x - shadow.x) + c * (y - shadow.y);
        double r = Math.hypot(Math.min(0, u) / 1.0 + Math.max(0, u) / 2.5, v) / shadow.wide;
        return 1 - Grain.step(0.55, 1.35, r);
    }
}
