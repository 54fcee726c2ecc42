package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import java.util.stream.IntStream;

/** A photograph not yet taken: its truth is known, {@link #jpeg()} draws it. Same seed, same bytes. */
public final class Shot {

    private final Truth truth;
    private final View view;
    private final Floor floor;
    private final Development.Phone phone;
    private final double exposure;

    Shot(Truth truth, View view, Floor floor, Development.Phone phone, double exposure) {
        this.truth = truth;
        this.view = view;
        this.floor = floor;
        this.phone = phone;
        this.exposure = exposure;
    }

    public Truth truth() {
        return truth;
    }

    /** Which place of the floor a place of the picture really shows, mm. */
    public Point onFloor(Point pixel) {
        return view.floor(pixel);
    }

    /** Where a place of the floor really shows, in pixels, the first pixel reaching from 0 to 1. */
    public Point inPicture(Point place) {
        return view.picture(place);
    }

    /** Takes the photograph. */
    public byte[] jpeg() {
        int width = view.frame.width();
        int height = view.frame.height();
        float[][] light = new float[3][width * height];
        IntStream.range(0, height).parallel().forEach(y -> new Row(light).draw(y));
        return new Development(width, height, phone, truth.setting().seed()).jpeg(light);
    }

    /** One row of pixels, each the mean of four places; within a place an edge covers the share it covers. */
    private final class Row {
        private final float[][] light;
        private final double[] at = new double[2];
        private final double[] look = new double[3];
        private final double[] spare = new double[3];
        private final double[] lit = new double[3];
        private final double[] sum = new double[3];
        private double footprint;

        Row(float[][] light) {
            this.light = light;
        }

        void draw(int y) {
            int width = view.frame.width();
            for (int x = 0; x < width; x++) {
                footprint = x % 32 == 0 ? view.pixelMm(x, y) / 2 : footprint;
                sum[0] = 0;
                sum[1] = 0;
                sum[2] = 0;
                for (int k = 0; k < 4; k++) {
                    view.floor(x + 0.25 + 0.5 * (k & 1), y + 0.25 + 0.5 * (k >> 1), 0, at);
                    floor.look(at[0], at[1], view.slopeX(at[0]), view.slopeY(at[1]), footprint, look, spare);
                    sum[0] += look[0];
                    sum[1] += look[1];
                    sum[2] += look[2];
                }
                floor.light.at(at[0], at[1], lit);
                for (int c = 0; c < 3; c++) {
                    light[c][y * width + x] = (float) (exposure * sum[c] / 4 * lit[c]);
                }
            }
        }
    }
}
