package hearthcloth.wish;

import hearthcloth.cloth.layout.Order;
import hearthcloth.measure.Length;
import hearthcloth.measure.Measures;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.Patchwork;
import hearthcloth.plan.model.Patchwork.Blocks;
import hearthcloth.plan.model.Patchwork.Direction;
import hearthcloth.plan.model.Patchwork.ScrapRule;
import hearthcloth.plan.model.Patchwork.ScrapWishes;
import hearthcloth.plan.model.Patchwork.Setting;
import hearthcloth.plan.model.Patchwork.Sizes;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.RefusedException;
import hearthcloth.words.sentence.RefusingSentences;
import hearthcloth.words.sentence.RulingSentences;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** From the words to a cloth of scraps or blocks, where one is wished. */
public final class PatchworkReader {

    private static final Pattern GRID = Pattern.compile("(\\d{1,3})\\s*(?:x|×|by)\\s*(\\d{1,3})");
    private static final Map<String, ScrapRule> RULES = Map.of(
            "as-they-are",
            ScrapRule.AS_THEY_ARE,
            "as they are",
            ScrapRule.AS_THEY_ARE,
            "cut",
            ScrapRule.CUT,
            "either",
            ScrapRule.EITHER);
    private static final int USUAL_ROUNDS = 2;
    private static final int MOST_ROUNDS = 8;
    private static final Length MOST_TRIM = Length.inches(20);

    /** What is said of scraps alone. */
    private static final List<WishField> SCRAP_FIELDS = List.of(
            WishField.SCRAPS, WishField.WITH, WishField.MIDDLE, WishField.MOST_TRIM, WishField.SIZES, WishField.BANDS);

    private final WishWords words;
    private final OptionText text;
    private final @Nullable Unit unit;

    private PatchworkReader(WishWords words, OptionText text, @Nullable Unit unit) {
        this.words = words;
        this.text = text;
        this.unit = unit;
    }

    /**
     * The patchwork that is wished; empty where a hearth and its rounds are. A length has to name its unit.
     *
     * @throws BadInputException with a sentence for each option that cannot be used
     */
    public static Optional<Patchwork> read(WishWords words, Door door) {
        return new PatchworkReader(words, new OptionText(door, Ruler.EIGHTHS), null).patchwork();
    }

    /** The same; a length that names no unit is in this ruler's. */
    public static Optional<Patchwork> read(WishWords words, Door door, Ruler ruler) {
        return new PatchworkReader(words, new OptionText(door, ruler), ruler.unit()).patchwork();
    }

    private Optional<Patchwork> patchwork() {
        if (!words.has(WishField.FREE) && !words.has(WishField.BLOCKS)) {
            alone(WishField.SETTING.option(), words.of(WishField.SETTING), WishField.BLOCKS.option());
            SCRAP_FIELDS.forEach(field -> alone(field.option(), words.of(field), "--free"));
            text.check();
            return Optional.empty();
        }
        alone(WishField.HEARTH.option(), words.of(WishField.HEARTH), "");
        alone(WishField.BARS.option(), words.of(WishField.BARS), "");
        alone(WishField.SHOW.option(), words.of(WishField.SHOW), "");
        Optional<Blocks> blocks = blocks();
        ScrapRule rule = text.read(
                WishField.SCRAPS.option(), words.of(WishField.SCRAPS), ScrapRule.EITHER, PatchworkReader::rule);
        ScrapWishes wishes = wishes(blocks.isPresent());
        text.check();
        return Optional.of(new Patchwork(blocks, words.has(WishField.FREE), rule, wishes));
    }

