package hearthcloth.words.sentence;

import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of ruling. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class RulingSentences implements Room {

    static final Room ROOM = new RulingSentences();

    private RulingSentences() {}

    public static Sentence asked() {
        return new Sentence(ROOM, "asked");
    }

    public static Sentence askedGift(Argument gift, Argument tie) {
        return new Sentence(ROOM, "asked.gift", gift, tie);
    }

    public static Sentence bars(Argument rule) {
        return new Sentence(ROOM, "bars", rule);
    }

    public static Sentence bendBars(Argument rule, Argument widths) {
        return new Sentence(ROOM, "bend.bars", rule, widths);
    }

    public static Sentence bendColours(String found, Argument scheme, Argument ways) {
        return new Sentence(ROOM, "bend.colours", new Argument.Text(found), scheme, ways);
    }

    public static Sentence bendHearth(Argument rule, Argument share, Argument size) {
        return new Sentence(ROOM, "bend.hearth", rule, share, size);
    }

    public static Sentence bendJoins(int joins, Argument most) {
        return new Sentence(ROOM, "bend.joins", new Argument.Count(joins), most);
    }

    public static Sentence bendMiddle(Argument lies, Argument wanted) {
        return new Sentence(ROOM, "bend.middle", lies, wanted);
    }

    public static Sentence bendOrder(String found, String wanted) {
        return new Sentence(ROOM, "bend.order", new Argument.Text(found), new Argument.Text(wanted));
    }

    public static Sentence bendRounds(int rounds, Argument rule) {
        return new Sentence(ROOM, "bend.rounds", new Argument.Count(rounds), rule);
    }

    public static Sentence bendSize(Argument rule, Argument size) {
        return new Sentence(ROOM, "bend.size", rule, size);
    }

    public static Sentence bendWidths(Argument least, Argument most) {
        return new Sentence(ROOM, "bend.widths", least, most);
    }

    public static Sentence colours(Argument rule) {
        return new Sentence(ROOM, "colours", rule);
    }

    public static Sentence fileField(Argument field, Argument what) {
        return new Sentence(ROOM, "file.field", field, what);
    }

    public static Sentence fileFormat(Argument guideline, Argument plan, Argument text) {
        return new Sentence(ROOM, "file.format", guideline, plan, text);
    }

    public static Sentence fileGuideline(Argument what) {
        return new Sentence(ROOM, "file.guideline", what);
    }

    public static Sentence fileJson(Argument line, Argument text, String why) {
        return new Sentence(ROOM, "file.json", line, text, new Argument.Text(why));
    }

    public static Sentence fileKind(String kind, Argument signs) {
        return new Sentence(ROOM, "file.kind", new Argument.Text(kind), signs);
    }

    public static Sentence fileLong(Argument letters, Argument most) {
        return new Sentence(ROOM, "file.long", letters, most);
    }

    public static Sentence fileMissing() {
        return new Sentence(ROOM, "file.missing");
    }

    public static Sentence fileObject(Argument sign) {
        return new Sentence(ROOM, "file.object", sign);
    }

    public static Sentence filePatches(String why) {
        return new Sentence(ROOM, "file.patches", new Argument.Text(why));
    }

    public static Sentence filePicture(String why) {
        return new Sentence(ROOM, "file.picture", new Argument.Text(why));
    }

    public static Sentence filePlan(Argument what) {
        return new Sentence(ROOM, "file.plan", what);
    }

    public static Sentence fileUnknown(Argument names) {
        return new Sentence(ROOM, "file.unknown", names);
    }

    public static Sentence fileWhole(Argument least, Argument most, String there) {
        return new Sentence(ROOM, "file.whole", least, most, new Argument.Text(there));
    }

    public static Sentence giftBooks(Argument sizes) {
        return new Sentence(ROOM, "gift.books", sizes);
    }

    public static Sentence giftBottle(Argument across, Argument high) {
        return new Sentence(ROOM, "gift.bottle", across, high);
    }

    public static Sentence giftBottles(Argument across, Argument high) {
        return new Sentence(ROOM, "gift.bottles", across, high);
    }

    public static Sentence giftBox(Argument sizes) {
        return new Sentence(ROOM, "gift.box", sizes);
    }

    public static Sentence giftRoll(Argument across, Argument length) {
        return new Sentence(ROOM, "gift.roll", across, length);
    }

    public static Sentence giftRound(Argument across) {
        return new Sentence(ROOM, "gift.round", across);
    }

    public static Sentence hearth(Argument rule) {
        return new Sentence(ROOM, "hearth", rule);
    }

    public static Sentence isBars(String kind, Argument most, Argument width) {
        return new Sentence(ROOM, "is.bars", new Argument.Text(kind), most, width);
    }

    public static Sentence isColours(String open, Argument ways) {
        return new Sentence(ROOM, "is.colours", new Argument.Text(open), ways);
    }

    public static Sentence isGift(Argument gift, Argument tie) {
        return new Sentence(ROOM, "is.gift", gift, tie);
    }

    public static Sentence isHearth(String kind, Argument least, Argument most, Argument size) {
        return new Sentence(ROOM, "is.hearth", new Argument.Text(kind), least, most, size);
    }

    public static Sentence isRounds(String least, int most) {
        return new Sentence(ROOM, "is.rounds", new Argument.Text(least), new Argument.Count(most));
    }

    public static Sentence isSize(String kind, Argument most, Argument size) {
        return new Sentence(ROOM, "is.size", new Argument.Text(kind), most, size);
    }

    public static Sentence isWay(Argument idea, Argument scheme) {
        return new Sentence(ROOM, "is.way", idea, scheme);
    }

    public static Sentence joins(Argument least, int most) {
        return new Sentence(ROOM, "joins", least, new Argument.Count(most));
    }

    public static Sentence middle(String middle) {
        return new Sentence(ROOM, "middle", new Argument.Text(middle));
    }

    public static Sentence order(String order) {
        return new Sentence(ROOM, "order", new Argument.Text(order));
    }

    public static Sentence orderOpen() {
        return new Sentence(ROOM, "order.open");
    }

    public static Sentence plannerMissing() {
        return new Sentence(ROOM, "planner.missing");
    }

    public static Sentence rounds(Argument rule) {
        return new Sentence(ROOM, "rounds", rule);
    }

    public static Sentence ruleBar(Argument text) {
        return new Sentence(ROOM, "rule.bar", text);
    }

    public static Sentence ruleMeasure(String rule, Argument text) {
        return new Sentence(ROOM, "rule.measure", new Argument.Text(rule), text);
    }

    public static Sentence ruleMost(Argument most, String none, Argument text) {
        return new Sentence(ROOM, "rule.most", most, new Argument.Text(none), text);
    }

    public static Sentence ruleRange(Argument text) {
        return new Sentence(ROOM, "rule.range", text);
    }

    public static Sentence ruleReach(Argument text) {
        return new Sentence(ROOM, "rule.reach", text);
    }

    public static Sentence ruleRounds(Argument most, Argument text) {
        return new Sentence(ROOM, "rule.rounds", most, text);
    }

    public static Sentence ruleSeam(Argument names, Argument text) {
        return new Sentence(ROOM, "rule.seam", names, text);
    }

    public static Sentence ruleShare(Argument text) {
        return new Sentence(ROOM, "rule.share", text);
    }

    public static Sentence ruleWay(Argument names, Argument text) {
        return new Sentence(ROOM, "rule.way", names, text);
    }

    public static Sentence ruleWider() {
        return new Sentence(ROOM, "rule.wider");
    }

    public static Sentence seam(Argument name, String seam) {
        return new Sentence(ROOM, "seam", name, new Argument.Text(seam));
    }

    public static Sentence sewn(String corner, Argument first, Argument narrow, Argument seam, Argument second, Argument wide) {
        return new Sentence(ROOM, "sewn", new Argument.Text(corner), first, narrow, seam, second, wide);
    }

    public static Sentence size(Argument rule) {
        return new Sentence(ROOM, "size", rule);
    }

    public static Sentence suited(String tie) {
        return new Sentence(ROOM, "suited", new Argument.Text(tie));
    }

    public static Sentence tie(String tie) {
        return new Sentence(ROOM, "tie", new Argument.Text(tie));
    }

    @Override
    public String name() {
        return "ruling";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "asked" -> "";
            case "asked.gift" -> "tt";
            case "bars" -> "t";
            case "bend.bars" -> "tt";
            case "bend.colours" -> "wtt";
            case "bend.hearth" -> "ttt";
            case "bend.joins" -> "ct";
            case "bend.middle" -> "tt";
            case "bend.order" -> "ww";
            case "bend.rounds" -> "ct";
            case "bend.size" -> "tt";
            case "bend.widths" -> "tt";
            case "colours" -> "t";
            case "file.field" -> "tt";
            case "file.format" -> "ttt";
            case "file.guideline" -> "t";
            case "file.json" -> "ttw";
            case "file.kind" -> "wt";
            case "file.long" -> "tt";
            case "file.missing" -> "";
            case "file.object" -> "t";
            case "file.patches" -> "w";
            case "file.picture" -> "w";
            case "file.plan" -> "t";
            case "file.unknown" -> "t";
            case "file.whole" -> "ttw";
            case "gift.books" -> "t";
            case "gift.bottle" -> "tt";
            case "gift.bottles" -> "tt";
            case "gift.box" -> "t";
            case "gift.roll" -> "tt";
            case "gift.round" -> "t";
            case "hearth" -> "t";
            case "is.bars" -> "wtt";
            case "is.colours" -> "wt";
            case "is.gift" -> "tt";
            case "is.hearth" -> "wttt";
            case "is.rounds" -> "wc";
            case "is.size" -> "wtt";
            case "is.way" -> "tt";
            case "joins" -> "tc";
            case "middle" -> "w";
            case "order" -> "w";
            case "order.open" -> "";
            case "planner.missing" -> "";
            case "rounds" -> "t";
            case "rule.bar" -> "t";
            case "rule.measure" -> "wt";
            case "rule.most" -> "twt";
            case "rule.range" -> "t";
            case "rule.reach" -> "t";
            case "rule.rounds" -> "tt";
            case "rule.seam" -> "tt";
            case "rule.share" -> "t";
            case "rule.way" -> "tt";
            case "rule.wider" -> "";
            case "seam" -> "tw";
            case "sewn" -> "wttttt";
            case "size" -> "t";
            case "suited" -> "w";
            case "tie" -> "w";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        RulingWords words = voice.rooms().ruling();
        return switch (sentence.key()) {
            case "asked" -> words.asked();
            case "asked.gift" -> words.askedGift(sentence.text(0, voice), sentence.text(1, voice));
            case "bars" -> words.bars(sentence.text(0, voice));
            case "bend.bars" -> words.bendBars(sentence.text(0, voice), sentence.text(1, voice));
            case "bend.colours" -> words.bendColours(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice));
            case "bend.hearth" -> words.bendHearth(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "bend.joins" -> words.bendJoins(sentence.count(0), sentence.text(1, voice));
            case "bend.middle" -> words.bendMiddle(sentence.text(0, voice), sentence.text(1, voice));
            case "bend.order" -> words.bendOrder(sentence.word(0), sentence.word(1));
            case "bend.rounds" -> words.bendRounds(sentence.count(0), sentence.text(1, voice));
            case "bend.size" -> words.bendSize(sentence.text(0, voice), sentence.text(1, voice));
            case "bend.widths" -> words.bendWidths(sentence.text(0, voice), sentence.text(1, voice));
            case "colours" -> words.colours(sentence.text(0, voice));
            case "file.field" -> words.fileField(sentence.text(0, voice), sentence.text(1, voice));
            case "file.format" -> words.fileFormat(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "file.guideline" -> words.fileGuideline(sentence.text(0, voice));
            case "file.json" -> words.fileJson(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2));
            case "file.kind" -> words.fileKind(sentence.word(0), sentence.text(1, voice));
            case "file.long" -> words.fileLong(sentence.text(0, voice), sentence.text(1, voice));
            case "file.missing" -> words.fileMissing();
            case "file.object" -> words.fileObject(sentence.text(0, voice));
            case "file.patches" -> words.filePatches(sentence.word(0));
            case "file.picture" -> words.filePicture(sentence.word(0));
            case "file.plan" -> words.filePlan(sentence.text(0, voice));
            case "file.unknown" -> words.fileUnknown(sentence.text(0, voice));
            case "file.whole" -> words.fileWhole(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2));
            case "gift.books" -> words.giftBooks(sentence.text(0, voice));
            case "gift.bottle" -> words.giftBottle(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.bottles" -> words.giftBottles(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.box" -> words.giftBox(sentence.text(0, voice));
            case "gift.roll" -> words.giftRoll(sentence.text(0, voice), sentence.text(1, voice));
            case "gift.round" -> words.giftRound(sentence.text(0, voice));
            case "hearth" -> words.hearth(sentence.text(0, voice));
            case "is.bars" -> words.isBars(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice));
            case "is.colours" -> words.isColours(sentence.word(0), sentence.text(1, voice));
            case "is.gift" -> words.isGift(sentence.text(0, voice), sentence.text(1, voice));
            case "is.hearth" -> words.isHearth(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice));
            case "is.rounds" -> words.isRounds(sentence.word(0), sentence.count(1));
            case "is.size" -> words.isSize(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice));
            case "is.way" -> words.isWay(sentence.text(0, voice), sentence.text(1, voice));
            case "joins" -> words.joins(sentence.text(0, voice), sentence.count(1));
            case "middle" -> words.middle(sentence.word(0));
            case "order" -> words.order(sentence.word(0));
            case "order.open" -> words.orderOpen();
            case "planner.missing" -> words.plannerMissing();
            case "rounds" -> words.rounds(sentence.text(0, voice));
            case "rule.bar" -> words.ruleBar(sentence.text(0, voice));
            case "rule.measure" -> words.ruleMeasure(sentence.word(0), sentence.text(1, voice));
            case "rule.most" -> words.ruleMost(sentence.text(0, voice), sentence.word(1), sentence.text(2, voice));
            case "rule.range" -> words.ruleRange(sentence.text(0, voice));
            case "rule.reach" -> words.ruleReach(sentence.text(0, voice));
            case "rule.rounds" -> words.ruleRounds(sentence.text(0, voice), sentence.text(1, voice));
            case "rule.seam" -> words.ruleSeam(sentence.text(0, voice), sentence.text(1, voice));
            case "rule.share" -> words.ruleShare(sentence.text(0, voice));
            case "rule.way" -> words.ruleWay(sentence.text(0, voice), sentence.text(1, voice));
            case "rule.wider" -> words.ruleWider();
            case "seam" -> words.seam(sentence.text(0, voice), sentence.word(1));
            case "sewn" -> words.sewn(sentence.word(0), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice), sentence.text(4, voice), sentence.text(5, voice));
            case "size" -> words.size(sentence.text(0, voice));
            case "suited" -> words.suited(sentence.word(0));
            case "tie" -> words.tie(sentence.word(0));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
