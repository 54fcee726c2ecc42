package hearthcloth.photo.heldaside;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;

/** What lens, sensor and telephone make of light: blur, mosaic with noise, demosaicking, tone, sharpening, JPEG. */
final class Development {

    /**
     * The telephone's ways.
     *
     * @param blurPixels standard deviation of the blur
     * @param vignette light lost in the picture's corners, as a share
     * @param noise variance for a light of 1 that shot noise leaves; darkness has a tenth of it for its deviation
     * @param sharpening share of unsharp masking
     * @param quality of the JPEG, 0 to 1
     */
    record Phone(double blurPixels, double vignette, double noise, double sharpening, double quality) {}

    /** White balance of the sensor's red, green and blue: red and blue are seen more weakly, so their noise is larger. */
    private static final float[] GAIN = {1.9f, 1, 1.6f};

    private static final int CODES = 8192;

    private final int width;
    private final int height;
    private final Phone phone;
    private final long seed;

    Development(int width, int height, Phone phone, long seed) {
        this.width = width;
        this.height = height;
        this.phone = phone;
        this.seed = seed;
    }

    /** A JPEG of light given as planes of red, green and blue, 1 being the most the sensor holds. The planes are used up. */
    byte[] jpeg(float[][] light) {
        float[] spare = new float[width * height];
        for (float[] plane : light) {
            vignette(plane);
            blur(plane, spare);
        }
        float[] raw = spare;
        mosaic(light, raw);
        demosaic(raw, light);
        tone(light);
        calmColour(light, raw);
        sharpen(light[0], raw);
        return written(light);
    }

    private void rows(IntConsumer row) {
        IntStream.range(0, height).parallel().forEach(row);
    }

    private void vignette(float[] plane) {
        double far = (width * (double) width + height * (double) height) / 4;
        rows(y -> {
            double dy = y + 0.5 - height / 2.0;
            for (int x = 0; x < width; x++) {
                double dx = x + 0.5 - width / 2.0;
                plane[y * width + x] *= (float) (1 - phone.vignette * (dx * dx + dy * dy) / far);
            }
        });
    }

    private void blur(float[] plane, float[] spare) {
        int r = (int) Math.ceil(3 * phone.blurPixels);
        float[] bell = new float[r + 1];
        double sum = 0;
        for (int k = 0; k <= r; k++) {
            bell[k] = (float) Math.exp(-k * k / (2 * phone.blurPixels * phone.blurPixels));
            sum += k == 0 ? bell[k] : 2 * bell[k];
        }
        for (int k = 0; k <= r; k++) {
            bell[k] /= (float) sum;
        }
        rows(y -> {
            for (int x = 0; x < width; x++) {
                float v = bell[0] * plane[y * width + x];
                for (int k = 1; k <= r; k++) {
                    v += bell[k]
                            * (plane[y * width + Math.max(0, x - k)] + plane[y * width + Math.min(width - 1, x + k)]);
                }
                spare[y * width + x] = v;
            }
        });
        rows(y -> {
            for (int x = 0; x < width; x++) {
                float v = bell[0] * spare[y * width + x];
                for (int k = 1; k <= r; k++) {
                    v += bell[k]
                            * (spare[Math.max(0, y - k) * width + x] + spare[Math.min(height - 1, y + k) * width + x]);
                }
                plane[y * width + x] = v;
            }
        });
    }

    /** Red, green, green, blue. */
    private static int colourAt(int x, int y) {
        return (y & 1) == 0 ? x & 1 : 1 + (x & 1);
    }

    private void mosaic(float[][] light, float[] raw) {
        double dark = 0.1 * Math.sqrt(phone.noise);
        rows(y -> {
            for (int x = 0; x < width; x++) {
                int c = colourAt(x, y);
                float v = light[c][y * width + x] / GAIN[c];
                double wide = Math.sqrt(phone.noise * Math.max(0, v) + dark * dark);
                raw[y * width + x] = GAIN[c] * (float) Math.min(1 / GAIN[c], v + wide * bell(y * (long) width + x));
            }
        });
    }

    /** A number of about normal distribution: the sum of four even ones. */
    private double bell(long pixel) {
        long h = Grain.mixed(seed ^ Grain.mixed(pixel));
        long sum = (h & 0xffff) + (h >>> 16 & 0xffff) + (h >>> 32 & 0xffff) + (h >>> 48);
        return (sum - 2 * 65535.0) / 65536 * Math.sqrt(3);
    }

