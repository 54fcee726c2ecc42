import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.imageio.ImageIO;

/**
 * Draws our mark as installers want it: java -cp "target/run/lib/*" packaging/Mark.java MARK.svg OUT.png|ico|icns. Both
 * containers hold PNG as it is: ICO since Windows Vista, ICNS (types ic07 to ic10) since Mac OS X 10.7.
 */
final class Mark {

    private static final int[] WINDOWS = {16, 24, 32, 48, 64, 128, 256};
    private static final Map<Integer, String> MAC = new TreeMap<>(Map.of(128, "ic07", 256, "ic08", 512, "ic09", 1024, "ic10"));

    private Mark() {}

    public static void main(String[] args) throws IOException {
        Path svg = Path.of(args[0]);
        Path out = Path.of(args[1]);
        String name = out.getFileName().toString();
        Files.write(out, name.endsWith(".ico") ? ico(svg) : name.endsWith(".icns") ? icns(svg) : png(svg, 256));
    }

    private static byte[] png(Path svg, int side) throws IOException {
        BufferedImage image = new BufferedImage(side, side, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Objects.requireNonNull(new SVGLoader().load(svg.toUri().toURL())).render(null, g, new ViewBox(side, side));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private static byte[] ico(Path svg) throws IOException {
        byte[][] pictures = new byte[WINDOWS.length][];
        int length = 6 + 16 * WINDOWS.length;
        for (int i = 0; i < WINDOWS.length; i++) {
            pictures[i] = png(svg, WINDOWS[i]);
            length += pictures[i].length;
        }
        ByteBuffer file = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) WINDOWS.length);
        int at = 6 + 16 * WINDOWS.length;
        for (int i = 0; i < WINDOWS.length; i++) {
            byte side = (byte) WINDOWS[i]; // 256 is written as 0.
            file.put(side).put(side).put((byte) 0).put((byte) 0).putShort((short) 1).putShort((short) 32);
            file.putInt(pictures[i].length).putInt(at);
            at += pictures[i].length;
        }
        for (byte[] picture : pictures) {
            file.put(picture);
        }
        return file.array();
    }

    private static byte[] icns(Path svg) throws IOException {
        ByteArrayOutputStream inner = new ByteArrayOutputStream();
        DataOutputStream parts = new DataOutputStream(inner);
        for (Map.Entry<Integer, String> each : MAC.entrySet()) {
            byte[] picture = png(svg, each.getKey());
            parts.writeBytes(each.getValue());
            parts.writeInt(8 + picture.length);
            parts.write(picture);
        }
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        DataOutputStream file = new DataOutputStream(whole);
        file.writeBytes("icns");
        file.writeInt(8 + inner.size());
        inner.writeTo(file);
        return whole.toByteArray();
    }
}
