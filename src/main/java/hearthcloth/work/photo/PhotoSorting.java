package hearthcloth.work.photo;

import hearthcloth.measure.MeasureException;
import hearthcloth.photo.FabricClusters;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PhotographingSentences;
import hearthcloth.words.sentence.RefusedException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** All pieces of a photograph and the fabrics they are sorted into. Immutable. */
public record PhotoSorting(List<SortedPiece> pieces, List<PieceGroup> groups) {

    public PhotoSorting {
        pieces = List.copyOf(pieces);
        groups = List.copyOf(groups);
    }

    /**
     * The sorting as read: similar pieces in one fabric, each fabric with a suggested name that no other has.
     *
     * @param taken names of fabrics in the stash
     */
    public static PhotoSorting of(List<ReadPiece> read, Collection<String> taken) {
        List<SortedPiece> pieces = new ArrayList<>();
        List<PieceGroup> groups = new ArrayList<>();
        Set<String> names = keys(taken);
        for (List<ReadPiece> alike : FabricClusters.grouped(read)) {
            PieceGroup group = PieceGroup.suggested(
                    "f" + (groups.size() + 1), suggestion(alike.get(0).look(), names));
            groups.add(group);
            alike.forEach(piece -> pieces.add(new SortedPiece(
                    String.valueOf(piece.number()),
                    piece,
                    Optional.empty(),
                    new OutlineOrigin.Read(),
                    false,
                    false,
                    group.id())));
        }
        pieces.sort(Comparator.comparingInt(sorted -> sorted.piece().number()));
        return new PhotoSorting(pieces, groups);
    }

    private static Set<String> keys(Collection<String> names) {
        Set<String> keys = new HashSet<>();
        names.forEach(name -> keys.add(name.toLowerCase(Locale.ROOT)));
        return keys;
    }

