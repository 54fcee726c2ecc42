package hearthcloth.photo;

import hearthcloth.geometry.Point;
import hearthcloth.photo.edge.EdgeLocaliser;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.LensEstimator;
import hearthcloth.photo.edge.TappedRims;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.ImageDecoder;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.image.PixelImage;
import hearthcloth.photo.image.ReadingProgress;
import hearthcloth.photo.image.SheetUnseenException;
import hearthcloth.photo.parameter.ReadingParameters;
import hearthcloth.photo.plane.Doubt;
import hearthcloth.photo.plane.ReferenceSheet;
import hearthcloth.photo.plane.ShownSheet;
import hearthcloth.photo.scale.FaintSheetFinder;
import hearthcloth.photo.scale.FloorScale;
import hearthcloth.photo.scale.MarkedSheet;
import hearthcloth.photo.scale.MeasuringSheetFinder;
import hearthcloth.photo.scale.SheetChoice;
import hearthcloth.photo.scale.SheetFinder;
import hearthcloth.photo.scale.TappedSheet;
import hearthcloth.photo.segment.Blob;
import hearthcloth.photo.segment.ConcavitySplit;
import hearthcloth.photo.segment.OccupancyMap;
import hearthcloth.photo.segment.PaleShapes;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One reading, from the decoded picture to the pieces: ground, shapes, lens, sheet, then each piece in full resolution.
 */
final class ReadingPipeline {

    /**
     * Faint edges are looked for this far from everything that stands out, in coarse pixels, since its own edge reaches
     * as far.
     */
    private static final int FAR = 8;

    /** Sheets that contradict each other by a larger share of a length make every piece doubted; less is in the ±. */
    private static final double APART = 0.01;

    private final PixelImage picture;
    private final Optional<Double> focalShare;
    private final ReferenceSheet sheet;
    private final ReadingParameters parameters;
    private final ReadingProgress progress;
    private final LabThumbnail coarse;
    private final double step;
    private final LabThumbnail smooth;
    /** The measuring sheets that lie in the picture, the surest first. */
    private final List<MarkedSheet> printed;

    /** The rims of the sheet nearest to where she has tapped its corners; empty where it is to be found. */
    private final List<Point> tapped;

    private final ShapeTracing tracing;
    private final ShapeFollowing shapes;
    private final GroundModel ground;

    ReadingPipeline(
            ImageDecoder.Decoded decoded, ShownSheet shown, ReadingParameters parameters, ReadingProgress progress) {
        this.picture = decoded.picture();
        this.focalShare = decoded.focalShare();
        this.sheet = shown.sheet();
        this.parameters = parameters;
        this.progress = progress;
        progress.at(0.3, "ground");
        this.coarse = LabThumbnail.of(picture);
        this.step = coarse.step;
        this.smooth = coarse.smoothed(1.2);
        this.tapped = shown.isShown() ? TappedRims.of(smooth, shown.in(picture.width, picture.height)) : List.of();
        this.printed = shown.isShown()
                ? List.of()
                : MeasuringSheetFinder.in(
                        picture,
                        coarse,
                        sheet.isMeasuringSheet(),
                        parameters.printed(),
                        parameters.edge().steps());
        this.tracing = new ShapeTracing(picture, coarse, sheet, parameters);
        this.shapes = new ShapeFollowing(picture, coarse, smooth, tracing, parameters, () -> progress.at(0.6, "sheet"));
        this.ground = GroundModel.without(papers(), smooth, parameters.ground());
    }

    private List<List<Point>> papers() {
        return tapped.isEmpty() ? printed.stream().map(MarkedSheet::paper).toList() : List.of(tapped);
    }

    Reading read() {
        progress.at(0.45, "pieces");
        if (!tapped.isEmpty()) {
            return byTaps();
        }
        if (!printed.isEmpty()) {
            return byPrint();
        }
        if (sheet.isMeasuringSheet()) {
            throw new PhotoRefusedException(PhotographingSentences.noMarks());
        }
        ShapeFollowing.Looked looked = look(ground);
        try {
            return bySheet(withSheet(looked));
        } catch (SheetUnseenException unseen) {
            return bySheet(withPale(looked).orElseThrow(() -> unseen));
        }
    }