    private ScrapWishes wishes(boolean blocks) {
        if (blocks) {
            SCRAP_FIELDS.stream()
                    .filter(field -> field != WishField.SCRAPS)
                    .forEach(field -> alone(field.option(), words.of(field), "--free, without --blocks or --rounds"));
        }
        Optional<Length> most = text.read(
                WishField.MOST_TRIM.option(),
                words.of(WishField.MOST_TRIM),
                Optional.empty(),
                written -> Optional.of(trim(written)));
        Sizes sizes = text.word(WishField.SIZES.option(), words.of(WishField.SIZES), Sizes.ANY);
        Direction bands = text.word(WishField.BANDS.option(), words.of(WishField.BANDS), Direction.ANY);
        List<String> with = pieces(words.of(WishField.WITH));
        List<String> middle = pieces(words.of(WishField.MIDDLE));
        if (middle.size() > 1) {
            text.fault(WishField.MIDDLE.option(), RefusingSentences.wishMiddle());
        }
        if (!with.isEmpty() && !middle.isEmpty()) {
            text.fault(
                    WishField.MIDDLE.option(), RefusingSentences.wishNotWith(Argument.text(WishField.WITH.option())));
        }
        if (bands != Direction.ANY && !(with.isEmpty() && middle.isEmpty())) {
            text.fault(WishField.BANDS.option(), RefusingSentences.wishBands());
        }
        return new ScrapWishes(with, middle.stream().findFirst(), most, sizes, bands);
    }

    private static List<String> pieces(@Nullable String written) {
        return written == null
                ? List.of()
                : Arrays.stream(written.split("[,;\\s]+", -1))
                        .map(String::strip)
                        .filter(id -> !id.isEmpty())
                        .toList();
    }

    private Length trim(String written) {
        Length length = Measures.length(written, unit);
        if (length.isNegative() || length.isMoreThan(MOST_TRIM)) {
            throw new RefusedException(RulingSentences.ruleMost(
                    Argument.of(MOST_TRIM, Rounding.DOWN), "yes", Argument.text(ListWords.plain(written))));
        }
        return length;
    }

    private void alone(String option, @Nullable String written, String belongs) {
        if (written != null) {
            text.fault(
                    option,
                    belongs.isEmpty()
                            ? RefusingSentences.wishGoesBars()
                            : RefusingSentences.wishGoes(Argument.text(belongs)));
        }
    }

    private Optional<Blocks> blocks() {
        if (!words.has(WishField.BLOCKS) && !words.has(WishField.ROUNDS)) {
            alone(WishField.SETTING.option(), words.of(WishField.SETTING), WishField.BLOCKS.option());
            return Optional.empty();
        }
        int[] grid = text.read(
                WishField.BLOCKS.option(), words.of(WishField.BLOCKS), new int[] {1, 1}, PatchworkReader::grid);
        int rounds = text.whole(WishField.ROUNDS.option(), words.of(WishField.ROUNDS), USUAL_ROUNDS, 1, MOST_ROUNDS);
        Order order =
                text.read(WishField.ORDER.option(), words.of(WishField.ORDER), Order.ROUND, PatchworkReader::order);
        Optional<Setting> setting = text.read(
                WishField.SETTING.option(),
                words.of(WishField.SETTING),
                Optional.empty(),
                written -> Optional.of(setting(written)));
        text.check();
        return Optional.of(new Blocks(grid[0], grid[1], rounds, order, setting));
    }

    private static int[] grid(String written) {
        Matcher matcher = GRID.matcher(written.strip().toLowerCase(Locale.ROOT));
        if (!matcher.matches()) {
            throw new RefusedException(RefusingSentences.wishBlocks(Argument.text(written)));
        }
        int across = Integer.parseInt(matcher.group(1));
        int down = Integer.parseInt(matcher.group(2));
        int most = Patchwork.MOST_BLOCKS;
        if (across < 1 || down < 1 || across > most || down > most) {
            throw new RefusedException(
                    RefusingSentences.wishBlocksReach(Argument.number(most), Argument.text(written)));
        }
        return new int[] {across, down};
    }

    private static Order order(String written) {
        return Order.named(written)
                .orElseThrow(() -> new RefusedException(RefusingSentences.wishOrder(Argument.text(written))));
    }

    private static Setting setting(String written) {
        return Setting.named(written)
                .orElseThrow(() -> new RefusedException(RefusingSentences.wishSetting(Argument.text(written))));
    }

    private static ScrapRule rule(String written) {
        ScrapRule rule = RULES.get(written.strip().toLowerCase(Locale.ROOT));
        if (rule == null) {
            throw new RefusedException(RefusingSentences.wishScraps(Argument.text(written)));
        }
        return rule;
    }
}