    /**
     * A name by colour and figure that is not in {@code taken} (in small letters), such as {@code dark blue print 2};
     * it is added to {@code taken}.
     */
    static String suggestion(PieceAppearance look, Set<String> taken) {
        String plain = look.name() + (look.pattern() == PieceAppearance.Pattern.FIGURED ? " print" : "");
        String name = plain;
        for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
            name = plain + " " + i;
        }
        return name;
    }

    /**
     * A piece by its key.
     *
     * @throws MeasureException where it is no longer there
     */
    public SortedPiece piece(String key) {
        return find(key).orElseThrow(() -> new RefusedException(PhotographingSentences.gonePiece(Argument.text(key))));
    }

    public Optional<SortedPiece> find(String key) {
        return pieces.stream().filter(piece -> piece.key().equals(key)).findFirst();
    }

    /**
     * A fabric by its id.
     *
     * @throws MeasureException where it is no longer there
     */
    public PieceGroup group(String id) {
        return groups.stream()
                .filter(group -> group.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new RefusedException(PhotographingSentences.goneFabric()));
    }

    /** The pieces of a fabric, in reading order. */
    public List<SortedPiece> of(PieceGroup group) {
        return pieces.stream().filter(piece -> piece.group().equals(group.id())).toList();
    }

    /** Whether a piece, or what it was divided from or into, is among {@code keys}. */
    public static boolean isAmong(String key, Collection<String> keys) {
        return keys.stream().anyMatch(other -> SortedPiece.isSameCloth(key, other));
    }

    public PhotoSorting dropped(String key, boolean now) {
        return with(piece(key).dropped(now));
    }

    public PhotoSorting checked(String key, boolean now) {
        return with(piece(key).checked(now));
    }

    /**
     * All pieces whose doubts are still open are confirmed at once.
     *
     * @param taken keys of pieces in the stash, which stay as they are
     */
    public PhotoSorting allChecked(Collection<String> taken) {
        return each(piece -> isOpen(piece, taken) ? piece.checked(true) : piece);
    }

    /** All pieces whose doubts are still open and that run off the picture are left out at once. */
    public PhotoSorting withoutRim(Collection<String> taken) {
        return each(piece -> isOpen(piece, taken) && piece.isAtRim() ? piece.dropped(true) : piece);
    }

    private static boolean isOpen(SortedPiece piece, Collection<String> taken) {
        return !piece.isSure() && !piece.dropped() && !isAmong(piece.key(), taken);
    }

    private PhotoSorting each(UnaryOperator<SortedPiece> change) {
        return new PhotoSorting(pieces.stream().map(change).toList(), groups);
    }

    /** Changes what is said about a fabric. */
    public PhotoSorting told(PieceGroup group) {
        group(group.id());
        return new PhotoSorting(
                pieces,
                groups.stream()
                        .map(each -> each.id().equals(group.id()) ? group : each)
                        .toList());
    }

    /** Moves a piece to another fabric; to one of its own where {@code group} is empty. */
    public PhotoSorting moved(String key, Optional<String> group, Collection<String> taken) {
        SortedPiece piece = piece(key);
        if (group.isPresent()) {
            return with(piece.in(group(group.get()).id())).tidied();
        }
        PieceGroup fresh = fresh(piece.look(), taken);
        List<PieceGroup> more = new ArrayList<>(groups);
        more.add(fresh);
        return new PhotoSorting(pieces, more).with(piece.in(fresh.id())).tidied();
    }

    private PieceGroup fresh(PieceAppearance look, Collection<String> taken) {
        Set<String> names = keys(taken);
        groups.forEach(group -> names.add(group.name().toLowerCase(Locale.ROOT)));
        int number = groups.stream()
                        .mapToInt(group -> Integer.parseInt(group.id().substring(1)))
                        .max()
                        .orElse(0)
                + 1;
        return PieceGroup.suggested("f" + number, suggestion(look, names));
    }

    /** Replaces a piece by two, each in the fabric it resembles. */
    PhotoSorting parted(String key, List<SortedPiece> parts, Collection<String> taken) {
        SortedPiece whole = piece(key);
        List<SortedPiece> now = new ArrayList<>();
        List<PieceGroup> all = new ArrayList<>(groups);
        for (SortedPiece each : pieces) {
            if (!each.key().equals(key)) {
                now.add(each);
                continue;
            }
            for (SortedPiece part : parts) {
                PieceGroup group = new PhotoSorting(pieces, all).like(part.look(), whole, taken);
                if (!all.contains(group)) {
                    all.add(group);
                }
                now.add(part.in(group.id()));
            }
        }
        return new PhotoSorting(now, all).tidied();
    }

    /** The number for one more piece: beyond all there are, and all in {@code taken}, which may be parts. */
    int next(Collection<String> taken) {
        return Stream.concat(pieces.stream().map(SortedPiece::key), taken.stream())
                        .mapToInt(key -> Integer.parseInt(key.replaceAll("[a-z]", "")))
                        .max()
                        .orElse(0)
                + 1;
    }

    /** Adds a piece that was drawn in, in the fabric it resembles. */
    PhotoSorting with(ReadPiece drawn, OutlineOrigin.Drawn rim, Collection<String> names) {
        PieceGroup group = groups.stream()
                .filter(each -> of(each).get(0).look().isLike(drawn.look()))
                .findFirst()
                .orElseGet(() -> fresh(drawn.look(), names));
        List<PieceGroup> all = new ArrayList<>(groups);
        if (!all.contains(group)) {
            all.add(group);
        }
        List<SortedPiece> now = new ArrayList<>(pieces);
        now.add(new SortedPiece(
                String.valueOf(drawn.number()), drawn, Optional.empty(), rim, false, false, group.id()));
        return new PhotoSorting(now, all);
    }

    private PieceGroup like(PieceAppearance look, SortedPiece whole, Collection<String> taken) {
        if (whole.look().isLike(look)) {
            return group(whole.group());
        }
        return groups.stream()
                .filter(group -> of(group).stream()
                        .filter(piece -> !piece.key().equals(whole.key()))
                        .findFirst()
                        .filter(piece -> piece.look().isLike(look))
                        .isPresent())
                .findFirst()
                .orElseGet(() -> fresh(look, taken));
    }

    PhotoSorting with(SortedPiece piece) {
        return new PhotoSorting(
                pieces.stream()
                        .map(each -> each.key().equals(piece.key()) ? piece : each)
                        .toList(),
                groups);
    }

    /** The sorting without fabrics that have no piece left. */
    private PhotoSorting tidied() {
        return new PhotoSorting(
                pieces, groups.stream().filter(group -> !of(group).isEmpty()).toList());
    }
}
