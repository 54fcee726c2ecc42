package hearthcloth.photo.scene;

import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.util.Random;

/** The drawn scenes as a hand takes them: a lamp to one side casts shadows beside the pieces, and the lens is a little soft. */
final class RoughScenes {

    private RoughScenes() {}

    static Scene drawn(long seed, Scenes.Wish wish) {
        Random chance = new Random(seed * 7 + 3);
        double angle = 2 * Math.PI * chance.nextDouble();
        double far = 1 + 5 * chance.nextDouble();
        Light.Cast cast =
                new Light.Cast(far * Math.cos(angle), far * Math.sin(angle), 0.25 + 0.4 * chance.nextDouble());
        Scene plain = Scenes.drawn(seed, wish);
        return new Scene(
                plain.floor, plain.scraps, plain.light.with(cast), plain.camera, 2 + 2 * chance.nextDouble(), seed);
    }

    /** The photograph through a lens whose blur has this deviation, in pixels. */
    static BufferedImage photograph(Scene scene, double blur) {
        return softened(scene.photograph(), blur);
    }

    static BufferedImage softened(BufferedImage sharp, double blur) {
        if (blur <= 0) {
            return sharp;
        }
        int half = (int) Math.ceil(3 * blur);
        float[] weights = new float[2 * half + 1];
        float sum = 0;
        for (int i = -half; i <= half; i++) {
            weights[i + half] = (float) Math.exp(-i * i / (2 * blur * blur));
            sum += weights[i + half];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        BufferedImage along =
                new ConvolveOp(new Kernel(weights.length, 1, weights), ConvolveOp.EDGE_NO_OP, null).filter(sharp, null);
        return new ConvolveOp(new Kernel(1, weights.length, weights), ConvolveOp.EDGE_NO_OP, null).filter(along, null);
    }

    /** The blur that a seed has: none, or up to 1.8 pixels, which with the drawing's own makes what telephones show. */
    static double blur(long seed) {
        return 0.6 * Math.floorMod(seed, 4);
    }
}
