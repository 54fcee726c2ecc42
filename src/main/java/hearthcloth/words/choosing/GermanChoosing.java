package hearthcloth.words.choosing;

/** The room of choosing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "schmal, Zuschnitt " + width : "breit, Zuschnitt " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "Mitte:" : kind.equals("show") ? "sichtbar:" : kind.equals("only") ? "nur:" : kind.equals("without") ? "ohne:" : kind.equals("first") ? "zuerst:" : kind.equals("scheme") ? "Farben:" : kind.equals("with") ? "mit:" : kind.equals("contrast") ? "Kontrast:" : kind.equals("bars") ? "Streifen:" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "braucht: " + what;
    }

    @Override
    public String chipNoGift() {
        return "noch kein Geschenk";
    }

    @Override
    public String chipNoPiece() {
        return "kein Stück groß genug";
    }

    @Override
    public String chipNotTogether() {
        return "nicht zusammen mit dem ersten gefunden";
    }

    @Override
    public String chipQuick() {
        return "die wenigsten Nähte zuerst";
    }

    @Override
    public String chooseNone() {
        return "Dafür gibt es noch kein Tuch.";
    }

    @Override
    public String chooseSee() {
        return "Sehen, was dein Vorrat hergibt";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "so kontrastreich wie möglich" : contrast.equals("reads") ? "das Blockhausmuster ist zu lesen" : contrast.equals("easy") ? "dazwischen" : contrast.equals("quiet") ? "so ruhig wie möglich" : "alles verschmilzt zu einem Feld");
    }

    @Override
    public String countPieces(int n, String name) {
        return (n == 1 ? "" + name + ", " + n + " Stück" : "" + name + ", " + n + " Stücke");
    }

    @Override
    public String foundBack() {
        return "Zurück zu allen";
    }

    @Override
    public String foundBackFace() {
        return "Rückseite";
    }

    @Override
    public String foundBeside() {
        return "Nebeneinander";
    }

    @Override
    public String foundCannot() {
        return "Aus diesem Vorrat lässt sich das nicht machen.";
    }

    @Override
    public String foundFailed() {
        return "Die Suche ist an diesem Vorrat hängen geblieben. Einen Wunsch ändern und noch einmal suchen.";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + " · keine Stückelung · " + lost + " Verlust" : joins == 1 ? "" + patches + " · " + joins + " Stückelung · " + lost + " Verlust" : "" + patches + " · " + joins + " Stückelungen · " + lost + " Verlust");
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + " · " + lost + " Verlust";
    }

    @Override
    public String foundFront(String size, String title) {
        return "Vorderseite: " + title + ", " + size;
    }

    @Override
    public String foundGone() {
        return "Diesen Vorschlag gibt es nicht mehr; das sind die jetzigen.";
    }

    @Override
    public String foundJoins(String joins) {
        return "Stückelungen: " + joins + ".";
    }

    @Override
    public String foundKept() {
        return "Bei deinen Tüchern gespeichert.";
    }

    @Override
    public String foundKeptTap() {
        return "Bei deinen Tüchern gespeichert. Zum Ändern einen Streifen antippen.";
    }

    @Override
    public String foundLooking() {
        return "Der Vorrat wird durchgesehen";
    }

    @Override
    public String foundMore() {
        return "Vier weitere zeigen";
    }

    @Override
    public String foundNearest() {
        return "Das Nächste, was möglich ist, ist dieses.";
    }

    @Override
    public String foundNotYet() {
        return "Noch wurde kein Weg gefunden, das aus diesem Vorrat zu machen.";
    }

    @Override
    public String foundOneScale() {
        return "Im gleichen Maßstab gezeichnet.";
    }

    @Override
    public String foundPatches(int n) {
        return "" + n + " Flicken";
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "Es wird gesucht." : "Bisher " + n + ", es wird weiter gesucht.");
    }

    @Override
    public String foundStop() {
        return "Suche beenden";
    }

    @Override
    public String foundStopped() {
        return "Beendet; gezeigt wird das Beste bisher.";
    }

    @Override
    public String foundTake() {
        return "Dieses nehmen";
    }

    @Override
    public String foundTakeNamed(String title) {
        return title + " nehmen";
    }

    @Override
    public String galleryAddWish() {
        return "+ Wunsch";
    }

    @Override
    public String galleryChange() {
        return "Ändern";
    }

    @Override
    public String galleryDropWishes() {
        return "Ohne anfangen";
    }

    @Override
    public String galleryEmpty() {
        return "Leg etwas auf den Tisch";
    }

    @Override
    public String galleryEmptySays() {
        return "Tücher entstehen aus deinen eigenen Stücken, und noch liegt keines da.";
    }

    @Override
    public String galleryFor(String gift) {
        return "für " + gift + ".";
    }

    @Override
    public String galleryKeepWishes() {
        return "Diese Wünsche behalten";
    }

    @Override
    public String galleryKept() {
        return "Gespeicherte Tücher";
    }

    @Override
    public String galleryLarge() {
        return "so groß, wie der Vorrat reicht.";
    }

    @Override
    public String galleryNoneLeft() {
        return "Deine Wünsche lassen kein Stück übrig. Nimm einen zurück.";
    }

    @Override
    public String gallerySayGift() {
        return "Sagen, was eingebunden werden soll";
    }

    @Override
    public String gallerySpent() {
        return "Jedes Stück ist schon vorgesehen";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "Zurücknehmen: " + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "Was dein Vorrat hergibt";
    }

    @Override
    public String galleryWaiting(String gift) {
        return "Für " + gift + " gab es Wünsche. Gelten sie auch hier?";
    }

    @Override
    public String galleryWish() {
        return "Deine Wünsche";
    }

    @Override
    public String giftCloth() {
        return "Ich kenne das Tuch, nicht das Geschenk";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 oder 90 x 70" : "38 1/2 oder 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "Seine Größe, " + unit;
    }

    @Override
    public String giftHow() {
        return "Wie messe ich das?";
    }

    @Override
    public String giftHowSays(String unit) {
        return "So messen, wie es liegen wird: die längste Seite, die Seite quer dazu und die Höhe. Über Griffe, Deckel und Schleifen messen. Weiches so fest zusammengedrückt messen, wie es gebunden wird. " + (unit.equals("metric") ? "Schreiben: 30 oder 30,5." : "Schreiben: 12, 12 1/2 oder 12,5; auch Zentimeter, als 30 cm.");
    }

    @Override
    public String giftKinds() {
        return "Art des Geschenks";
    }

    @Override
    public String giftPlanSize() {
        return "Diese Größe planen";
    }

    @Override
    public String giftRuler() {
        return "Dein Lineal";
    }

    @Override
    public String giftShow() {
        return "Zeigen";
    }

    @Override
    public String giftType() {
        return "Auf der Zeichnung eintippen. Ein Bruch oder eine Dezimalzahl geht.";
    }

    @Override
    public String giftWhatTies() {
        return "Was lässt sich damit binden?";
    }

    @Override
    public String heldKind() {
        return "Art des Dings";
    }

    @Override
    public String heldLargest() {
        return "Das Größte, worum es reicht";
    }

    @Override
    public String heldSmall() {
        return "zu klein für diese Bindung";
    }

    @Override
    public String heldTie() {
        return "Bindung";
    }

    @Override
    public String heldTitle() {
        return "Worum sich das Tuch binden lässt";
    }

    @Override
    public String leftAside(int n) {
        return (n == 1 ? "" + n + " zurückgelegtes Stück" : "" + n + " zurückgelegte Stücke");
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return (n == 1 ? "" + n + " Stück für " + cloth : "" + n + " Stücke für " + cloth);
    }

    @Override
    public String leftMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String leftOut(String what) {
        return "Nicht dabei: " + what + ".";
    }

    @Override
    public String leftShared(String what) {
        return "Auch dabei: " + what + ".";
    }

    @Override
    public String leftUnuse() {
        return "Weglassen";
    }

    @Override
    public String leftUse() {
        return "Auch damit planen";
    }

    @Override
    public String lovedFile() {
        return "Ein Garten, eine Wand: PNG oder JPEG. Nur die Farben werden behalten";
    }

    @Override
    public String lovedFind() {
        return "Meine nächsten Stoffe finden";
    }

    @Override
    public String lovedList() {
        return "Die Farben deines Bildes und deine Stoffe, die ihnen am nächsten sind";
    }

    @Override
    public String lovedNone() {
        return "Keiner deiner Stoffe liegt nahe an den Farben dieses Bildes; alle können verwendet werden.";
    }

    @Override
    public String lovedNothing() {
        return "nichts in der Nähe";
    }

    @Override
    public String lovedTitle() {
        return "Die Farben eines Bildes, das du magst";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + ", halb hell, halb dunkel" : scheme.equals("ROUNDS") ? "Ringe um " + hearth : scheme.equals("TURNS") ? "Hell und Dunkel um " + hearth : scheme.equals("FIELD") ? "" + hearth + " in einem Feld aus " + most : scheme.equals("SPIRAL") ? "Spirale aus " + hearth : scheme.equals("SCATTERED") ? "" + hearth + " unter vielen" : scheme.equals("GRADED") ? "" + hearth + " in die Dämmerung" : scheme.equals("FRAMES") ? "" + hearth + " in Rahmen aus " + most : scheme.equals("ACCENT") ? "" + hearth + " und ein leuchtender Rest" : scheme.equals("OUTWARDS") ? "" + hearth + " im Herzen, die beste Seite außen" : "" + most + " um " + hearth);
    }

    @Override
    public String nameSeams(int n, String title) {
        return (n == 1 ? "" + title + ", " + n + " Naht" : "" + title + ", " + n + " Nähte");
    }

    @Override
    public String tiesCannot(String most) {
        return "mehr als deine Stücke: höchstens " + most + " im Quadrat";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return "Fertig " + size + " im Quadrat; " + tie + ".";
    }

    @Override
    public String tiesGo() {
        return "Was gibt mein Vorrat her?";
    }

    @Override
    public String tiesJust() {
        return "Einfach etwas zeigen";
    }

    @Override
    public String tiesLaid() {
        return "Wie es auf dem Tuch liegt";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "für Schweres" : tie.equals("EDGE_ALONG_EDGE") ? "auf einem großen Tuch" : tie.equals("ERRAND") ? "zum Tragen in der Hand" : tie.equals("FLAT") ? "ohne Knoten" : tie.equals("TWO_KNOT") ? "für Langes" : tie.equals("ONE_BOTTLE") ? "steht aufrecht" : tie.equals("TWO_BOTTLES") ? "nebeneinander" : tie.equals("ROUND") ? "für Rundes" : tie.equals("BOOKS") ? "für zwei gleiche" : "liegt auf der Seite");
    }

    @Override
    public String tiesRange(String least, String most) {
        return least + " mit kurzen Enden, " + most + " mit langen; in der Nähe von Kindern, Flammen oder Maschinen kurz halten.";
    }

    @Override
    public String tiesSee() {
        return "Schritt für Schritt gebunden ansehen";
    }

    @Override
    public String tiesSquare(String size) {
        return size + " im Quadrat";
    }

    @Override
    public String tiesTheirs() {
        return "Wähle für mich";
    }

    @Override
    public String tiesTheirsNote() {
        return "zeigt am meisten Stoff";
    }

    @Override
    public String tiesTitle() {
        return "Wie soll es gebunden werden?";
    }

    @Override
    public String tiesUnsized() {
        return "Die Maße auf der Zeichnung eintippen; dann steht bei jeder Bindung, wie groß das Tuch sein muss.";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "Reste, wie sie sind" : way.equals("among") ? "ein Blockhaus zwischen Resten" : way.equals("two") ? "vier kleine Blockhäuser" : way.equals("three") ? "neun kleine Blockhäuser" : way.equals("four") ? "sechzehn kleine Blockhäuser" : "ein Mittelstück und Streifen darum");
    }

    @Override
    public String wishAgain() {
        return "Noch einmal suchen";
    }

    @Override
    public String wishAlso() {
        return "Auch, was für ein anderes Tuch vorgesehen ist";
    }

    @Override
    public String wishAny() {
        return "beliebig";
    }

    @Override
    public String wishBands() {
        return "Bänder von Rand zu Rand";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "quer über das Tuch" : way.equals("down") ? "längs über das Tuch" : "wie es kommt");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "Streifen, zugeschnitten, " + unit;
    }

    @Override
    public String wishBars() {
        return "Streifen und Nähte";
    }

    @Override
    public String wishBefore() {
        return "das Tuch davor";
    }

    @Override
    public String wishColours() {
        return "Farben";
    }

    @Override
    public String wishContrast() {
        return "Kontrast";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "So kontrastreich wie möglich" : contrast.equals("reads") ? "Das Blockhausmuster ist zu lesen" : contrast.equals("easy") ? "Dazwischen" : contrast.equals("quiet") ? "So ruhig wie möglich" : "Alles verschmilzt zu einem Feld");
    }

    @Override
    public String wishCutting() {
        return "Einen Rest zerschneiden";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "nie; nur Ränder werden beschnitten" : rule.equals("cut") ? "wo es hilft" : "beides");
    }

    @Override
    public String wishExact() {
        return "Maße, Reihenfolge, Aufbau";
    }

    @Override
    public String wishGood() {
        return "Dein Vorrat eignet sich für";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return (kind.equals("HALVES") ? "Hell und Dunkel liegen weit auseinander" : kind.equals("SPIRAL") ? "Hell und Dunkel liegen weit auseinander" : kind.equals("TURNS") ? "Hell und Dunkel liegen weit auseinander" : kind.equals("GRADED") ? "die Stoffe gehen in gleichmäßigen Schritten von hell nach dunkel" : kind.equals("ACCENT") ? "" + fabric + " leuchtet mehr als alle anderen" : kind.equals("SCATTERED") ? "viele Stoffe, und keiner überwiegt" : kind.equals("FIELD") ? "mindestens die Hälfte des Vorrats ist " + fabric : kind.equals("FRAMES") ? "zwei Stoffe, einer deutlich heller, machen das meiste aus" : "von mehreren Stoffen ist genug für je eine Runde da");
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "Mittelstück aus" : what.equals("show") ? "Gebunden zu sehen" : "Ohne");
    }

    @Override
    public String wishHearth(String unit) {
        return "Mittelstück, zugeschnitten, " + unit;
    }

    @Override
    public String wishMiddle() {
        return "In der Mitte, unzerschnitten";
    }

    @Override
    public String wishMixed() {
        return "Gemischt mit";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "Höchstens von einem Stück abschneiden, " + unit;
    }

    @Override
    public String wishNarrow() {
        return "Schmale Streifen";
    }

    @Override
    public String wishOpen() {
        return "Was darf ich offen lassen?";
    }

    @Override
    public String wishOpenSays() {
        return "Alles. Das Mittelstück ist das Quadrat in der Mitte, Streifen liegen darum, eine Runde ist ein Streifen auf jeder Seite. Was leer bleibt, entscheidet der Vorrat. Mehrere Streifenbreiten können nebeneinander stehen, von der Mitte nach außen: 3, 4, 5.";
    }

    @Override
    public String wishOrder() {
        return "Reihenfolge";
    }

    @Override
    public String wishPatches() {
        return "Flicken";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "große und kleine beieinander" : sizes.equals("even") ? "möglichst gleich große" : "beliebig");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "Mittelstück aus " + fabric : what.equals("show") ? "Gebunden zu sehen: " + fabric : "Ohne " + fabric);
    }

    @Override
    public String wishQuick() {
        return "Die wenigsten Nähte zuerst";
    }

    @Override
    public String wishRounds() {
        return "Runden";
    }

    @Override
    public String wishScraps() {
        return "Für Reste, wie sie sind";
    }

    @Override
    public String wishSlack(String unit) {
        return "Größer als das Kleinste um, " + unit + "; leer für das Kleinste";
    }

    @Override
    public String wishTogether() {
        return "Aufbau";
    }

    @Override
    public String wishWide() {
        return "Breite Streifen";
    }

    @Override
    public String wishWith() {
        return "Stücke, die dabei sein müssen";
    }
}
