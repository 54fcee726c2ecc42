package hearthcloth.words.planning;

/** The room of planning in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanPlanning implements PlanningWords {

    @Override
    public String barNoPiece(String piece, String width) {
        return "Kein Stück ist breit genug für einen Streifen von " + width + "; das breiteste ist " + piece + ".";
    }

    @Override
    public String betterCuts() {
        return "weniger Schnitte";
    }

    @Override
    public String betterFewerBars() {
        return "weniger Streifen zu nähen";
    }

    @Override
    public String betterHearth() {
        return "ein größeres Mittelstück";
    }

    @Override
    public String betterJoins() {
        return "weniger Stückelungen";
    }

    @Override
    public String betterLost() {
        return "weniger Verlust an Stoff";
    }

    @Override
    public String betterMoreBars() {
        return "mehr Streifen zu sehen";
    }

    @Override
    public String betterNarrower() {
        return "schmalere Streifen";
    }

    @Override
    public String betterPieces() {
        return "mehr Stücke aufgebraucht";
    }

    @Override
    public String betterSize() {
        return "ein größeres Tuch";
    }

    @Override
    public String betterTouched() {
        return "weniger Vorrat angeschnitten";
    }

    @Override
    public String betterWider() {
        return "breitere Streifen";
    }

    @Override
    public String cabinTitle(String scraps) {
        return (scraps.equals("yes") ? "Ein Log Cabin zwischen Resten" : "Ein Log Cabin");
    }

    @Override
    public String cabinsFew(String across, String down, int rounds, String size) {
        return "Diese Reste reichten nicht für " + across + " × " + down + " Log Cabins mit " + (rounds == 1 ? "" + rounds + " Runde" : "" + rounds + " Runden") + " bei " + size + "; weniger Blöcke oder Runden brauchen weniger.";
    }

    @Override
    public String cabinsTitle(String across, String down, String scraps, String setting) {
        return setting + ", " + across + " × " + down + " Log Cabins" + (scraps.equals("yes") ? " zwischen Resten" : "");
    }

    @Override
    public String chosenBands(String direction) {
        return "In Streifen, die " + (direction.equals("ACROSS") ? "quer über das Tuch" : "längs durch das Tuch") + " von Rand zu Rand laufen.";
    }

    @Override
    public String chosenBars(String width) {
        return "Streifen " + width + " breit geschnitten.";
    }

    @Override
    public String chosenByHand() {
        return "Von Hand gewählt.";
    }

    @Override
    public String chosenCabin(String order, int rounds) {
        return "Ein Log Cabin, " + (rounds == 1 ? "eine Runde" : "" + rounds + " Runden") + ", " + order + ".";
    }

    @Override
    public String chosenCabins(String across, String count, String down, String order, int rounds) {
        return count + " Log Cabins, " + across + " × " + down + ", je " + (rounds == 1 ? "eine Runde" : "" + rounds + " Runden") + ", " + order + ".";
    }

    @Override
    public String chosenHearth(String size) {
        return "Das Mittelstück wird " + size + " geschnitten.";
    }

    @Override
    public String chosenMiddle(String piece) {
        return "Stück " + piece + " liegt in der Mitte, so wie es ist.";
    }

    @Override
    public String chosenMixed() {
        return "Hell und dunkel sind gemischt: sie ließen sich nicht trennen.";
    }

    @Override
    public String chosenOrder(String order) {
        return "Die Reihenfolge: " + order + ".";
    }

    @Override
    public String chosenOuter(String size) {
        return "Die äußere Runde wird passend geschnitten, damit das Tuch " + size + " groß wird.";
    }

    @Override
    public String chosenReadyBars(String widths) {
        return "Streifen " + widths + " breit geschnitten: so breit sind Stücke, die du hast.";
    }

    @Override
    public String chosenReadyRounds(String rounds) {
        return "Zuschnittbreiten der Streifen, so breit sind Stücke, die du hast: " + rounds + ".";
    }

    @Override
    public String chosenRound(String number, String widths) {
        return "Runde " + number + ": " + widths;
    }

    @Override
    public String chosenRounds(int n) {
        return (n == 1 ? "Eine Runde." : "" + n + " Runden.");
    }

    @Override
    public String chosenSizeFound(String limit) {
        return "Die Größe: das größte Quadrat, das gefunden wurde; aller Stoff zusammen ergäbe keines über " + limit + ".";
    }

    @Override
    public String chosenSizeScraps(String limit, String side) {
        return "Die Größe: das größte Quadrat, das gefunden wurde, " + side + "; alle diese Reste zusammen ergäben keines über " + limit + ".";
    }

    @Override
    public String chosenSizeSteps() {
        return "Die Größe: die größte, die gefunden wurde, in Schritten von etwa einem Vierzehntel.";
    }

    @Override
    public String chosenSizeSure(String step) {
        return "Die Größe: in Schritten von " + step + " ist kein größeres Quadrat möglich.";
    }

    @Override
    public String chosenSmaller(String percent) {
        return "Dieses Tuch ist " + percent + " kleiner als gewünscht.";
    }

    @Override
    public String chosenWith(String pieces) {
        return "Die gewünschten Stücke sind darin: " + pieces + ".";
    }

    @Override
    public String colour(String what) {
        return what + ".";
    }

    @Override
    public String colourApart() {
        return "kein Stoff trifft auf sich selbst";
    }

    @Override
    public String colourBack(String what) {
        return "Auf der Rückseite: " + what + ".";
    }

    @Override
    public String colourCouldLie(String length) {
        return "Höchstens " + length + " seiner Nähte könnten besser liegen.";
    }

    @Override
    public String colourField() {
        return "die Streifen sind ein einziges Feld aus Stoff";
    }

    @Override
    public String colourHearthAll() {
        return "das Mittelstück hebt sich auf allen Seiten ab";
    }

    @Override
    public String colourHearthNone() {
        return "das Mittelstück ist ruhig, nah an dem, was es umgibt";
    }

    @Override
    public String colourHearthSome(String share) {
        return "das Mittelstück hebt sich an " + share + " seines Randes ab";
    }

    @Override
    public String colourMixed(int n) {
        return (n == 1 ? "ein Streifen ist aus mehreren Stoffen" : "" + n + " Streifen sind aus mehreren Stoffen");
    }

    @Override
    public String colourOutside(String fabric, String share) {
        return fabric + ": " + share + " von dem, was gebunden zu sehen ist.";
    }

    @Override
    public String colourOutsideAlways(String fabric, String least, String most) {
        return fabric + " ist zu sehen, wie Sie auch binden: " + least + " bis " + most + " von dem, was gebunden zu sehen ist.";
    }

    @Override
    public String colourOutsideRange(String fabric, String least, String most) {
        return fabric + ": " + least + " bis " + most + " von dem, was gebunden zu sehen ist, je nachdem, wie die freien Ecken liegen.";
    }

    @Override
    public String colourPrice(int n) {
        return (n == 1 ? "Ein Schnitt mehr als das gefundene Minimum, für seine Farben." : "" + n + " Schnitte mehr als das gefundene Minimum, für seine Farben.");
    }

    @Override
    public String colourPriceJoins(int n) {
        return (n == 1 ? "Eine Stückelung mehr als das gefundene Minimum, für seine Farben." : "" + n + " Stückelungen mehr als das gefundene Minimum, für seine Farben.");
    }

    @Override
    public String colourProven() {
        return "Keine andere Wahl der Stoffe für die Streifen liegt besser; das ist bewiesen.";
    }

    @Override
    public String colourSame(String share) {
        return "ein Stoff trifft an " + share + " der Nähte zwischen den Streifen auf sich selbst";
    }

    @Override
    public String colourTied(String what) {
        return "An den Kanten, die gebunden zu sehen sind: " + what + ".";
    }

    @Override
    public String fabricUnknown(String name, String names) {
        return "Kein Stoff im Vorrat heißt „" + name + "“; es gibt " + names + ".";
    }

    @Override
    public String good(String idea, String points) {
        return idea + "; " + points + ".";
    }

    @Override
    public String goodAlone(String idea) {
        return idea + ".";
    }

    @Override
    public String heapEmpty() {
        return "Es ist kein Stoff da; gib mindestens ein Stück ein.";
    }

    @Override
    public String hearth() {
        return "das Mittelstück";
    }

    @Override
    public String hearthNoPiece(String piece, String size) {
        return "Kein einzelnes Stück fasst das Mittelstück, geschnitten " + size + "; das beste ist " + piece + ".";
    }

    @Override
    public String moreAdded(String pieces) {
        return "Damit würde es gehen: " + pieces + ".";
    }

    @Override
    public String morePiece(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String morePieces(String fabric, String number, String size) {
        return number + "-mal " + fabric + ", " + size;
    }

    @Override
    public String moreTime() {
        return "Ein Plan braucht mehr Zeit; plane noch einmal mit längerer Zeit.";
    }

    @Override
    public String needFabrics() {
        return "Von diesen Stoffen hast du für keinen der versuchten Farbpläne genug.";
    }

    @Override
    public String needMore(String has, String more, String takes) {
        return "Die sparsamste Anordnung braucht mit Nähten und Saum " + takes + ". Dein ganzer Stoff zusammen hat " + has + "; es fehlen also etwa " + more + ".";
    }

    @Override
    public String order(String order) {
        return (order.equals("ROUND") ? "rundherum" : order.equals("PAIRS") ? "gegenüberliegende Paare" : "zwei Seiten");
    }

    @Override
    public String pieceLine(String fabric, String line, String size) {
        return fabric + ", " + size + " (Zeile " + line + ")";
    }

    @Override
    public String pointFewestBars(String n) {
        return "die wenigsten Streifen zu nähen, " + n;
    }

    @Override
    public String pointFewestCuts(String n) {
        return "die wenigsten Schnitte, " + n;
    }

    @Override
    public String pointFewestJoins(String n) {
        return "die wenigsten Stückelungen, " + n;
    }

    @Override
    public String pointJoins(int n) {
        return (n == 1 ? "eine Stückelung" : "" + n + " Stückelungen");
    }

    @Override
    public String pointJoinsAsFew(int n) {
        return (n == 1 ? "eine Stückelung, keiner hat weniger" : "" + n + " Stückelungen, keiner hat weniger");
    }

    @Override
    public String pointLargest() {
        return "der größte von diesen";
    }

    @Override
    public String pointLargestHearth() {
        return "das größte Mittelstück";
    }

    @Override
    public String pointLeastLost() {
        return "der geringste Verlust an Stoff";
    }

    @Override
    public String pointLeavesMost() {
        return "lässt den meisten Vorrat ganz";
    }

    @Override
    public String pointMostBars(String n) {
        return "die meisten Streifen zu sehen, " + n;
    }

    @Override
    public String pointMostPieces(String n) {
        return "braucht die meisten Stücke auf, " + n;
    }

    @Override
    public String pointNarrowest() {
        return "die schmalsten Streifen";
    }

    @Override
    public String pointNoJoin() {
        return "kein Streifen muss gestückelt werden";
    }

    @Override
    public String pointOnlyWithoutCut() {
        return "als einziger ohne Schnitt";
    }

    @Override
    public String pointOnlyWithoutJoin() {
        return "als einziger ohne Stückelung";
    }

    @Override
    public String pointThan(String better) {
        return better + " als beim ersten";
    }

    @Override
    public String pointWidest() {
        return "die breitesten Streifen";
    }

    @Override
    public String rulesNone() {
        return "Keines hält sie alle ein, obwohl viele versucht wurden.";
    }

    @Override
    public String scheme(String scheme) {
        return (scheme.equals("HALVES") ? "Zwei Hälften" : scheme.equals("ROUNDS") ? "Ring um Ring" : scheme.equals("TURNS") ? "Immer abwechselnd" : scheme.equals("FIELD") ? "Ein Feld" : scheme.equals("SPIRAL") ? "Spirale" : scheme.equals("SCATTERED") ? "Gleichmäßig verstreut" : scheme.equals("GRADED") ? "Hell nach dunkel" : scheme.equals("FRAMES") ? "Rahmen" : scheme.equals("ACCENT") ? "Ein leuchtender Rest" : scheme.equals("ALL") ? "Aus dem ganzen Vorrat" : scheme.equals("FALLS") ? "Wie der Stoff es ergibt" : scheme.equals("OUTWARDS") ? "Die beste Seite außen" : "Eigene Wahl");
    }

    @Override
    public String schemeIdea(String scheme) {
        return (scheme.equals("HALVES") ? "hell und dunkel treffen sich an der Diagonale" : scheme.equals("ROUNDS") ? "jede Runde hat ihren eigenen Stoff" : scheme.equals("TURNS") ? "hell und dunkel wechseln sich ab, Streifen um Streifen" : scheme.equals("FIELD") ? "das Mittelstück sitzt allein in einem Stoff" : scheme.equals("SPIRAL") ? "hell und dunkel winden sich nebeneinander nach außen" : scheme.equals("SCATTERED") ? "jeder Streifen ein Stoff, keiner neben sich selbst" : scheme.equals("GRADED") ? "jede Runde ist dunkler als die innere" : scheme.equals("FRAMES") ? "zwei Stoffe wechseln sich ab, Runde um Runde" : scheme.equals("ACCENT") ? "ein leuchtender Stoff tritt an wenigen Stellen hervor" : scheme.equals("ALL") ? "Stoffe überall" : scheme.equals("FALLS") ? "die Streifen sind dort geschnitten, wo der Stoff am weitesten reicht" : scheme.equals("OUTWARDS") ? "der gewählte Stoff liegt dort, wo er gebunden zu sehen ist" : "von Hand gewählt");
    }

    @Override
    public String schemeNeeds(String scheme) {
        return (scheme.equals("HALVES") ? "Stoffe, die sich klar in helle und dunkle teilen, genug von beiden" : scheme.equals("TURNS") ? "Stoffe, die sich klar in helle und dunkle teilen, genug von beiden" : scheme.equals("SPIRAL") ? "Stoffe, die sich klar in helle und dunkle teilen, genug von beiden" : scheme.equals("ROUNDS") ? "für jede Runde genug von einem Stoff, der nicht der des Mittelstücks ist" : scheme.equals("FIELD") ? "genug von einem Stoff für alle Streifen und einen anderen für das Mittelstück" : scheme.equals("SCATTERED") ? "genug von mehreren Stoffen, dass keiner neben sich selbst liegen muss" : scheme.equals("GRADED") ? "für jede Runde einen Stoff, dunkler als der innere" : scheme.equals("FRAMES") ? "zwei Stoffe, einer deutlich heller, genug von jedem für seine Runden" : scheme.equals("ACCENT") ? "einen leuchtenden Stoff neben ruhigeren" : "nichts als Stoff");
    }

    @Override
    public String schemeUntrue(String needs, String scheme) {
        return "Es wurde kein Tuch gefunden, auf das der Name „" + scheme + "“ zutrifft; es braucht " + needs + ".";
    }

    @Override
    public String scrapsByHand() {
        return "Von Hand zusammengelegt";
    }

    @Override
    public String scrapsMore(String size) {
        return "Mit einem Stück von " + size + " mehr geht es.";
    }

    @Override
    public String scrapsNoPiece(String piece) {
        return "Es gibt kein Stück " + piece + ", aus dem ein Flicken geschnitten werden kann; bitte im Vorrat nachsehen.";
    }

    @Override
    public String scrapsNone() {
        return "Aus diesen Resten ließ sich kein Tuch machen; es braucht mehr oder größere.";
    }

    @Override
    public String scrapsShort(String area) {
        return "Wie man diese Reste auch legt: ohne die Nähte fehlen " + area + ".";
    }

    @Override
    public String scrapsTitle(String choice) {
        return (choice.equals("ANY") ? "Reste, wie sie kommen" : choice.equals("WHOLE") ? "Kein Rest halbiert" : choice.equals("SMALL") ? "Viele kleine Reste" : choice.equals("LARGE") ? "Wenige große Reste" : choice.equals("EVEN") ? "Größen einander ähnlicher" : choice.equals("CALM") ? "Farben nah beieinander" : choice.equals("ALIKE") ? "Größen nah beieinander" : "Hell gegen dunkel");
    }

    @Override
    public String scrapsTooSmall(String length) {
        return "Kein Stück ist groß genug für einen Flicken, der in jeder Richtung " + length + " zeigt; ein kleineres --least-piece wählen.";
    }

    @Override
    public String scrapsUsed(String lost, int n, String parted, String trimmed, String whole) {
        return (n == 1 ? "" + n + " Rest: " + whole + " so wie sie sind, " + trimmed + " begradigt, " + parted + " halbiert; " + lost + " des Genähten wird abgeschnitten und geht verloren." : "" + n + " Reste: " + whole + " so wie sie sind, " + trimmed + " begradigt, " + parted + " halbiert; " + lost + " des Genähten wird abgeschnitten und geht verloren.");
    }

    @Override
    public String seamsApart() {
        return "Kein Stoff liegt neben sich selbst.";
    }

    @Override
    public String seamsClear(String clear) {
        return "Keine zwei Nähte enden beiderseits einer dritten näher als " + clear + " beieinander.";
    }

    @Override
    public String seamsNear(String clear, int n) {
        return (n == 1 ? "An einer Stelle enden Nähte beiderseits einer dritten näher als " + clear + " beieinander; die Anleitung sagt, wo es dick ist." : "An " + n + " Stellen enden Nähte beiderseits einer dritten näher als " + clear + " beieinander; die Anleitung sagt, wo es dick ist.");
    }

    @Override
    public String seamsNowhere() {
        return "Nirgends treffen vier Nähte aufeinander.";
    }

    @Override
    public String seamsThick(int n) {
        return (n == 1 ? "An einer Stelle treffen Nähte von beiden Seiten auf eine dritte; die Anleitung sagt, wo es dick ist." : "An " + n + " Stellen treffen Nähte von beiden Seiten auf eine dritte; die Anleitung sagt, wo es dick ist.");
    }

    @Override
    public String setting(String setting) {
        return (setting.equals("ALIKE") ? "Alle gleich" : setting.equals("STRAIGHT_FURROW") ? "Gerade Furche" : setting.equals("BARN_RAISING") ? "Rauten (Barn Raising)" : setting.equals("SUNSHINE_AND_SHADOW") ? "Sonne und Schatten" : "Frei gedreht");
    }

    @Override
    public String settingIdea(String setting) {
        return (setting.equals("ALIKE") ? "Jeder Block liegt gleich." : setting.equals("STRAIGHT_FURROW") ? "Hell und dunkel laufen in Bahnen von Ecke zu Ecke." : setting.equals("BARN_RAISING") ? "Hell und dunkel gehen von der Mitte in auf der Spitze stehenden Quadraten aus." : setting.equals("SUNSHINE_AND_SHADOW") ? "Die hellen Hälften von vier Blöcken treffen sich, und die dunklen." : "Jeder Block ist gedreht, wie der Zufall es wollte.");
    }

    @Override
    public String shapeComes(String sizes) {
        return "Dieses Mittelstück mit diesen Streifen ergibt " + sizes + "; wähle eines davon oder überlass Mittelstück oder Streifen dem Vorrat.";
    }

    @Override
    public String shapeNone(String size) {
        return "Kein Mittelstück mit solchen Streifen ergibt " + size + "; überlass eines davon dem Vorrat oder wähle eine andere Zahl von Runden.";
    }

    @Override
    public String shapeNoneAny() {
        return "Kein Mittelstück mit solchen Streifen ergibt ein Tuch; überlass eines davon dem Vorrat oder wähle eine andere Zahl von Runden.";
    }

    @Override
    public String shapeNothing() {
        return "Mit diesen Nähten bliebe nichts vom Mittelstück oder von den Streifen; mach sie größer.";
    }

    @Override
    public String shapeSize(int rounds, String size) {
        return size + " mit " + (rounds == 1 ? "einer Runde" : "" + rounds + " Runden");
    }

    @Override
    public String shortAny(String fabric, String length, String number, String sure, String what, String width) {
        return "Von einem von " + number + " Stoffen, etwa " + fabric + ", fehlen " + (sure.equals("proven") ? "mindestens" : "etwa") + " " + length + " bei " + width + " Breite, für " + what + ".";
    }

    @Override
    public String shortCloth(String has, String missing, String size) {
        return "Das Tuch allein hat " + size + "; aller Stoff zusammen hat " + has + ", es fehlen also mindestens " + missing + ", noch ohne Nähte.";
    }

    @Override
    public String shortOf(String fabrics, String length, String sure, String what, String width) {
        return "Von " + fabrics + " fehlen " + (sure.equals("proven") ? "mindestens" : "etwa") + " " + length + " bei " + width + " Breite, für " + what + ".";
    }

    @Override
    public String stashEmpty() {
        return "Der Vorrat ist leer; gib mindestens ein Stück ein.";
    }

    @Override
    public String title(String order, String scheme) {
        return scheme + ", " + order;
    }

    @Override
    public String washMixed(String unwashed, String unwashedFabric, String washed, String washedFabric) {
        return "Manche Stücke sind gewaschen (wie " + washed + ", " + washedFabric + "), andere nicht (wie " + unwashed + ", " + unwashedFabric + "): sie laufen verschieden ein. Vor dem Zuschneiden alle waschen und bügeln.";
    }
}
