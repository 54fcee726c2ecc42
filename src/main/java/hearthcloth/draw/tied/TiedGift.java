package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Type;
import hearthcloth.draw.soft.SoftCloth;
import hearthcloth.geometry.Point;
import hearthcloth.geometry.Vector;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.Fit;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.Tie;
import hearthcloth.wrap.drape.Drape;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.ReefKnot;
import hearthcloth.wrap.fold.TyingMoment;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tie.TiedFold;
import hearthcloth.wrap.tying.Tying;
import hearthcloth.wrap.tying.WhatShows;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pictures of one cloth tied round one gift, all drawn from the same facets as the figures of what shows. Not
 * thread-safe.
 */
public final class TiedGift {

    private static final double BETWEEN = 6;

    private final Cloth cloth;
    private final Visible visible;
    private final TiedLook look;
    private final Pattern pattern;
    private final Scene scene;
    private List<View> views = List.of();
    /** Dots along a view that is drawn as soft cloth; 0 where it is drawn from the facets. */
    private int dots;

    private Optional<SoftCloth> soft = Optional.empty();
    private boolean isSoftSought;

    private TiedGift(Cloth cloth, Visible visible, TiedLook look) {
        this.cloth = cloth;
        this.visible = visible;
        this.look = look;
        this.pattern = Pattern.of(cloth, visible.fold().laying());
        this.scene = Scene.of(visible);
    }

    /** The three views, drawn when they are first needed; a page that only turns the model needs none. */
    private List<View> views() {
        if (views.isEmpty()) {
            views = Eye.on(visible.fold().fit().gift()).stream()
                    .map(this::finished)
                    .toList();
        }
        return views;
    }

    /** The last of them, from a corner. */
    private View corner() {
        List<Eye> eyes = Eye.on(visible.fold().fit().gift());
        return views.isEmpty() ? finished(eyes.get(eyes.size() - 1)) : views.get(views.size() - 1);
    }

    private View finished(Eye eye) {
        return soft().map(mesh -> View.of(mesh, eye, dots)).orElseGet(() -> seen(scene, eye));
    }

    /** The soft cloth, made when it is first drawn. */
    private Optional<SoftCloth> soft() {
        if (dots > 0 && !isSoftSought) {
            isSoftSought = true;
            soft = TiedModel.soft(cloth, visible, look, Integer.highestOneBit((int) Math.min(FINEST, FINER * dots)));
        }
        return soft;
    }

    /** The cloth as a fold ties it. */
    public static TiedGift of(Cloth cloth, Fold fold, TiedLook look) {
        return new TiedGift(cloth, Visible.of(fold), look);
    }

    /**
     * The same with the finished gift drawn as soft cloth, dot by dot, so many along the longer side of each view; as it
     * is where its cloth does not come to rest within the limits.
     */
    public TiedGift softly(int dotsAlong) {
        TiedGift other = new TiedGift(cloth, visible, look);
        other.dots = dotsAlong;
        return other;
    }

    /** Dots of a face's picture for one of the gift's, and at most. */
    private static final double FINER = 2;

    private static final int FINEST = 1024;

    private View seen(Scene some, Eye eye) {
        return View.of(some, eye, pattern, visible.fold().fit().placing().out(), look);
    }

    /** What of the cloth can be seen. */
    public Visible visible() {
        return visible;
    }

    public WhatShows whatShows() {
        return WhatShows.of(cloth, visible);
    }

    /** The model for a page that turns the gift. */
    public TiedModel model() {
        return TiedModel.of(cloth, visible, look);
    }

    /** The cloth brought to rest, for a page that turns the gift. */
    public TiedModel draped(Drape drape) {
        return TiedModel.of(cloth, drape, look);
    }

    /** How it is folded. */
    public Fold fold() {
        return visible.fold();
    }

    /**
     * The flat net: the open cloth with the face turned up that ends outside, and every fold of the drawn gift as a
     * line on it. Printed, cut out and folded along the lines it makes the gift in paper, without its knots.
     */
    public Picture net(double width, PrintingWords words) {
        return Net.of(cloth, visible.fold(), look, width, words.pictureNet());
    }

    /** The width of the open cloth as it lies, in millimetres, which {@link #net} scales to its width. */
    public double reach() {
        Pattern.Box box = Pattern.Box.of(visible.fold().laying().whole().corners());
        return box.u1() - box.u0();
    }

