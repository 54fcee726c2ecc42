package hearthcloth.web.stash;

import hearthcloth.draw.FabricPicture;
import hearthcloth.draw.RefusedPictureException;
import hearthcloth.measure.Length;
import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Size;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.StashBook;
import hearthcloth.store.StashEdit;
import hearthcloth.store.SwatchBook;
import hearthcloth.store.SwatchBook.Swatch;
import hearthcloth.web.kit.FormFields;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.web.kit.PageRoutes;
import hearthcloth.web.kit.PageView;
import hearthcloth.web.kit.PieceDrawing;
import hearthcloth.web.kit.StaleChangeException;
import hearthcloth.web.kit.Uploads;
import hearthcloth.words.sentence.Refusal;
import hearthcloth.words.speech.Voice;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.Deed;
import hearthcloth.work.deed.FabricChanged;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One fabric: its name, colour, faces and nap, for all its pieces at once; her own picture of it. */
public final class FabricPage {

    private static final double PIXELS = 240;
    private static final Length SHOWN = Length.cm(20);

    /**
     * What the page shows of it.
     *
     * @param aside how many of its pieces are set aside
     * @param seen tells this state of the fabric from a later one
     * @param across how much cloth her picture shows, as she may write it
     */
    public record Shown(
            Fabric fabric,
            String total,
            String about,
            PieceDrawing drawn,
            boolean hasPicture,
            String across,
            int aside,
            int pieces,
            String seen) {}

    /** The page. */
    @PageView.Template("stash-fabric.jte")
    public record View(PageFrame frame, Shown shown) implements PageView {}

    private final PageContext room;

    private FabricPage(PageContext room) {
        this.room = room;
    }

    static void add(PageRoutes routes) {
        routes.of(FabricPage::new)
                .get("/stash/fabric", FabricPage::show)
                .post("/stash/fabric", FabricPage::change)
                .post("/stash/fabric/aside", (page, context) -> page.aside(context, true))
                .post("/stash/fabric/back", (page, context) -> page.aside(context, false))
                .post("/stash/fabric/picture", FabricPage::picture)
                .post("/stash/fabric/picture/away", FabricPage::unpicture)
                .get("/stash/swatch", FabricPage::swatch);
    }

    private StashingWords words() {
        return StashingWords.in(room.language());
    }

    private StashBook book() {
        return room.store().stash();
    }

    private static String address(String fabric) {
        return "/stash/fabric?name=" + URLEncoder.encode(fabric, StandardCharsets.UTF_8);
    }

    private Fabric asked(Stash stash, String name) {
        return stash.fabric(name).orElseThrow(() -> new NotFoundResponse(words().fabricNone()));
    }

    private void show(Context context) {
        Stash stash = book().whole();
        Fabric fabric = asked(stash, PageContext.text(context, "name"));
        Map<String, Length> across = room.store().swatches().across();
        List<Piece> pieces = stash.of(fabric);
        Set<String> aside = book().aside();
        Voice voice = room.settings().voice();
        double area = pieces.stream().mapToDouble(Piece::areaMm2).sum();
        Shown shown = new Shown(
                fabric,
                words().summary(StashView.area(area, voice), pieces.size()),
                FabricSaid.about(fabric, voice.language()),
                PieceDrawing.of(Size.square(SHOWN), fabric, 1, PieceDrawing.scale(SHOWN, PIXELS), across, "cloth"),
                across.containsKey(fabric.name()),
                room.settings()
                        .ruler()
                        .write(across.getOrDefault(fabric.name(), hand(voice.ruler())), Rounding.NEAREST),
                (int) pieces.stream()
                        .filter(piece -> aside.contains(piece.id()))
                        .count(),
                pieces.size(),
                seen(fabric, pieces.size()));
        room.show(context, new View(room.frame(context, fabric.name(), "Stash"), shown));
    }

    private static String seen(Fabric fabric, int pieces) {
        return fabric + "|" + pieces;
    }

