package hearthcloth.wish;

import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Wish;
import hearthcloth.stash.Csv;
import hearthcloth.stash.Problem;
import hearthcloth.stash.Stash;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A list of cloths as comma-separated text: a line a cloth, with the columns {@code name}, {@code gift} or {@code size}, and
 * one for any other wish of the command, called as its option is. What is wished for all stands in the command.
 */
public final class WishList {

    /** More cloths than this are a slip of the list; two digits name their folders. */
    public static final int MOST = 99;

    private static final String NAME = "name";
    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "x");
    private static final Set<String> NO = Set.of("no", "n", "false", "0");

    private final WishWords common;
    private final Stash stash;
    private final Ruler ruler;
    private final List<Sentence> faults = new ArrayList<>();

    /**
     * One cloth of the list.
     *
     * @param name whose it is or what it is for
     * @param gift what it is tied round, where it is for a gift
     */
    public record Line(String name, Wish wish, Optional<Patchwork> patchwork, Optional<GiftWish> gift) {

        /** What was asked for, in a few words: the gift, or the size. */
        public String asked(Voice voice) {
            return gift.map(wrapped -> RulingSentences.askedGift(
                            wrapped.gift().said(),
                            RulingSentences.tie(wrapped.tie().name())))
                    .or(() -> wish.target()
                            .size()
                            .map(size -> RulingSentences.isSize(
                                    "EXACT", Argument.text(""), Argument.of(size, Rounding.NEAREST))))
                    .orElseGet(RulingSentences::asked)
                    .in(voice);
        }
    }

    /**
     * A list.
     *
     * @param common what is wished for all
     */
    public WishList(WishWords common, Stash stash, Ruler ruler) {
        this.common = common;
        this.stash = stash;
        this.ruler = ruler;
    }

    /**
     * So many cloths, all as they are wished at a door, in whose words a fault names its field.
     *
     * @param voice in which the students are numbered
     */
    public List<Line> students(int count, Door door, Voice voice) {
        List<Line> lines = new ArrayList<>();
        Map<WishField, String> wishes = new EnumMap<>(WishField.class);
        wishes.putAll(common.given());
        try {
            requireExtent(wishes, door);
            for (int i = 1; i <= count; i++) {
                lines.add(line(voice.rooms().reporting().student(String.valueOf(i)), wishes, door));
            }
        } catch (BadInputException e) {
            faults.addAll(e.said());
        }
        check();
        return lines;
    }

    /**
     * The cloths of a list.
     *
     * @param shown the list's name, for sentences
     * @throws BadInputException with a sentence for each fault: line, field and mend
     */
    public List<Line> read(String text, String shown) {
        List<Problem> problems = new ArrayList<>();
        List<Csv.Row> rows = Csv.rows(text, MOST + 2, problems);
        problems.forEach(problem ->
                faults.add(RefusingSentences.listFile(Argument.text(shown), Argument.text(problem.toString()))));
        if (rows.size() < 2) {
            faults.add(RefusingSentences.listNone(Argument.text(shown)));
        }
        if (rows.size() > MOST + 1) {
            faults.add(RefusingSentences.listMost(Argument.text(shown), Argument.number(MOST)));
        }
        check();
        List<String> columns = columns(rows.get(0), shown);
        check();
        List<Line> lines = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Csv.Row row : rows.subList(1, rows.size())) {
            cloth(row, columns, shown, names).ifPresent(lines::add);
        }
        check();
        return lines;
    }

    private void check() {
        if (!faults.isEmpty()) {
            throw new BadInputException(ruler, faults);
        }
    }

    private List<String> columns(Csv.Row header, String shown) {
        List<String> known = new ArrayList<>(List.of(NAME));
        for (WishField field : WishField.values()) {
            known.add(word(field));
        }
        List<String> columns = new ArrayList<>();
        for (String cell : header.cells()) {
            String word = cell.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
            if (!word.isEmpty() && !known.contains(word)) {
                faults.add(whole(
                        shown,
                        header,
                        RefusingSentences.listColumn(
                                Argument.text(String.join(", ", known)), Argument.text(ListWords.plain(cell)))));
            }
            if (!word.isEmpty() && columns.contains(word)) {
                faults.add(at(shown, header, RefusingSentences.listTwice(Argument.text(word))));
            }
            columns.add(word);
        }
        if (!columns.contains(NAME)) {
            faults.add(whole(shown, header, RefusingSentences.listNoName()));
        }
        return columns;
    }

    private Optional<Line> cloth(Csv.Row row, List<String> columns, String shown, Set<String> names) {
        Map<WishField, String> wishes = new EnumMap<>(WishField.class);
        wishes.putAll(common.given());
        String name = "";
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = ListWords.line(row.cells().get(i)).strip();
            String column = i < columns.size() ? columns.get(i) : "";
            if (column.isEmpty() && !cell.isEmpty()) {
                faults.add(whole(shown, row, RefusingSentences.listUnder(Argument.text(ListWords.plain(cell)))));
            } else if (column.equals(NAME)) {
                name = cell;
            } else if (!cell.isEmpty()) {
                field(column).ifPresent(field -> put(wishes, field, cell));
            }
        }
        if (name.isEmpty()) {
            faults.add(at(shown, row, RefusingSentences.listMissing()));
        } else if (!names.add(name.toLowerCase(Locale.ROOT))) {
            faults.add(at(shown, row, RefusingSentences.listSame(Argument.text(ListWords.plain(name)))));
        }
        return line(shown, row, name, wishes);
    }

    /** One of two that exclude each other, said in the list, takes the place of the other said for all. */
    private static void put(Map<WishField, String> wishes, WishField field, String cell) {
        if (field == WishField.SIZE) {
            wishes.remove(WishField.GIFT);
            wishes.remove(WishField.TIE);
        } else if (field == WishField.GIFT) {
            wishes.remove(WishField.SIZE);
        }
        wishes.put(field, cell);
    }

    private static Optional<WishField> field(String column) {
        return Arrays.stream(WishField.values())
                .filter(field -> word(field).equals(column))
                .findFirst();
    }

    private static String word(WishField field) {
        return field.option().replaceFirst("^--", "");
    }

    private static Sentence whole(String shown, Csv.Row row, Sentence what) {
        return RefusingSentences.listWhole(Argument.number(row.line()), Argument.text(shown), what);
    }

    private static Sentence at(String shown, Csv.Row row, Sentence what) {
        return RefusingSentences.listAt(Argument.number(row.line()), Argument.text(shown), what);
    }

    private Optional<Line> line(String shown, Csv.Row row, String name, Map<WishField, String> wishes) {
        try {
            requireExtent(wishes, Door.PAGE);
            return Optional.of(line(name, wishes, Door.PAGE));
        } catch (BadInputException e) {
            e.said().forEach(sentence -> faults.add(at(shown, row, sentence)));
            return Optional.empty();
        }
    }

    private void requireExtent(Map<WishField, String> wishes, Door door) {
        boolean shaped = wishes.keySet().containsAll(Set.of(WishField.HEARTH, WishField.BARS, WishField.ROUNDS));
        if (!wishes.containsKey(WishField.SIZE) && !wishes.containsKey(WishField.GIFT) && !shaped) {
            OptionText text = new OptionText(door, ruler);
            text.fault(WishField.SIZE.option(), RefusingSentences.listExtent());
            text.check();
        }
    }

    private Line line(String name, Map<WishField, String> wishes, Door door) {
        WishWords words = words(wishes);
        Optional<GiftWish> bare = GiftWish.read(
                words.of(WishField.GIFT), words.of(WishField.TIE), ruler.unit(), new OptionText(door, ruler));
        var placing = PlacingReader.read(words, bare.isPresent(), ruler.unit());
        Optional<GiftWish> gift = bare.map(wish -> wish.placed(placing));
        Optional<Patchwork> patchwork = PatchworkReader.read(words, door);
        WishReader reader = new WishReader(words, stash, Usual.of(ruler), door);
        return new Line(name, reader.wish(gift), patchwork, gift);
    }

    /** The wishes; scraps are wished where the word is there at all. */
    private static WishWords words(Map<WishField, String> wishes) {
        Map<WishField, String> said = new EnumMap<>(WishField.class);
        said.putAll(wishes);
        String free = said.get(WishField.FREE);
        if (free != null && !isYes(free)) {
            said.remove(WishField.FREE);
        }
        return new WishWords(said);
    }

    private static boolean isYes(String cell) {
        String word = cell.toLowerCase(Locale.ROOT);
        if (!YES.contains(word) && !NO.contains(word)) {
            throw new BadInputException(RefusingSentences.listYes(Argument.text(ListWords.plain(cell))));
        }
        return YES.contains(word);
    }
}
