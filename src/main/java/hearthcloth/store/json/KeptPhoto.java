package hearthcloth.store.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.measure.Length;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.LargestRectangle.Box;
import hearthcloth.photo.plane.MeasuredLength;
import hearthcloth.photo.plane.PieceOutline;
import hearthcloth.photo.scale.KeptScale;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.sentence.SentenceNotation;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.photo.MarkedGrain;
import hearthcloth.work.photo.OutlineOrigin;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.SortedPiece;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was read from a photograph, as it is kept: numbers are written so that they are read back exactly. */
public final class KeptPhoto {

    private KeptPhoto() {}

    public static String text(KeptScale scale) {
        return Json.text(Scale.of(scale));
    }

    public static KeptScale scale(String text) {
        return read(text, Scale.class).scale();
    }

    public static String text(PhotoSorting sorting) {
        return Json.text(new Sorting(sorting.pieces().stream().map(Sorted::of).toList(), sorting.groups()));
    }

    public static PhotoSorting sorting(String text) {
        Sorting read = read(text, Sorting.class);
        return new PhotoSorting(read.pieces.stream().map(Sorted::sorted).toList(), read.groups);
    }

    private static <T> T read(String text, Class<T> type) {
        try {
            return Json.read(text, type);
        } catch (IllegalArgumentException e) {
            throw new StoreException(StoringSentences.photoUnread(), e);
        }
    }

    private record Sorting(List<Sorted> pieces, List<PieceGroup> groups) {}

    private record Scale(
            int width,
            int height,
            double sheetWidth,
            double sheetHeight,
            double deviation,
            List<Point> sheet,
            List<View> views) {

        static Scale of(KeptScale scale) {
            return new Scale(
                    scale.pictureWidth(),
                    scale.pictureHeight(),
                    scale.sheetWidth(),
                    scale.sheetHeight(),
                    scale.deviation(),
                    scale.sheet(),
                    scale.views().stream().map(View::of).toList());
        }

        KeptScale scale() {
            return new KeptScale(
                    width,
                    height,
                    sheetWidth,
                    sheetHeight,
                    sheet,
                    deviation,
                    views.stream().map(View::view).toList());
        }
    }

    /** @param off the deviation of kappa */
    private record View(double unit, double kappa, double off, Point middle, List<Point> corners) {

        static View of(KeptScale.View view) {
            return new View(view.unit(), view.kappa(), view.kappaDeviation(), view.middle(), view.corners());
        }

        KeptScale.View view() {
            return new KeptScale.View(middle, unit, kappa, off, corners);
        }
    }

    /**
     * A piece as it is now.
     *
     * @param drawn the uncertainty of each corner, where she drew its outline
     * @param grain the angle of its grain in radians, where she marked it; with {@code along}
     * @param along the largest rectangle that follows the grain
     */
    private record Sorted(
            String key,
            boolean byHand,
            boolean dropped,
            boolean checked,
            String group,
            Piece piece,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            List<Double> drawn,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Double grain,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Rectangle along) {

        static Sorted of(SortedPiece sorted) {
            return new Sorted(
                    sorted.key(),
                    sorted.byHand(),
                    sorted.dropped(),
                    sorted.checked(),
                    sorted.group(),
                    Piece.of(sorted.piece()),
                    sorted.rim() instanceof OutlineOrigin.Drawn drawn ? drawn.pixels() : null,
                    sorted.grain().map(MarkedGrain::angleRad).orElse(null),
                    sorted.grain().map(grain -> Rectangle.of(grain.usable())).orElse(null));
        }

        SortedPiece sorted() {
            return new SortedPiece(key, piece.piece(), marked(), rim(), dropped, checked, group);
        }

        private Optional<MarkedGrain> marked() {
            if (grain == null) {
                return Optional.empty();
            }
            if (along == null) {
                throw new IllegalArgumentException("the document lacks \"along\" of piece " + key);
            }
            return Optional.of(new MarkedGrain(grain, along.box()));
        }

        private OutlineOrigin rim() {
            if (drawn != null) {
                return new OutlineOrigin.Drawn(drawn);
            }
            return byHand ? new OutlineOrigin.Moved() : new OutlineOrigin.Read();
        }
    }

    private record Piece(
            int number,
            List<Point> floor,
            List<Point> picture,
            List<Side> sides,
            Rectangle usable,
            Look look,
            List<Doubted> doubts) {

        static Piece of(ReadPiece piece) {
            PieceOutline outline = piece.outline();
            return new Piece(
                    piece.number(),
                    outline.floor(),
                    outline.picture(),
                    outline.sides().stream().map(Side::of).toList(),
                    Rectangle.of(piece.usable()),
                    Look.of(piece.look()),
                    piece.doubts().stream().map(Doubted::of).toList());
        }

        ReadPiece piece() {
            PieceOutline outline = new PieceOutline(
                    floor, picture, sides.stream().map(Side::side).toList());
            return new ReadPiece(
                    number,
                    outline,
                    usable.box(),
                    look.look(),
                    doubts.stream().map(Doubted::doubt).toList());
        }
    }

    /**
     * A doubt.
     *
     * @param sentence in English, as earlier versions read it
     * @param said the sentence as a value; missing in what they kept
     */
    private record Doubted(
            Doubt.Kind kind,
            String sentence,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String said) {

        static Doubted of(Doubt doubt) {
            String english = doubt.sentence().english();
            // One that was kept before sentences were values says itself, and is kept again as it was.
            boolean isValue = !doubt.sentence().equals(Sentence.itself(english));
            return new Doubted(doubt.kind(), english, isValue ? SentenceNotation.print(doubt.sentence()) : null);
        }

        Doubt doubt() {
            return new Doubt(
                    kind,
                    Optional.ofNullable(said)
                            .flatMap(SentenceNotation::parse)
                            .orElseGet(() -> Sentence.itself(sentence)));
        }
    }

    /** @param off give or take */
    private record Side(Length length, Length off) {

        static Side of(MeasuredLength side) {
            return new Side(side.length(), side.giveOrTake());
        }

        MeasuredLength side() {
            return new MeasuredLength(length, off);
        }
    }

    /** @param angle in radians */
    private record Rectangle(double width, double height, double angle, Point middle) {

        static Rectangle of(Box box) {
            return new Rectangle(box.width(), box.height(), box.angleRad(), box.middle());
        }

        Box box() {
            return new Box(middle, width, height, angle);
        }
    }

    private record Look(PieceAppearance.Pattern pattern, double contrast, Lab colour, Lab one, Lab two) {

        static Look of(PieceAppearance look) {
            return new Look(look.pattern(), look.contrast(), look.colour(), look.one(), look.two());
        }

        PieceAppearance look() {
            return new PieceAppearance(colour, one, two, pattern, contrast);
        }
    }
}
