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
import hearthcloth.work.photo.MarkedGrain;
import hearthcloth.work.photo.OutlineOrigin;
import hearthcloth.work.photo.PhotoSorting;
import hearthcloth.work.photo.PieceGroup;
import hearthcloth.work.photo.SortedPiece;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was read from a photograph, as it is kept: numbers are written so that they are read back exactly. */
public final class PhotoJson {

    private PhotoJson() {}

    public static String text(KeptScale scale) {
        return Json.text(ScaleJson.of(scale));
    }

    public static KeptScale scale(String text) {
        return read(text, ScaleJson.class).scale();
    }

    public static String text(PhotoSorting sorting) {
        return Json.text(
                new SortingJson(sorting.pieces().stream().map(SortedJson::of).toList(), sorting.groups()));
    }

    public static PhotoSorting sorting(String text) {
        SortingJson read = read(text, SortingJson.class);
        return new PhotoSorting(read.pieces.stream().map(SortedJson::sorted).toList(), read.groups);
    }

    private static <T> T read(String text, Class<T> type) {
        try {
            return Json.read(text, type);
        } catch (IllegalArgumentException e) {
            throw new StoreException(
                    "What was read off this photograph cannot be read any more: " + e.getMessage() + ".", e);
        }
    }

    private record SortingJson(List<SortedJson> pieces, List<PieceGroup> groups) {}

    private record ScaleJson(
            int width,
            int height,
            double sheetWidth,
            double sheetHeight,
            double deviation,
            List<Point> sheet,
            List<ViewJson> views) {

        static ScaleJson of(KeptScale scale) {
            return new ScaleJson(
                    scale.pictureWidth(),
                    scale.pictureHeight(),
                    scale.sheetWidth(),
                    scale.sheetHeight(),
                    scale.deviation(),
                    scale.sheet(),
                    scale.views().stream().map(ViewJson::of).toList());
        }

        KeptScale scale() {
            return new KeptScale(
                    width,
                    height,
                    sheetWidth,
                    sheetHeight,
                    sheet,
                    deviation,
                    views.stream().map(ViewJson::view).toList());
        }
    }

    /** @param off the deviation of kappa */
    private record ViewJson(double unit, double kappa, double off, Point middle, List<Point> corners) {

        static ViewJson of(KeptScale.View view) {
            return new ViewJson(view.unit(), view.kappa(), view.kappaDeviation(), view.middle(), view.corners());
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
    private record SortedJson(
            String key,
            boolean byHand,
            boolean dropped,
            boolean checked,
            String group,
            PieceJson piece,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            List<Double> drawn,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Double grain,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            BoxJson along) {

        static SortedJson of(SortedPiece sorted) {
            return new SortedJson(
                    sorted.key(),
                    sorted.byHand(),
                    sorted.dropped(),
                    sorted.checked(),
                    sorted.group(),
                    PieceJson.of(sorted.piece()),
                    sorted.rim() instanceof OutlineOrigin.Drawn drawn ? drawn.pixels() : null,
                    sorted.grain().map(MarkedGrain::angleRad).orElse(null),
                    sorted.grain().map(grain -> BoxJson.of(grain.usable())).orElse(null));
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

    private record PieceJson(
            int number,
            List<Point> floor,
            List<Point> picture,
            List<SideJson> sides,
            BoxJson usable,
            LookJson look,
            List<Doubt> doubts) {

        static PieceJson of(ReadPiece piece) {
            PieceOutline outline = piece.outline();
            return new PieceJson(
                    piece.number(),
                    outline.floor(),
                    outline.picture(),
                    outline.sides().stream().map(SideJson::of).toList(),
                    BoxJson.of(piece.usable()),
                    LookJson.of(piece.look()),
                    piece.doubts());
        }

        ReadPiece piece() {
            PieceOutline outline = new PieceOutline(
                    floor, picture, sides.stream().map(SideJson::side).toList());
            return new ReadPiece(number, outline, usable.box(), look.look(), doubts);
        }
    }

    /** @param off give or take */
    private record SideJson(Length length, Length off) {

        static SideJson of(MeasuredLength side) {
            return new SideJson(side.length(), side.giveOrTake());
        }

        MeasuredLength side() {
            return new MeasuredLength(length, off);
        }
    }

    /** @param angle in radians */
    private record BoxJson(double width, double height, double angle, Point middle) {

        static BoxJson of(Box box) {
            return new BoxJson(box.width(), box.height(), box.angleRad(), box.middle());
        }

        Box box() {
            return new Box(middle, width, height, angle);
        }
    }

    private record LookJson(PieceAppearance.Pattern pattern, double contrast, Lab colour, Lab one, Lab two) {

        static LookJson of(PieceAppearance look) {
            return new LookJson(look.pattern(), look.contrast(), look.colour(), look.one(), look.two());
        }

        PieceAppearance look() {
            return new PieceAppearance(colour, one, two, pattern, contrast);
        }
    }
}
