package hearthcloth.web;

import hearthcloth.photo.scene.Photographs;
import hearthcloth.photo.scene.Photographs.Known;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;

/** The photographs that the workroom's tests send. */
public final class TestPhotographs {

    public static final int NAVY = 0x33506b;
    public static final int ORANGE = 0xc7762b;
    static final int WINE = 0x7a1f2b;
    static final int YELLOW = 0xe0c341;

    private TestPhotographs() {}

    /** Two of navy, one orange, a striped one, and two, wine and yellow, that touch: five are read. */
    public static byte[] few() {
        return Photographs.of(
                List.of(
                        Known.rectangle(-370, -210, 260, 200, 4, NAVY),
                        Known.rectangle(-370, 70, 260, 190, -6, NAVY),
                        Known.rectangle(370, -220, 240, 200, 9, ORANGE),
                        Known.rectangle(290, 80, 150, 220, 0, WINE),
                        Known.rectangle(440, 80, 150, 200, 0, YELLOW),
                        Known.rectangle(0, 270, 300, 90, 3, 0xe8d9c0, 0x2e5e4e)),
                1180,
                2000,
                6);
    }

    /** A piece of nearly the ground's own colour, which nobody reads by its rim. */
    static final Known FAINT = Known.rectangle(-370, 310, 220, 110, 5, 0xa0937f);

    /** What {@link #few} has, but for those that touch, and {@link #FAINT}: four are read. */
    public static byte[] missed() {
        return Photographs.of(
                List.of(
                        Known.rectangle(-370, -210, 260, 200, 4, NAVY),
                        Known.rectangle(-370, 70, 260, 190, -6, NAVY),
                        Known.rectangle(370, -220, 240, 200, 9, ORANGE),
                        Known.rectangle(290, 80, 150, 220, 0, WINE),
                        FAINT),
                1180,
                2000,
                6);
    }

    /** Beside the measuring sheet: two of navy and an orange one, which {@link #secondOfHeap} shows too. */
    static byte[] firstOfHeap() {
        return Photographs.besideMeasuringSheet(
                List.of(
                        Known.rectangle(-370, -210, 260, 200, 4, NAVY),
                        Known.rectangle(-370, 90, 260, 190, -6, NAVY),
                        Known.rectangle(370, -220, 240, 200, 9, ORANGE)),
                1180,
                2000,
                6);
    }

    /** Beside the measuring sheet: the orange one once more, laid elsewhere, a wine-red one and a yellow one. */
    static byte[] secondOfHeap() {
        return Photographs.besideMeasuringSheet(
                List.of(
                        Known.rectangle(-360, 150, 240, 200, 30, ORANGE),
                        Known.rectangle(370, -180, 220, 230, 3, WINE),
                        Known.rectangle(370, 170, 230, 210, -8, YELLOW)),
                1180,
                2000,
                4);
    }

    /** Hardly anything shows in it. */
    static byte[] night() {
        BufferedImage dark = new BufferedImage(1700, 1300, BufferedImage.TYPE_3BYTE_BGR);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(dark, "jpeg", out)) {
                throw new IOException("no writer of JPEG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Two pieces without any sheet of A4: the sheet is covered by cloth. */
    public static byte[] withoutSheet() {
        return Photographs.of(
                List.of(Known.rectangle(0, 0, 320, 320, 10, NAVY), Known.rectangle(300, 0, 90, 140, 3, ORANGE)),
                800,
                1700,
                5);
    }
}