    /** The pieces by a sheet that is one of the shapes. */
    private Reading bySheet(ShapeFollowing.Looked looked) {
        LensModel first = looked.lens();
        SheetFinder.Found rough = choice(looked).likeliest(looked.traced(), looked.uncut());
        LensModel second = LensEstimator.estimated(
                first,
                ShapeFollowing.straightSides(looked),
                looked.traced().get(rough.index()).sides(),
                1,
                parameters.edge().lens());
        ShapeFollowing.Looked closer = shapes.looked(looked.ground(), looked.blobs(), looked.followed(), second);
        SheetChoice.Chosen chosen = choice(closer).sure(closer.traced(), closer.uncut());
        List<Doubt> doubts = new ArrayList<>(chosen.doubts());
        looked.followed().get(chosen.found().index()).laid().doubt(sheet).ifPresent(doubts::add);
        FloorScale scale = together(
                chosen.sheets().stream()
                        .map(found -> FloorScale.of(found, sheet, second, picture, focalShare))
                        .toList(),
                sheet,
                doubts);
        progress.at(0.8, "measuring");
        List<ReadPiece> pieces = new PieceMeasurement(coarse, closer.ground(), scale, sheet, parameters)
                        .of(
                                closer.blobs(),
                                closer.traced(),
                                chosen.sheets().stream()
                                        .map(SheetFinder.Found::index)
                                        .toList())
                        .stream()
                        .map(piece -> doubted(piece, doubts))
                        .toList();
        return new Reading.Read(pieces, scale);
    }

    /** The pieces by the sheet whose corners were tapped, which is none of the shapes. */
    private Reading byTaps() {
        ShapeFollowing.Looked looked = look(ground);
        LensModel lens = LensEstimator.estimated(
                looked.lens(),
                ShapeFollowing.straightSides(looked),
                List.of(),
                1,
                parameters.edge().lens());
        ShapeFollowing.Looked closer = shapes.looked(looked.ground(), looked.blobs(), looked.followed(), lens);
        FittedPolygon own = shapes.followed(EdgeLocaliser.Laid.told(tapped)).under(lens, step);
        TappedSheet found = TappedSheet.of(own, finder(lens), sheet, Math.max(picture.width, picture.height));
        FloorScale scale = FloorScale.of(found.sheet(), sheet, lens, picture, focalShare);
        progress.at(0.8, "measuring");
        List<ReadPiece> pieces = new PieceMeasurement(coarse, closer.ground(), scale, sheet, parameters)
                .beside(own.corners(), own.sharpness(), closer.blobs(), closer.traced()).stream()
                        .map(piece -> doubted(piece, found.doubts()))
                        .toList();
        return new Reading.Read(pieces, scale);
    }

    /** The scale of one sheet or of several, and a doubt where these contradict each other. */
    private FloorScale together(List<FloorScale> each, ReferenceSheet of, List<Doubt> doubts) {
        if (each.size() == 1) {
            return each.get(0);
        }
        FloorScale.Together all = FloorScale.together(each, of, focalShare);
        if (all.apart() > APART) {
            Argument share = Argument.number(Math.round(Math.ceil(100 * all.apart())));
            doubts.add(new Doubt(Doubt.Kind.SHEET, PhotographingSentences.doubtSheetsApart(share)));
        }
        return all.scale();
    }

    /** The pieces by the measuring sheets, which are none of the shapes. */
    private Reading byPrint() {
        ShapeFollowing.Looked looked = look(ground);
        LensModel lens = LensEstimator.estimated(
                looked.lens(),
                ShapeFollowing.straightSides(looked),
                List.of(),
                1,
                parameters.edge().lens());
        ShapeFollowing.Looked closer = shapes.looked(looked.ground(), looked.blobs(), looked.followed(), lens);
        ReferenceSheet own = sheet.isMeasuringSheet() ? sheet : ReferenceSheet.MEASURING;
        List<Doubt> doubts = new ArrayList<>();
        FloorScale scale = together(
                printed.stream()
                        .map(found -> FloorScale.of(found, own, lens, picture, focalShare))
                        .toList(),
                own,
                doubts);
        progress.at(0.8, "measuring");
        MarkedSheet surest = printed.get(0);
        List<ReadPiece> pieces = new PieceMeasurement(coarse, closer.ground(), scale, own, parameters)
                .beside(surest.white(), surest.sharpness(), closer.blobs(), closer.traced()).stream()
                        .map(piece -> doubted(piece, doubts))
                        .toList();
        return new Reading.Read(pieces, scale);
    }

