package hearthcloth.photo.scene;

import hearthcloth.photo.PhotoReader;
import hearthcloth.photo.Reading;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.plane.ReferenceSheet;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;

/**
 * How long a large photograph takes to be read by a machine that has learnt the reader: of so many readings the last eight count.
 * Run by hand, not as a test, when nothing else is at work: {@code TimeEvaluation SEED MEGAPIXELS PIECES READINGS}.
 */
final class TimeEvaluation {

    private static final int COUNTED = 8;

    private TimeEvaluation() {}

    public static void main(String[] args) throws IOException {
        Scenes.Wish wish =
                new Scenes.Wish(Floor.Kind.WOOD, 10, Double.parseDouble(args[1]), Integer.parseInt(args[2]), Scenes.A4);
        byte[] jpeg = Evaluation.kept(
                "time-" + String.join("-", Arrays.copyOf(args, 3)),
                () -> Evaluation.jpeg(
                        Scenes.drawn(Long.parseLong(args[0]), wish).photograph(), 0.6f));
        int readings = Integer.parseInt(args[3]);
        double[] seconds = new double[readings];
        String told = "";
        for (int i = 0; i < readings; i++) {
            long start = System.nanoTime();
            Reading reading = PhotoReader.read(jpeg, ReferenceSheet.A4, ReadingProgress.NONE);
            seconds[i] = (System.nanoTime() - start) / 1e9;
            told = reading instanceof Reading.Read read ? read.pieces().size() + " pieces" : reading.toString();
        }
        double[] last = Arrays.copyOfRange(seconds, Math.max(0, readings - COUNTED), readings);
        Arrays.sort(last);
        System.out.printf(
                Locale.ROOT,
                "%s; of the last %d readings: least %.2f, median %.2f, most %.2f s%n",
                told,
                last.length,
                last[0],
                last[last.length / 2],
                last[last.length - 1]);
    }
}
