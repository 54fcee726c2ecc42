package hearthcloth.web.stash;

import hearthcloth.store.PhotoBook;
import hearthcloth.store.SavedPhoto;
import hearthcloth.web.kit.PageFrame;
import hearthcloth.words.Language;
import hearthcloth.words.picturing.PicturingWords;
import hearthcloth.words.stashing.StashingWords;
import hearthcloth.work.photo.PhotoSorting;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A photograph whose pieces are not all in the stash or left out.
 *
 * @param href its page
 * @param words when it was sent and how far it has come
 */
public record BegunPhoto(String href, String words) {

    /**
     * The form that asks for a photograph, as {@code part/photo-form.jte} shows it.
     *
     * @param begun photographs that were begun before, to go on with
     */
    public record Form(PageFrame frame, List<BegunPhoto> begun) {

        /** What is said on it. */
        public PicturingWords words() {
            return PicturingWords.in(frame.language());
        }
    }

    /** Those whose pieces are not all in the stash or left out. */
    public static List<BegunPhoto> all(PhotoBook book, Language language) {
        DateTimeFormatter format =
                DateTimeFormatter.ofPattern(StashingWords.in(language).photoDay(), Locale.UK);
        return book.all().stream()
                .flatMap(photo -> {
                    String day = format.format(Instant.parse(photo.kept()).atZone(ZoneId.systemDefault()));
                    Optional<Integer> open = photo.read().map(read -> open(read, book.taken(photo.id())));
                    return open.filter(count -> count == 0).isPresent()
                            ? Stream.empty()
                            : Stream.of(new BegunPhoto(
                                    "/stash/photo/" + photo.id(), state(photo, open, day, StashingWords.in(language))));
                })
                .toList();
    }

    private static String state(SavedPhoto photo, Optional<Integer> open, String day, StashingWords words) {
        return open.map(count -> words.photoBegun(day, words.pieces(count)))
                .orElseGet(() -> photo.refused().isEmpty() ? words.photoNotRead(day) : words.photoNothing(day));
    }

    /** How many pieces are neither in the stash nor left out. */
    public static int open(SavedPhoto.Read read, Set<String> taken) {
        return (int) read.sorting().pieces().stream()
                .filter(piece -> !piece.dropped() && !PhotoSorting.isAmong(piece.key(), taken))
                .count();
    }
}