    private ShapeFollowing.Looked look(GroundModel on) {
        return shapes.look(on, papers());
    }

    /** The same where a sheet stands out; otherwise with a mat as the ground, or with paper that hardly stands out. */
    private ShapeFollowing.Looked withSheet(ShapeFollowing.Looked looked) {
        SheetChoice choice = choice(looked);
        if (choice.isAny(looked.uncut()) || !choice.isTold()) {
            return looked;
        }
        return GroundModel.withMat(smooth, parameters.ground())
                .map(this::look)
                .filter(onMat -> choice(onMat).isAnyRight(onMat.uncut()))
                .orElseGet(() -> sheet.white() ? withFaint(looked) : looked);
    }

    private ShapeFollowing.Looked withFaint(ShapeFollowing.Looked looked) {
        OccupancyMap occupied = new OccupancyMap(coarse, looked.blobs(), FAR);
        List<List<Point>> sheets = new FaintSheetFinder(picture, smooth, looked.lens(), occupied, parameters)
                .like(sheet, finder(looked.lens()));
        GroundModel bare =
                sheets.isEmpty() ? looked.ground() : GroundModel.without(sheets, smooth, parameters.ground());
        return beside(looked, sheets.stream().map(EdgeLocaliser.Laid::faint).toList(), bare);
    }

    /**
     * Paper that stands out together with something that touches it, such as a joint of the floor or a scrap, told by its
     * whiteness; empty where no white shape has the sheet's proportions.
     */
    private Optional<ShapeFollowing.Looked> withPale(ShapeFollowing.Looked looked) {
        if (!sheet.white()) {
            return Optional.empty();
        }
        SheetFinder finder = finder(looked.lens());
        List<List<Point>> sheets = PaleShapes.in(smooth, looked.ground(), parameters.segment()).stream()
                .filter(blob -> !blob.cutOff())
                .map(blob -> tracing.simplest(blob, looked.lens()))
                .map(rough -> shapes.followed(EdgeLocaliser.Laid.told(rough.corners()))
                        .under(looked.lens(), step))
                .filter(shape -> finder.isAmong(shape, sheet))
                .map(FittedPolygon::corners)
                .toList();
        if (sheets.isEmpty()) {
            return Optional.empty();
        }
        GroundModel bare = GroundModel.without(sheets, smooth, parameters.ground());
        return Optional.of(beside(
                shapes.look(bare, sheets),
                sheets.stream().map(EdgeLocaliser.Laid::told).toList(),
                bare));
    }

    /** What was seen, and shapes more whose corners are known. */
    private ShapeFollowing.Looked beside(
            ShapeFollowing.Looked looked, List<EdgeLocaliser.Laid> sheets, GroundModel bare) {
        List<Blob> blobs = new ArrayList<>(looked.blobs());
        List<ShapeFollowing.Followed> followed = new ArrayList<>(looked.followed());
        for (EdgeLocaliser.Laid laid : sheets) {
            blobs.add(new ConcavitySplit(
                            coarse, looked.ground(), parameters.segment().parting())
                    .blob(laid.corners()));
            followed.add(shapes.followed(laid));
        }
        return shapes.looked(bare, blobs, followed, looked.lens());
    }

    private SheetFinder finder(LensModel lens) {
        return new SheetFinder(picture, coarse, lens, focalShare, parameters.sheet());
    }

    private SheetChoice choice(ShapeFollowing.Looked looked) {
        return new SheetChoice(finder(looked.lens()), sheet, coarse, looked.ground());
    }

    private static ReadPiece doubted(ReadPiece piece, List<Doubt> more) {
        List<Doubt> doubts =
                Stream.concat(more.stream(), piece.doubts().stream()).toList();
        return new ReadPiece(piece.number(), piece.outline(), piece.usable(), piece.look(), doubts);
    }
}
