import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;

/** A photograph to read: a sheet of A4 and three pieces of cloth on a dark table, four pixels a millimetre, a little noise. */
final class Table {

    private Table() {}

    public static void main(String[] args) throws IOException {
        BufferedImage image = new BufferedImage(2400, 1800, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(0x4a3a2c));
        g.fillRect(0, 0, 2400, 1800);
        lay(g, new Color(0xf4f3ef), 120, 120, 210 * 4, 297 * 4, 2);
        lay(g, new Color(0x2f5f8a), 1150, 150, 150 * 4, 100 * 4, -3);
        lay(g, new Color(0xb8482f), 1200, 760, 120 * 4, 200 * 4, 4);
        lay(g, new Color(0xd9b44a), 1850, 700, 90 * 4, 180 * 4, -1);
        Random noise = new Random(17);
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                int n = (int) Math.round(noise.nextGaussian() * 3);
                image.setRGB(x, y, part(rgb, 16, n) | part(rgb, 8, n) | part(rgb, 0, n));
            }
        }
        ImageIO.write(image, "png", new File(args[0]));
    }

    private static int part(int rgb, int shift, int n) {
        return Math.max(0, Math.min(255, (rgb >> shift & 255) + n)) << shift;
    }

    private static void lay(Graphics2D g, Color colour, int x, int y, int width, int height, double degrees) {
        AffineTransform turned = AffineTransform.getRotateInstance(Math.toRadians(degrees), x, y);
        g.setColor(colour);
        g.fill(turned.createTransformedShape(new Rectangle2D.Double(x, y, width, height)));
    }
}
