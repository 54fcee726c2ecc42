package hearthcloth.draw.tied;

import static org.assertj.core.api.Assertions.assertThat;

import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Mark;
import hearthcloth.draw.picture.Palette;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.PngWriter;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.measure.Ruler;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.tying.Tying;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every step of every tie, round every shape of gift it takes, has a picture of the cloth. With {@code -Dlook=true} the
 * steps of each are also drawn side by side into {@code target/look/steps}, for the eye.
 */
class StepPictureTest {

    private static final PrintingWords WORDS = Voice.english(Ruler.MILLIMETRES).printing();
    private static final double WIDTH = 95;
    private static final double HEIGHT = 70;

    record Round(Tie tie, Gift gift) {
        @Override
        public String toString() {
            return tie.words() + ", " + gift.describe(Ruler.MILLIMETRES);
        }
    }

    static Stream<Round> rounds() {
        return Stream.of(
                        "box 30 x 20 x 8 cm",
                        "box 15 x 15 x 15 cm",
                        "box 50 x 10 x 10 cm",
                        "bottle 7.5 x 30 cm",
                        "bottle 12 x 14 cm",
                        "two bottles 7.5 x 30 cm",
                        "ball 22 cm",
                        "books 21 x 15 x 2 cm",
                        "roll 6 x 38 cm",
                        "roll 10 x 12 cm")
                .map(written -> Gift.parse(written, null))
                .flatMap(gift -> Tie.suiting(gift).stream().map(tie -> new Round(tie, gift)));
    }

    @ParameterizedTest
    @MethodSource("rounds")
    void every_step_shows_the_cloth_and_what_moved(Round round) throws IOException {
        TiedGift tied = Sample.of(round.tie, round.gift, Length.cm(12));
        List<Picture> pictures = new ArrayList<>();
        for (Tying.Step step : Tying.of(
                        round.tie, round.gift, Voice.english(Ruler.MILLIMETRES).tying())
                .steps()) {
            Picture picture = tied.moment(step.moment(), WIDTH, HEIGHT, WORDS);
            assertThat(picture.width()).as(step.words()).isBetween(20.0, WIDTH);
            assertThat(picture.height()).as(step.words()).isBetween(12.0, HEIGHT);
            assertThat(Math.max(picture.width() / WIDTH, picture.height() / HEIGHT))
                    .as(step.words())
                    .isGreaterThan(0.8);
            assertThat(areas(picture)).as(step.words()).isGreaterThan(8);
            Bounds sheet = new Bounds(0, 0, picture.width(), picture.height());
            assertThat(picture.marks()).allMatch(mark -> sheet.contains(mark.bounds()));
            // arrows say what the hands moved, in all but the first
            assertThat(arrows(picture)).as(step.words()).isBetween(step.moment() == TyingMoment.LAID ? 0L : 1L, 4L);
            pictures.add(picture);
        }
        assertThat(pictures.stream().map(Picture::marks)).doesNotHaveDuplicates();
        if (Boolean.getBoolean("look")) {
            look(round, pictures);
        }
    }

    /** A box that one tie cannot manage is shown tied in another; books are tied in the gap. */
    @ParameterizedTest
    @MethodSource("rounds")
    void a_way_out_is_drawn_for_boxes_and_books(Round round) {
        TiedGift tied = Sample.of(round.tie, round.gift, Length.cm(12));
        boolean drawn = tied.whenShort(WIDTH, HEIGHT, WORDS).isPresent();
        boolean box = round.tie == Tie.FOUR_CORNER || round.tie == Tie.ERRAND;
        if (box || round.tie == Tie.BOOKS) {
            assertThat(drawn).isTrue();
        } else if (!(round.gift instanceof Gift.Box) || round.tie == Tie.TWO_KNOT) {
            assertThat(drawn).isFalse();
        }
    }

    private static long areas(Picture picture) {
        return picture.marks().stream().filter(Mark.Area.class::isInstance).count();
    }

    private static long arrows(Picture picture) {
        return picture.marks().stream()
                .filter(mark -> mark instanceof Mark.Area area && area.colour().equals(Palette.MADDER))
                .count();
    }

    private static void look(Round round, List<Picture> pictures) throws IOException {
        Sketch sheet = new Sketch();
        double x = 0;
        for (Picture picture : pictures) {
            sheet.place(picture, new Point(x + (WIDTH - picture.width()) / 2, HEIGHT - picture.height()));
            x += WIDTH + 5;
        }
        Path folder = Files.createDirectories(Path.of("target/look/steps"));
        String name = round.toString().replaceAll("[^A-Za-z0-9]+", "-");
        Files.write(folder.resolve(name + ".png"), PngWriter.write(sheet.finished(name, x, HEIGHT), 110));
    }
}
