package hearthcloth.draw.tied;

import hearthcloth.cloth.Cloth;
import hearthcloth.draw.picture.Bounds;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.picture.Point;
import hearthcloth.draw.picture.Sketch;
import hearthcloth.draw.picture.Type;
import hearthcloth.wrap.Gift;
import hearthcloth.wrap.fold.Fold;
import hearthcloth.wrap.fold.Knot;
import hearthcloth.wrap.fold.Moment;
import hearthcloth.wrap.fold.Space;
import hearthcloth.wrap.fold.Visible;
import hearthcloth.wrap.tying.WhatShows;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Pictures of one cloth tied round one gift; all of them, and the figures of what shows, from the same facets. Not for
 * several threads.
 */
public final class TiedGift {

    private static final double BETWEEN = 6;

    private final Cloth cloth;
    private final Visible visible;
    private final Look look;
    private final Pattern pattern;
    private final Scene scene;
    private List<View> views = List.of();

    private TiedGift(Cloth cloth, Visible visible, Look look) {
        this.cloth = cloth;
        this.visible = visible;
        this.look = look;
        this.pattern = Pattern.of(cloth, visible.fold().laying());
        this.scene = Scene.of(visible);
    }

    /** Drawn when first asked for: a page that only turns the model needs none. */
    private List<View> views() {
        if (views.isEmpty()) {
            views = Eye.on(visible.fold().fit().gift()).stream()
                    .map(eye -> seen(scene, eye))
                    .toList();
        }
        return views;
    }

    /** The cloth as a fold ties it. */
    public static TiedGift of(Cloth cloth, Fold fold, Look look) {
        return new TiedGift(cloth, Visible.of(fold), look);
    }

    private View seen(Scene some, Eye eye) {
        return View.of(some, eye, pattern, visible.fold().fit().placing().out(), look);
    }

    public WhatShows whatShows() {
        return WhatShows.of(cloth, visible);
    }

    /** For a page that turns the gift. */
    public Model model() {
        return Model.of(cloth, visible, look);
    }

    /**
     * The flat net: the open cloth seen from the face that ends outside turned up, every fold of the drawn gift a line on
     * it. Printed, cut out and folded along the lines it makes the gift in paper, but for the knots.
     */
    public Picture net(double width) {
        return Net.of(cloth, visible.fold(), look, width);
    }

    /** How wide the open cloth lies, in millimetres: what {@link #net} brings into its width. */
    public double reach() {
        Pattern.Box box = Pattern.Box.of(visible.fold().laying().whole().corners());
        return box.u1() - box.u0();
    }

    /**
     * Three views at one scale, each with its caption, side by side.
     *
     * @param width of the picture, and at most {@code height}, in millimetres
     */
    public Picture views(double width, double height, Type caption) {
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
            Picture picture = views.get(i).picture(views.get(i).eye().words(), scale);
            sketch.place(picture, new Point(x, foot - picture.height()));
            sketch.words(picture.title(), new Point(x, foot + caption.leading()), caption);
            x += picture.width() + gap;
        }
        String title = "The gift tied, from above, from the front and from a corner";
        return sketch.finished(title, width, foot + caption.leading() + 2);
    }

    /** The same three views at one scale, each by itself in at most this room; their titles say from where. */
    public List<Picture> stills(double width, double height) {
        double scale = 0;
        for (View view : views()) {
            Bounds room = view.bounds();
            scale = Math.max(scale, Math.max(room.width() / (width - 1), room.height() / (height - 1)));
        }
        List<Picture> pictures = new ArrayList<>();
        for (View view : views()) {
            pictures.add(view.picture("The gift tied, " + lower(view.eye().words()), scale));
        }
        return List.copyOf(pictures);
    }

    private static String lower(String words) {
        return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** The cloth at a moment of tying, in at most this room: open cloth is seen from above, the tied gift from a corner. */
    public Picture moment(Moment moment, double width, double height) {
        Fold fold = visible.fold();
        if (moment == Moment.TIED) {
            return fitted(views().get(views().size() - 1), "Tied", width, height);
        }
        Eye eye = switch (moment) {
            case LAID -> Eye.HIGH;
            // a box's corners are held up towards two of its own corners
            case FIRST_PAIR -> fold.fit().gift() instanceof Gift.Box ? Eye.HIGH : Eye.CORNER;
            case WOUND -> Eye.CORNER;
            default -> Eye.ABOVE;
        };
        Scene open = Scene.of(moment.of(fold), Body.of(fold.fit().gift()));
        return fitted(seen(open, eye), "While tying", width, height);
    }

    /** The last knot close up, as it lies before whoever tied it. */
    public Picture knot(double width, double height) {
        List<Knot> knots = visible.fold().knots();
        Knot tied = knots.get(knots.size() - 1);
        Knot flat = new Knot(
                new Space(0, 0, 0),
                new Space(1, 0, 0),
                new Space(0, 0, 1),
                tied.bunch(),
                tied.taken(),
                0,
                tied.leads());
        Scene close = new Scene(List.of(), List.of(flat), List.of(), Strands.OPEN);
        return fitted(seen(close, Eye.ABOVE), "A reef knot", width, height);
    }

    private static Picture fitted(View view, String title, double width, double height) {
        Bounds room = view.bounds();
        double scale = Math.max(room.width() / (width - 1), room.height() / (height - 1));
        return view.picture(title, scale);
    }
}