    /** After Malvar, He and Cutler, <i>High-quality linear interpolation for demosaicing</i>, 2004; weights from memory. */
    private void demosaic(float[] raw, float[][] out) {
        rows(y -> {
            for (int x = 0; x < width; x++) {
                int c = colourAt(x, y);
                float here = at(raw, x, y);
                float across = at(raw, x - 1, y) + at(raw, x + 1, y);
                float down = at(raw, x, y - 1) + at(raw, x, y + 1);
                float across2 = at(raw, x - 2, y) + at(raw, x + 2, y);
                float down2 = at(raw, x, y - 2) + at(raw, x, y + 2);
                float slant =
                        at(raw, x - 1, y - 1) + at(raw, x + 1, y - 1) + at(raw, x - 1, y + 1) + at(raw, x + 1, y + 1);
                int i = y * width + x;
                if (c == 1) {
                    float beside = (5 * here + 4 * across - slant - across2 + 0.5f * down2) / 8;
                    float below = (5 * here + 4 * down - slant - down2 + 0.5f * across2) / 8;
                    out[1][i] = here;
                    out[0][i] = (y & 1) == 0 ? beside : below;
                    out[2][i] = (y & 1) == 0 ? below : beside;
                } else {
                    out[c][i] = here;
                    out[1][i] = (4 * here + 2 * (across + down) - across2 - down2) / 8;
                    out[2 - c][i] = (6 * here + 2 * slant - 1.5f * (across2 + down2)) / 8;
                }
            }
        });
    }

    private float at(float[] raw, int x, int y) {
        int mx = x < 0 ? -x : x >= width ? 2 * width - 2 - x : x;
        int my = y < 0 ? -y : y >= height ? 2 * height - 2 - y : y;
        return raw[my * width + mx];
    }

    /** To code values with a mild S of contrast, and into lightness and two colour differences (ITU-R BT.601). */
    private void tone(float[][] light) {
        float[] curve = new float[CODES + 1];
        for (int i = 0; i <= CODES; i++) {
            double v = (double) i / CODES;
            double code = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
            curve[i] = (float) (code - 0.2 / (2 * Math.PI) * Math.sin(2 * Math.PI * code));
        }
        rows(y -> {
            for (int i = y * width; i < (y + 1) * width; i++) {
                float r = curve[code(light[0][i])];
                float g = curve[code(light[1][i])];
                float b = curve[code(light[2][i])];
                float l = 0.299f * r + 0.587f * g + 0.114f * b;
                light[0][i] = l;
                light[1][i] = b - l;
                light[2][i] = r - l;
            }
        });
    }

    private static int code(float v) {
        return (int) (Math.max(0, Math.min(1, v)) * CODES + 0.5f);
    }

    /** Colour noise is smoothed, as telephones do. */
    private void calmColour(float[][] light, float[] spare) {
        for (int c = 1; c < 3; c++) {
            float[] plane = light[c];
            rows(y -> {
                for (int x = 0; x < width; x++) {
                    float sum = 0;
                    for (int k = 0; k < 9; k++) {
                        sum += at(plane, x + k % 3 - 1, y + k / 3 - 1);
                    }
                    spare[y * width + x] = sum / 9;
                }
            });
            System.arraycopy(spare, 0, plane, 0, plane.length);
        }
    }

    private void sharpen(float[] lightness, float[] spare) {
        rows(y -> {
            for (int x = 0; x < width; x++) {
                float near = at(lightness, x - 1, y)
                        + at(lightness, x + 1, y)
                        + at(lightness, x, y - 1)
                        + at(lightness, x, y + 1);
                float slant = at(lightness, x - 1, y - 1)
                        + at(lightness, x + 1, y - 1)
                        + at(lightness, x - 1, y + 1)
                        + at(lightness, x + 1, y + 1);
                float here = lightness[y * width + x];
                float soft = (4 * here + 2 * near + slant) / 16;
                spare[y * width + x] = here + (float) phone.sharpening * (here - soft);
            }
        });
        System.arraycopy(spare, 0, lightness, 0, spare.length);
    }

    private byte[] written(float[][] light) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        rows(y -> {
            int[] row = new int[width];
            for (int x = 0; x < width; x++) {
                int i = y * width + x;
                float l = light[0][i];
                float r = l + light[2][i];
                float b = l + light[1][i];
                float g = (l - 0.299f * r - 0.114f * b) / 0.587f;
                row[x] = whole(r) << 16 | whole(g) << 8 | whole(b);
            }
            image.setRGB(0, y, width, 1, row, 0, width);
        });
        var writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality((float) phone.quality);
        var bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static int whole(float v) {
        return (int) (Math.max(0, Math.min(1, v)) * 255 + 0.5f);
    }
}