    private void change(Context context) {
        Stash stash = book().whole();
        Fabric was = meant(context, stash);
        Fabric is = new Fabric(
                StashFields.name(PageContext.field(context, "name"), room.language()),
                FormFields.colour(PageContext.field(context, "colour"), room.language()),
                FormFields.choice(Fabric.Faces.class, PageContext.field(context, "faces"))
                        .orElse(was.faces()),
                FormFields.choice(Fabric.Nap.class, PageContext.field(context, "nap"))
                        .orElse(was.nap()),
                PageContext.field(context, "own").isEmpty()
                        ? Optional.empty()
                        : Optional.of(FormFields.colour(PageContext.field(context, "wrong"), room.language())));
        Deed.Pieces changed = new FabricChanged(stash, was, is).pieces();
        if (!changed.isNone()) {
            book().edit(new StashEdit(words().deedFabric(was.name()), changed.gone(), changed.come()));
            pictureFollows(was.name(), is.name());
        }
        PageContext.go(
                context,
                address(is.name()),
                words().fabricChanged(words().pieces(changed.gone().size())));
    }

    /** All its pieces kept for something else, or given back to what can be planned with. */
    private void aside(Context context, boolean on) {
        StashAtHand heap = room.store().atHand();
        Fabric fabric = meant(context, heap.stash());
        List<String> pieces = heap.stash().of(fabric).stream()
                .filter(piece -> heap.isAside(piece) != on)
                .map(Piece::id)
                .toList();
        if (!pieces.isEmpty()) {
            book().edit(StashEdit.aside(
                    on ? words().deedAside(fabric.name()) : words().deedBack(fabric.name()), pieces, on));
        }
        PageContext.go(context, address(fabric.name()), on ? words().fabricIsAside() : words().fabricIsBack());
    }

    /** The fabric as it was when the page was shown. */
    private Fabric meant(Context context, Stash stash) {
        Optional<Fabric> now = stash.fabric(PageContext.field(context, "was"));
        return now.filter(found -> seen(found, stash.of(found).size()).equals(context.formParam("seen")))
                .orElseThrow(() -> new StaleChangeException(
                        words().staleFabric(),
                        now.map(found -> words().staleFabricNow(
                                                FabricSaid.about(found, room.language()),
                                                found.colour().hex(),
                                                found.name(),
                                                words().pieces(stash.of(found).size())))
                                .orElseGet(words()::fabricNone),
                        now.map(found -> address(found.name())).orElse("/stash"),
                        "seen",
                        now.map(found -> seen(found, stash.of(found).size())).orElse("")));
    }

    /** Her picture is left under the old name too, so that undoing finds it. */
    private void pictureFollows(String was, String is) {
        SwatchBook swatches = room.store().swatches();
        if (swatches.find(is).isEmpty()) {
            swatches.find(was).ifPresent(swatch -> swatches.keep(is, swatch));
        }
    }

    /** What a picture shows where nobody measured it. */
    private static Length hand(Ruler ruler) {
        return ruler.isMetric() ? Length.cm(10) : Length.inches(4);
    }

    private void picture(Context context) {
        Fabric fabric = asked(book().whole(), PageContext.field(context, "was"));
        String written = PageContext.field(context, "across");
        Length across = written.isEmpty()
                ? Length.cm(10)
                : Measures.length(written, room.settings().bare());
        if (across.isLessThan(Length.cm(1)) || across.isMoreThan(Length.cm(300))) {
            throw new MeasureException(words().fabricWrongAcross());
        }
        try {
            byte[] jpeg = FabricPicture.jpeg(Uploads.upload(room, context, "picture", FabricPicture.MOST_BYTES));
            String picture = Base64.getEncoder().encodeToString(jpeg);
            room.store().swatches().keep(fabric.name(), new Swatch("image/jpeg", picture, across));
        } catch (RefusedPictureException e) {
            throw Uploads.refused(422, Refusal.of(e).in(room.settings().voice()), e);
        }
        PageContext.go(context, address(fabric.name()), words().fabricTiled());
    }

    private void unpicture(Context context) {
        String name = PageContext.field(context, "was");
        room.store().swatches().remove(name);
        PageContext.go(context, address(name), words().fabricUntiled());
    }

    private void swatch(Context context) {
        Swatch swatch = room.store()
                .swatches()
                .find(PageContext.text(context, "fabric"))
                .orElseThrow(() -> new NotFoundResponse(words().fabricNoPicture()));
        context.contentType(swatch.kind()).result(Base64.getDecoder().decode(swatch.picture()));
    }
}
