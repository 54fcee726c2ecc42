package hearthcloth.words.sentence;

import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.speech.Voice;
import org.jspecify.annotations.Nullable;

/** Sentences of the room of planning. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class PlanningSentences implements Room {

    static final Room ROOM = new PlanningSentences();

    private PlanningSentences() {}

    public static Sentence barNoPiece(Argument piece, Argument width) {
        return new Sentence(ROOM, "bar.noPiece", piece, width);
    }

    public static Sentence betterCuts() {
        return new Sentence(ROOM, "better.cuts");
    }

    public static Sentence betterFewerBars() {
        return new Sentence(ROOM, "better.fewerBars");
    }

    public static Sentence betterHearth() {
        return new Sentence(ROOM, "better.hearth");
    }

    public static Sentence betterJoins() {
        return new Sentence(ROOM, "better.joins");
    }

    public static Sentence betterLost() {
        return new Sentence(ROOM, "better.lost");
    }

    public static Sentence betterMoreBars() {
        return new Sentence(ROOM, "better.moreBars");
    }

    public static Sentence betterNarrower() {
        return new Sentence(ROOM, "better.narrower");
    }

    public static Sentence betterPieces() {
        return new Sentence(ROOM, "better.pieces");
    }

    public static Sentence betterSize() {
        return new Sentence(ROOM, "better.size");
    }

    public static Sentence betterTouched() {
        return new Sentence(ROOM, "better.touched");
    }

    public static Sentence betterWider() {
        return new Sentence(ROOM, "better.wider");
    }

    public static Sentence cabinTitle(String scraps) {
        return new Sentence(ROOM, "cabin.title", new Argument.Text(scraps));
    }

    public static Sentence cabinsFew(Argument across, Argument down, int rounds, Argument size) {
        return new Sentence(ROOM, "cabins.few", across, down, new Argument.Count(rounds), size);
    }

    public static Sentence cabinsTitle(Argument across, Argument down, String scraps, Argument setting) {
        return new Sentence(ROOM, "cabins.title", across, down, new Argument.Text(scraps), setting);
    }

    public static Sentence chosenBands(String direction) {
        return new Sentence(ROOM, "chosen.bands", new Argument.Text(direction));
    }

    public static Sentence chosenBars(Argument width) {
        return new Sentence(ROOM, "chosen.bars", width);
    }

    public static Sentence chosenByHand() {
        return new Sentence(ROOM, "chosen.byHand");
    }

    public static Sentence chosenCabin(Argument order, int rounds) {
        return new Sentence(ROOM, "chosen.cabin", order, new Argument.Count(rounds));
    }

    public static Sentence chosenCabins(Argument across, Argument count, Argument down, Argument order, int rounds) {
        return new Sentence(ROOM, "chosen.cabins", across, count, down, order, new Argument.Count(rounds));
    }

    public static Sentence chosenHearth(Argument size) {
        return new Sentence(ROOM, "chosen.hearth", size);
    }

    public static Sentence chosenMiddle(Argument piece) {
        return new Sentence(ROOM, "chosen.middle", piece);
    }

    public static Sentence chosenMixed() {
        return new Sentence(ROOM, "chosen.mixed");
    }

    public static Sentence chosenOrder(Argument order) {
        return new Sentence(ROOM, "chosen.order", order);
    }

    public static Sentence chosenOuter(Argument size) {
        return new Sentence(ROOM, "chosen.outer", size);
    }

    public static Sentence chosenReadyBars(Argument widths) {
        return new Sentence(ROOM, "chosen.readyBars", widths);
    }

    public static Sentence chosenReadyRounds(Argument rounds) {
        return new Sentence(ROOM, "chosen.readyRounds", rounds);
    }

    public static Sentence chosenRound(Argument number, Argument widths) {
        return new Sentence(ROOM, "chosen.round", number, widths);
    }

    public static Sentence chosenRounds(int n) {
        return new Sentence(ROOM, "chosen.rounds", new Argument.Count(n));
    }

    public static Sentence chosenSizeFound(Argument limit) {
        return new Sentence(ROOM, "chosen.sizeFound", limit);
    }

    public static Sentence chosenSizeScraps(Argument limit, Argument side) {
        return new Sentence(ROOM, "chosen.sizeScraps", limit, side);
    }

    public static Sentence chosenSizeSteps() {
        return new Sentence(ROOM, "chosen.sizeSteps");
    }

    public static Sentence chosenSizeSure(Argument step) {
        return new Sentence(ROOM, "chosen.sizeSure", step);
    }

    public static Sentence chosenSmaller(Argument percent) {
        return new Sentence(ROOM, "chosen.smaller", percent);
    }

    public static Sentence chosenWith(Argument pieces) {
        return new Sentence(ROOM, "chosen.with", pieces);
    }

    public static Sentence colour(Argument what) {
        return new Sentence(ROOM, "colour", what);
    }

    public static Sentence colourApart() {
        return new Sentence(ROOM, "colour.apart");
    }

    public static Sentence colourBack(Argument what) {
        return new Sentence(ROOM, "colour.back", what);
    }

    public static Sentence colourCouldLie(Argument length) {
        return new Sentence(ROOM, "colour.couldLie", length);
    }

    public static Sentence colourField() {
        return new Sentence(ROOM, "colour.field");
    }

    public static Sentence colourHearthAll() {
        return new Sentence(ROOM, "colour.hearthAll");
    }

    public static Sentence colourHearthNone() {
        return new Sentence(ROOM, "colour.hearthNone");
    }

    public static Sentence colourHearthSome(Argument share) {
        return new Sentence(ROOM, "colour.hearthSome", share);
    }

    public static Sentence colourMixed(int n) {
        return new Sentence(ROOM, "colour.mixed", new Argument.Count(n));
    }

    public static Sentence colourOutside(Argument fabric, Argument share) {
        return new Sentence(ROOM, "colour.outside", fabric, share);
    }

    public static Sentence colourOutsideAlways(Argument fabric, Argument least, Argument most) {
        return new Sentence(ROOM, "colour.outsideAlways", fabric, least, most);
    }

    public static Sentence colourOutsideRange(Argument fabric, Argument least, Argument most) {
        return new Sentence(ROOM, "colour.outsideRange", fabric, least, most);
    }

    public static Sentence colourPrice(int n) {
        return new Sentence(ROOM, "colour.price", new Argument.Count(n));
    }

    public static Sentence colourPriceJoins(int n) {
        return new Sentence(ROOM, "colour.priceJoins", new Argument.Count(n));
    }

    public static Sentence colourProven() {
        return new Sentence(ROOM, "colour.proven");
    }

    public static Sentence colourSame(Argument share) {
        return new Sentence(ROOM, "colour.same", share);
    }

    public static Sentence colourTied(Argument what) {
        return new Sentence(ROOM, "colour.tied", what);
    }

    public static Sentence fabricUnknown(Argument name, Argument names) {
        return new Sentence(ROOM, "fabric.unknown", name, names);
    }

    public static Sentence good(Argument idea, Argument points) {
        return new Sentence(ROOM, "good", idea, points);
    }

    public static Sentence goodAlone(Argument idea) {
        return new Sentence(ROOM, "good.alone", idea);
    }

    public static Sentence heapEmpty() {
        return new Sentence(ROOM, "heap.empty");
    }

    public static Sentence hearth() {
        return new Sentence(ROOM, "hearth");
    }

    public static Sentence hearthNoPiece(Argument piece, Argument size) {
        return new Sentence(ROOM, "hearth.noPiece", piece, size);
    }

    public static Sentence moreAdded(Argument pieces) {
        return new Sentence(ROOM, "more.added", pieces);
    }

    public static Sentence morePiece(Argument fabric, Argument size) {
        return new Sentence(ROOM, "more.piece", fabric, size);
    }

    public static Sentence morePieces(Argument fabric, Argument number, Argument size) {
        return new Sentence(ROOM, "more.pieces", fabric, number, size);
    }

    public static Sentence moreTime() {
        return new Sentence(ROOM, "more.time");
    }

    public static Sentence needFabrics() {
        return new Sentence(ROOM, "need.fabrics");
    }

    public static Sentence needMore(Argument has, Argument more, Argument takes) {
        return new Sentence(ROOM, "need.more", has, more, takes);
    }

    public static Sentence order(String order) {
        return new Sentence(ROOM, "order", new Argument.Text(order));
    }

    public static Sentence pieceLine(Argument fabric, Argument line, Argument size) {
        return new Sentence(ROOM, "piece.line", fabric, line, size);
    }

    public static Sentence pointFewestBars(Argument n) {
        return new Sentence(ROOM, "point.fewestBars", n);
    }

    public static Sentence pointFewestCuts(Argument n) {
        return new Sentence(ROOM, "point.fewestCuts", n);
    }

    public static Sentence pointFewestJoins(Argument n) {
        return new Sentence(ROOM, "point.fewestJoins", n);
    }

    public static Sentence pointJoins(int n) {
        return new Sentence(ROOM, "point.joins", new Argument.Count(n));
    }

    public static Sentence pointJoinsAsFew(int n) {
        return new Sentence(ROOM, "point.joinsAsFew", new Argument.Count(n));
    }

    public static Sentence pointLargest() {
        return new Sentence(ROOM, "point.largest");
    }

    public static Sentence pointLargestHearth() {
        return new Sentence(ROOM, "point.largestHearth");
    }

    public static Sentence pointLeastLost() {
        return new Sentence(ROOM, "point.leastLost");
    }

    public static Sentence pointLeavesMost() {
        return new Sentence(ROOM, "point.leavesMost");
    }

    public static Sentence pointMostBars(Argument n) {
        return new Sentence(ROOM, "point.mostBars", n);
    }

    public static Sentence pointMostPieces(Argument n) {
        return new Sentence(ROOM, "point.mostPieces", n);
    }

    public static Sentence pointNarrowest() {
        return new Sentence(ROOM, "point.narrowest");
    }

    public static Sentence pointNoJoin() {
        return new Sentence(ROOM, "point.noJoin");
    }

    public static Sentence pointOnlyWithoutCut() {
        return new Sentence(ROOM, "point.onlyWithoutCut");
    }

    public static Sentence pointOnlyWithoutJoin() {
        return new Sentence(ROOM, "point.onlyWithoutJoin");
    }

    public static Sentence pointThan(Argument better) {
        return new Sentence(ROOM, "point.than", better);
    }

    public static Sentence pointWidest() {
        return new Sentence(ROOM, "point.widest");
    }

    public static Sentence rulesNone() {
        return new Sentence(ROOM, "rules.none");
    }

    public static Sentence scheme(String scheme) {
        return new Sentence(ROOM, "scheme", new Argument.Text(scheme));
    }

    public static Sentence schemeIdea(String scheme) {
        return new Sentence(ROOM, "scheme.idea", new Argument.Text(scheme));
    }

    public static Sentence schemeNeeds(String scheme) {
        return new Sentence(ROOM, "scheme.needs", new Argument.Text(scheme));
    }

    public static Sentence schemeUntrue(Argument needs, Argument scheme) {
        return new Sentence(ROOM, "scheme.untrue", needs, scheme);
    }

    public static Sentence scrapsByHand() {
        return new Sentence(ROOM, "scraps.byHand");
    }

    public static Sentence scrapsMore(Argument size) {
        return new Sentence(ROOM, "scraps.more", size);
    }

    public static Sentence scrapsNoPiece(Argument piece) {
        return new Sentence(ROOM, "scraps.noPiece", piece);
    }

    public static Sentence scrapsNone() {
        return new Sentence(ROOM, "scraps.none");
    }

    public static Sentence scrapsShort(Argument area) {
        return new Sentence(ROOM, "scraps.short", area);
    }

    public static Sentence scrapsTitle(String choice) {
        return new Sentence(ROOM, "scraps.title", new Argument.Text(choice));
    }

    public static Sentence scrapsTooSmall(Argument length) {
        return new Sentence(ROOM, "scraps.tooSmall", length);
    }

    public static Sentence scrapsUsed(Argument lost, int n, Argument parted, Argument trimmed, Argument whole) {
        return new Sentence(ROOM, "scraps.used", lost, new Argument.Count(n), parted, trimmed, whole);
    }

    public static Sentence seamsApart() {
        return new Sentence(ROOM, "seams.apart");
    }

    public static Sentence seamsClear(Argument clear) {
        return new Sentence(ROOM, "seams.clear", clear);
    }

    public static Sentence seamsNear(Argument clear, int n) {
        return new Sentence(ROOM, "seams.near", clear, new Argument.Count(n));
    }

    public static Sentence seamsNowhere() {
        return new Sentence(ROOM, "seams.nowhere");
    }

    public static Sentence seamsThick(int n) {
        return new Sentence(ROOM, "seams.thick", new Argument.Count(n));
    }

    public static Sentence setting(String setting) {
        return new Sentence(ROOM, "setting", new Argument.Text(setting));
    }

    public static Sentence settingIdea(String setting) {
        return new Sentence(ROOM, "setting.idea", new Argument.Text(setting));
    }

    public static Sentence shapeComes(Argument sizes) {
        return new Sentence(ROOM, "shape.comes", sizes);
    }

    public static Sentence shapeNone(Argument size) {
        return new Sentence(ROOM, "shape.none", size);
    }

    public static Sentence shapeNoneAny() {
        return new Sentence(ROOM, "shape.noneAny");
    }

    public static Sentence shapeNothing() {
        return new Sentence(ROOM, "shape.nothing");
    }

    public static Sentence shapeSize(int rounds, Argument size) {
        return new Sentence(ROOM, "shape.size", new Argument.Count(rounds), size);
    }

    public static Sentence shortAny(Argument fabric, Argument length, Argument number, String sure, Argument what, Argument width) {
        return new Sentence(ROOM, "short.any", fabric, length, number, new Argument.Text(sure), what, width);
    }

    public static Sentence shortCloth(Argument has, Argument missing, Argument size) {
        return new Sentence(ROOM, "short.cloth", has, missing, size);
    }

    public static Sentence shortOf(Argument fabrics, Argument length, String sure, Argument what, Argument width) {
        return new Sentence(ROOM, "short.of", fabrics, length, new Argument.Text(sure), what, width);
    }

    public static Sentence stashEmpty() {
        return new Sentence(ROOM, "stash.empty");
    }

    public static Sentence title(Argument order, Argument scheme) {
        return new Sentence(ROOM, "title", order, scheme);
    }

    public static Sentence washMixed(Argument unwashed, Argument unwashedFabric, Argument washed, Argument washedFabric) {
        return new Sentence(ROOM, "wash.mixed", unwashed, unwashedFabric, washed, washedFabric);
    }

    @Override
    public String name() {
        return "planning";
    }

    @Override
    public @Nullable String kinds(String key) {
        return switch (key) {
            case "bar.noPiece" -> "tt";
            case "better.cuts" -> "";
            case "better.fewerBars" -> "";
            case "better.hearth" -> "";
            case "better.joins" -> "";
            case "better.lost" -> "";
            case "better.moreBars" -> "";
            case "better.narrower" -> "";
            case "better.pieces" -> "";
            case "better.size" -> "";
            case "better.touched" -> "";
            case "better.wider" -> "";
            case "cabin.title" -> "w";
            case "cabins.few" -> "ttct";
            case "cabins.title" -> "ttwt";
            case "chosen.bands" -> "w";
            case "chosen.bars" -> "t";
            case "chosen.byHand" -> "";
            case "chosen.cabin" -> "tc";
            case "chosen.cabins" -> "ttttc";
            case "chosen.hearth" -> "t";
            case "chosen.middle" -> "t";
            case "chosen.mixed" -> "";
            case "chosen.order" -> "t";
            case "chosen.outer" -> "t";
            case "chosen.readyBars" -> "t";
            case "chosen.readyRounds" -> "t";
            case "chosen.round" -> "tt";
            case "chosen.rounds" -> "c";
            case "chosen.sizeFound" -> "t";
            case "chosen.sizeScraps" -> "tt";
            case "chosen.sizeSteps" -> "";
            case "chosen.sizeSure" -> "t";
            case "chosen.smaller" -> "t";
            case "chosen.with" -> "t";
            case "colour" -> "t";
            case "colour.apart" -> "";
            case "colour.back" -> "t";
            case "colour.couldLie" -> "t";
            case "colour.field" -> "";
            case "colour.hearthAll" -> "";
            case "colour.hearthNone" -> "";
            case "colour.hearthSome" -> "t";
            case "colour.mixed" -> "c";
            case "colour.outside" -> "tt";
            case "colour.outsideAlways" -> "ttt";
            case "colour.outsideRange" -> "ttt";
            case "colour.price" -> "c";
            case "colour.priceJoins" -> "c";
            case "colour.proven" -> "";
            case "colour.same" -> "t";
            case "colour.tied" -> "t";
            case "fabric.unknown" -> "tt";
            case "good" -> "tt";
            case "good.alone" -> "t";
            case "heap.empty" -> "";
            case "hearth" -> "";
            case "hearth.noPiece" -> "tt";
            case "more.added" -> "t";
            case "more.piece" -> "tt";
            case "more.pieces" -> "ttt";
            case "more.time" -> "";
            case "need.fabrics" -> "";
            case "need.more" -> "ttt";
            case "order" -> "w";
            case "piece.line" -> "ttt";
            case "point.fewestBars" -> "t";
            case "point.fewestCuts" -> "t";
            case "point.fewestJoins" -> "t";
            case "point.joins" -> "c";
            case "point.joinsAsFew" -> "c";
            case "point.largest" -> "";
            case "point.largestHearth" -> "";
            case "point.leastLost" -> "";
            case "point.leavesMost" -> "";
            case "point.mostBars" -> "t";
            case "point.mostPieces" -> "t";
            case "point.narrowest" -> "";
            case "point.noJoin" -> "";
            case "point.onlyWithoutCut" -> "";
            case "point.onlyWithoutJoin" -> "";
            case "point.than" -> "t";
            case "point.widest" -> "";
            case "rules.none" -> "";
            case "scheme" -> "w";
            case "scheme.idea" -> "w";
            case "scheme.needs" -> "w";
            case "scheme.untrue" -> "tt";
            case "scraps.byHand" -> "";
            case "scraps.more" -> "t";
            case "scraps.noPiece" -> "t";
            case "scraps.none" -> "";
            case "scraps.short" -> "t";
            case "scraps.title" -> "w";
            case "scraps.tooSmall" -> "t";
            case "scraps.used" -> "tcttt";
            case "seams.apart" -> "";
            case "seams.clear" -> "t";
            case "seams.near" -> "tc";
            case "seams.nowhere" -> "";
            case "seams.thick" -> "c";
            case "setting" -> "w";
            case "setting.idea" -> "w";
            case "shape.comes" -> "t";
            case "shape.none" -> "t";
            case "shape.noneAny" -> "";
            case "shape.nothing" -> "";
            case "shape.size" -> "ct";
            case "short.any" -> "tttwtt";
            case "short.cloth" -> "ttt";
            case "short.of" -> "ttwtt";
            case "stash.empty" -> "";
            case "title" -> "tt";
            case "wash.mixed" -> "tttt";
            default -> null;
        };
    }

    @Override
    public String said(Sentence sentence, Voice voice) {
        PlanningWords words = voice.rooms().planning();
        return switch (sentence.key()) {
            case "bar.noPiece" -> words.barNoPiece(sentence.text(0, voice), sentence.text(1, voice));
            case "better.cuts" -> words.betterCuts();
            case "better.fewerBars" -> words.betterFewerBars();
            case "better.hearth" -> words.betterHearth();
            case "better.joins" -> words.betterJoins();
            case "better.lost" -> words.betterLost();
            case "better.moreBars" -> words.betterMoreBars();
            case "better.narrower" -> words.betterNarrower();
            case "better.pieces" -> words.betterPieces();
            case "better.size" -> words.betterSize();
            case "better.touched" -> words.betterTouched();
            case "better.wider" -> words.betterWider();
            case "cabin.title" -> words.cabinTitle(sentence.word(0));
            case "cabins.few" -> words.cabinsFew(sentence.text(0, voice), sentence.text(1, voice), sentence.count(2), sentence.text(3, voice));
            case "cabins.title" -> words.cabinsTitle(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2), sentence.text(3, voice));
            case "chosen.bands" -> words.chosenBands(sentence.word(0));
            case "chosen.bars" -> words.chosenBars(sentence.text(0, voice));
            case "chosen.byHand" -> words.chosenByHand();
            case "chosen.cabin" -> words.chosenCabin(sentence.text(0, voice), sentence.count(1));
            case "chosen.cabins" -> words.chosenCabins(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice), sentence.count(4));
            case "chosen.hearth" -> words.chosenHearth(sentence.text(0, voice));
            case "chosen.middle" -> words.chosenMiddle(sentence.text(0, voice));
            case "chosen.mixed" -> words.chosenMixed();
            case "chosen.order" -> words.chosenOrder(sentence.text(0, voice));
            case "chosen.outer" -> words.chosenOuter(sentence.text(0, voice));
            case "chosen.readyBars" -> words.chosenReadyBars(sentence.text(0, voice));
            case "chosen.readyRounds" -> words.chosenReadyRounds(sentence.text(0, voice));
            case "chosen.round" -> words.chosenRound(sentence.text(0, voice), sentence.text(1, voice));
            case "chosen.rounds" -> words.chosenRounds(sentence.count(0));
            case "chosen.sizeFound" -> words.chosenSizeFound(sentence.text(0, voice));
            case "chosen.sizeScraps" -> words.chosenSizeScraps(sentence.text(0, voice), sentence.text(1, voice));
            case "chosen.sizeSteps" -> words.chosenSizeSteps();
            case "chosen.sizeSure" -> words.chosenSizeSure(sentence.text(0, voice));
            case "chosen.smaller" -> words.chosenSmaller(sentence.text(0, voice));
            case "chosen.with" -> words.chosenWith(sentence.text(0, voice));
            case "colour" -> words.colour(sentence.text(0, voice));
            case "colour.apart" -> words.colourApart();
            case "colour.back" -> words.colourBack(sentence.text(0, voice));
            case "colour.couldLie" -> words.colourCouldLie(sentence.text(0, voice));
            case "colour.field" -> words.colourField();
            case "colour.hearthAll" -> words.colourHearthAll();
            case "colour.hearthNone" -> words.colourHearthNone();
            case "colour.hearthSome" -> words.colourHearthSome(sentence.text(0, voice));
            case "colour.mixed" -> words.colourMixed(sentence.count(0));
            case "colour.outside" -> words.colourOutside(sentence.text(0, voice), sentence.text(1, voice));
            case "colour.outsideAlways" -> words.colourOutsideAlways(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "colour.outsideRange" -> words.colourOutsideRange(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "colour.price" -> words.colourPrice(sentence.count(0));
            case "colour.priceJoins" -> words.colourPriceJoins(sentence.count(0));
            case "colour.proven" -> words.colourProven();
            case "colour.same" -> words.colourSame(sentence.text(0, voice));
            case "colour.tied" -> words.colourTied(sentence.text(0, voice));
            case "fabric.unknown" -> words.fabricUnknown(sentence.text(0, voice), sentence.text(1, voice));
            case "good" -> words.good(sentence.text(0, voice), sentence.text(1, voice));
            case "good.alone" -> words.goodAlone(sentence.text(0, voice));
            case "heap.empty" -> words.heapEmpty();
            case "hearth" -> words.hearth();
            case "hearth.noPiece" -> words.hearthNoPiece(sentence.text(0, voice), sentence.text(1, voice));
            case "more.added" -> words.moreAdded(sentence.text(0, voice));
            case "more.piece" -> words.morePiece(sentence.text(0, voice), sentence.text(1, voice));
            case "more.pieces" -> words.morePieces(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "more.time" -> words.moreTime();
            case "need.fabrics" -> words.needFabrics();
            case "need.more" -> words.needMore(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "order" -> words.order(sentence.word(0));
            case "piece.line" -> words.pieceLine(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "point.fewestBars" -> words.pointFewestBars(sentence.text(0, voice));
            case "point.fewestCuts" -> words.pointFewestCuts(sentence.text(0, voice));
            case "point.fewestJoins" -> words.pointFewestJoins(sentence.text(0, voice));
            case "point.joins" -> words.pointJoins(sentence.count(0));
            case "point.joinsAsFew" -> words.pointJoinsAsFew(sentence.count(0));
            case "point.largest" -> words.pointLargest();
            case "point.largestHearth" -> words.pointLargestHearth();
            case "point.leastLost" -> words.pointLeastLost();
            case "point.leavesMost" -> words.pointLeavesMost();
            case "point.mostBars" -> words.pointMostBars(sentence.text(0, voice));
            case "point.mostPieces" -> words.pointMostPieces(sentence.text(0, voice));
            case "point.narrowest" -> words.pointNarrowest();
            case "point.noJoin" -> words.pointNoJoin();
            case "point.onlyWithoutCut" -> words.pointOnlyWithoutCut();
            case "point.onlyWithoutJoin" -> words.pointOnlyWithoutJoin();
            case "point.than" -> words.pointThan(sentence.text(0, voice));
            case "point.widest" -> words.pointWidest();
            case "rules.none" -> words.rulesNone();
            case "scheme" -> words.scheme(sentence.word(0));
            case "scheme.idea" -> words.schemeIdea(sentence.word(0));
            case "scheme.needs" -> words.schemeNeeds(sentence.word(0));
            case "scheme.untrue" -> words.schemeUntrue(sentence.text(0, voice), sentence.text(1, voice));
            case "scraps.byHand" -> words.scrapsByHand();
            case "scraps.more" -> words.scrapsMore(sentence.text(0, voice));
            case "scraps.noPiece" -> words.scrapsNoPiece(sentence.text(0, voice));
            case "scraps.none" -> words.scrapsNone();
            case "scraps.short" -> words.scrapsShort(sentence.text(0, voice));
            case "scraps.title" -> words.scrapsTitle(sentence.word(0));
            case "scraps.tooSmall" -> words.scrapsTooSmall(sentence.text(0, voice));
            case "scraps.used" -> words.scrapsUsed(sentence.text(0, voice), sentence.count(1), sentence.text(2, voice), sentence.text(3, voice), sentence.text(4, voice));
            case "seams.apart" -> words.seamsApart();
            case "seams.clear" -> words.seamsClear(sentence.text(0, voice));
            case "seams.near" -> words.seamsNear(sentence.text(0, voice), sentence.count(1));
            case "seams.nowhere" -> words.seamsNowhere();
            case "seams.thick" -> words.seamsThick(sentence.count(0));
            case "setting" -> words.setting(sentence.word(0));
            case "setting.idea" -> words.settingIdea(sentence.word(0));
            case "shape.comes" -> words.shapeComes(sentence.text(0, voice));
            case "shape.none" -> words.shapeNone(sentence.text(0, voice));
            case "shape.noneAny" -> words.shapeNoneAny();
            case "shape.nothing" -> words.shapeNothing();
            case "shape.size" -> words.shapeSize(sentence.count(0), sentence.text(1, voice));
            case "short.any" -> words.shortAny(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.word(3), sentence.text(4, voice), sentence.text(5, voice));
            case "short.cloth" -> words.shortCloth(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice));
            case "short.of" -> words.shortOf(sentence.text(0, voice), sentence.text(1, voice), sentence.word(2), sentence.text(3, voice), sentence.text(4, voice));
            case "stash.empty" -> words.stashEmpty();
            case "title" -> words.title(sentence.text(0, voice), sentence.text(1, voice));
            case "wash.mixed" -> words.washMixed(sentence.text(0, voice), sentence.text(1, voice), sentence.text(2, voice), sentence.text(3, voice));
            default -> throw new IllegalStateException("no message " + sentence.key());
        };
    }
}