    /**
     * Three views at one scale, each with its caption, side by side.
     *
     * @param width of the picture, and at most {@code height}, in millimetres
     */
    public Picture views(double width, double height, Type caption, Voice voice) {
        List<View> views = views();
        List<Bounds> rooms = views.stream().map(View::bounds).toList();
        double across = rooms.stream().mapToDouble(Bounds::width).sum();
        double tall = rooms.stream().mapToDouble(Bounds::height).max().orElse(1);
        double room = height - caption.leading() - 2;
        double scale = Math.max(across / (width - (views.size() - 1) * BETWEEN - views.size()), tall / (room - 1));
        double gap = (width - across / scale - views.size()) / (views.size() - 1);
        double foot = tall / scale + 1;
        Sketch sketch = new Sketch();
        double x = 0;
        for (int i = 0; i < views.size(); i++) {
            Picture picture = views.get(i)
                    .picture(voice.printing().view(views.get(i).eye().key()), scale);
            sketch.place(picture, new Point(x, foot - picture.height()));
            sketch.words(picture.title(), new Point(x, foot + caption.leading()), caption);
            x += picture.width() + gap;
        }
        return sketch.finished(voice.printing().pictureTied(), width, foot + caption.leading() + 2);
    }

    /** The sides that the three views look from, as a catalogue calls them. */
    public List<String> sides() {
        return Eye.on(visible.fold().fit().gift()).stream().map(Eye::key).toList();
    }

    /** The same three views at one scale, each by itself in at most this room; their titles name the direction. */
    public List<Picture> stills(double width, double height, PrintingWords words) {
        double scale = 0;
        for (View view : views()) {
            Bounds room = view.bounds();
            scale = Math.max(scale, Math.max(room.width() / (width - 1), room.height() / (height - 1)));
        }
        List<Picture> pictures = new ArrayList<>();
        for (View view : views()) {
            pictures.add(view.picture(words.view(view.eye().key()), scale));
        }
        return List.copyOf(pictures);
    }

    /**
     * The cloth at a moment of tying, in at most this room, with arrows at the corners that moved since the moment before.
     */
    public Picture moment(TyingMoment moment, double width, double height, PrintingWords words) {
        Fold tied = visible.fold();
        Gift gift = tied.fit().gift();
        List<TyingMoment> all = TyingMoment.of(tied.fit().tie(), gift);
        Fold now = TiedFold.at(moment, tied);
        View view = moment == TyingMoment.TIED ? corner() : seen(scene(moment, now), Eye.at(moment, gift));
        int place = all.indexOf(moment);
        Moves moves = place < 1 ? Moves.NONE : Moves.between(TiedFold.at(all.get(place - 1), tied), moment, now);
        return view.picture(
                moment == TyingMoment.TIED ? words.pictureDone() : words.pictureTying(), moves, width, height);
    }

    /** The tied gift alone, from a corner, in at most this room. */
    public Picture alone(double width, double height, PrintingWords words) {
        return corner().picture(words.pictureDone(), Moves.NONE, width, height);
    }

    /** What to do when a corner does not reach, where it can be drawn with this cloth: {@link Tying#ifShort}. */
    public Optional<Picture> whenShort(double width, double height, PrintingWords words) {
        Fit fit = visible.fold().fit();
        return switch (fit.tie()) {
            case FOUR_CORNER, EDGE_ALONG_EDGE, ERRAND -> instead(Tie.TWO_KNOT, width, height, words);
            case FLAT -> instead(Tie.ERRAND, width, height, words);
            case BOOKS -> Optional.of(moment(TyingMoment.ENDS_IN, width, height, words));
            default -> Optional.empty();
        };
    }

    /** The gift tied in another way. */
    private Optional<Picture> instead(Tie tie, double width, double height, PrintingWords words) {
        Fit fit = visible.fold().fit();
        Fit other = tie.fit(fit.gift(), fit.cloth(), fit.tail(), fit.placing());
        return other.holds()
                ? Optional.of(of(cloth, TiedFold.of(other), look).moment(TyingMoment.TIED, width, height, words))
                : Optional.empty();
    }

    /** The scene of a moment; for a handle, which is small, only the upper part of the gift. */
    private static Scene scene(TyingMoment moment, Fold now) {
        Gift gift = now.fit().gift();
        Scene scene = Scene.of(now, Body.of(gift));
        double top =
                now.knots().stream().mapToDouble(knot -> knot.at().z()).max().orElse(0);
        double share = gift instanceof Gift.Bottle ? 0.55 : 0.4;
        return moment == TyingMoment.HANDLE ? scene.above(top * share) : scene;
    }

    /** The last knot close up, as whoever tied it sees it. */
    public Picture knot(double width, double height, PrintingWords words) {
        List<ReefKnot> knots = visible.fold().knots();
        ReefKnot tied = knots.get(knots.size() - 1);
        ReefKnot flat = new ReefKnot(
                new Vector(0, 0, 0),
                new Vector(1, 0, 0),
                new Vector(0, 0, 1),
                tied.bunch(),
                tied.taken(),
                0,
                tied.leads());
        Scene close = new Scene(List.of(), List.of(flat), List.of(), Strands.OPEN);
        return seen(close, Eye.ABOVE).picture(words.pictureKnot(), Moves.NONE, width, height);
    }
}
