package hearthcloth.words.printing;

/** The room of printing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanPrinting implements PrintingWords {

    @Override
    public String altCut(String fabric, int n, String piece, String size) {
        return (n == 1 ? "Stück " + piece + ", " + fabric + ", " + size + ", mit " + n + " Schnitt" : "Stück " + piece + ", " + fabric + ", " + size + ", mit " + n + " Schnitten");
    }

    @Override
    public String altFace(String face, String size, String title) {
        return (face.equals("front") ? "Vorderseite: " + title + ", " + size : "Rückseite: " + title + ", " + size);
    }

    @Override
    public String altPatches(int n) {
        return "" + n + " Flicken";
    }

    @Override
    public String altStep(String added, String step, String work) {
        return "Schritt " + step + ": " + work + " und " + added + ", Vorderseite oben, vor dem Nähen";
    }

    @Override
    public String bagAbout(String size, String title) {
        return title + ", " + size + ".";
    }

    @Override
    public String bagFor(String gift, String size, String title) {
        return title + ", " + size + ". Für: " + gift + ".";
    }

    @Override
    public String bagHow() {
        return "Entlang der gestrichelten Linien ausschneiden und jeden Zettel mit den genannten Stücken in seine Tüte legen. Größen sind Breite × Länge, die Länge an der Webkante entlang.";
    }

    @Override
    public String bagPiece(String patches, String piece, String size) {
        return "Stück " + piece + ", " + size + " (" + patches + ")";
    }

    @Override
    public String bagSlips() {
        return "Zettel für die Tüten";
    }

    @Override
    public String bagTitle(String n, String name) {
        return "Tüte " + n + ", " + name;
    }

    @Override
    public String beforeTitle() {
        return "Vor dem Zuschneiden";
    }

    @Override
    public String boxMeasure() {
        return "Es soll jetzt messen";
    }

    @Override
    public String boxWay() {
        return "Breite × Höhe, Vorderseite oben";
    }

    @Override
    public String cardMeasures(String size) {
        return "Maß " + size + ".";
    }

    @Override
    public String cardOthers(int n) {
        return (n == 1 ? "Den anderen ebenso nähen." : "Die anderen ebenso nähen.");
    }

    @Override
    public String cardThick(String places) {
        return "Dick: " + places + ". Dort langsam.";
    }

    @Override
    public String careTitle() {
        return "Vorsicht";
    }

    @Override
    public String chosenTitle() {
        return "Für dich gewählt";
    }

    @Override
    public String coloursEyes(String eyes) {
        return (eyes.equals("protan") ? "Wie rotblinde Augen es sehen" : eyes.equals("deutan") ? "Wie grünblinde Augen es sehen" : "Wie blaublinde Augen es sehen");
    }

    @Override
    public String coloursGrey(String shade) {
        return (shade.equals("black") ? "Schwarz" : shade.equals("dark") ? "Dunkelgrau" : shade.equals("middle") ? "Grau" : shade.equals("light") ? "Hellgrau" : "Weiß");
    }

    @Override
    public String coloursLeast() {
        return "Fällt am wenigsten auf";
    }

    @Override
    public String coloursLike(String fabric) {
        return "wie " + fabric;
    }

    @Override
    public String coloursMost() {
        return "Fällt am meisten auf";
    }

    @Override
    public String coloursSeams() {
        return "Nähte";
    }

    @Override
    public String coloursThread() {
        return "Garn für jede Naht nach seiner Farbe. Eines, das kaum auffällt, verbirgt ungleiche Stiche; eines, das stark auffällt, gehört zum Bild.";
    }

    @Override
    public String coloursTitle() {
        return "Die Farben";
    }

    @Override
    public String coloursValues() {
        return "Hell und Dunkel in fünf Stufen";
    }

    @Override
    public String corner() {
        return "Eine Ecke";
    }

    @Override
    public String cornerFirst(String length) {
        return "Erster Umschlag, " + length + " von der Schnittkante";
    }

    @Override
    public String cornerLast(String length) {
        return "Letzter Umschlag, " + length + " von der Schnittkante: die fertige Kante";
    }

    @Override
    public String cornerLife() {
        return "Eine Ecke, Originalgröße";
    }

    @Override
    public String cornerMitre() {
        return "Briefecke: genäht, während die Ecke auf die Hälfte gefaltet ist";
    }

    @Override
    public String cornerOff() {
        return "Abgeschnittene Ecke";
    }

    @Override
    public String cutHead(String row, String scale, String unit, String washed) {
        return "Zeile " + row + " der Stoffliste" + (washed.equals("YES") ? ", gewaschen" : washed.equals("NO") ? ", nicht gewaschen" : "") + ". Gezeichnet " + scale + ", Maße in " + (unit.equals("metric") ? "Zentimetern" : "Zoll") + ".";
    }

    @Override
    public String cutHow() {
        return "In der Reihenfolge der Zahlen schneiden. Jede Zahl sitzt auf ihrem Schnitt, mit dem Maß. Die Pfeilspitze zeigt zu der Kante, von der gemessen wird. Reststücke sind blass gezeichnet und benannt; aufheben. Durchgestrichenes ist zu klein zum Aufheben. In jeder Zeichnung läuft der Fadenlauf von oben nach unten. „Vierteldrehung“ heißt: Der Flicken ist eine Vierteldrehung anders gezeichnet, als er im Tuch liegt.";
    }

    @Override
    public String cutLeft(String left) {
        return "Übrig: " + left + ".";
    }

    @Override
    public String cutNothing() {
        return "Nichts zu schneiden: das ganze Stück verwenden.";
    }

    @Override
    public String cutSheet(int n, String title) {
        return (n == 1 ? "" + title + ". " + n + " Stück. In der Reihenfolge der Zahlen schneiden. Die Pfeilspitze an jedem Kreis zeigt zu der Kante, von der gemessen wird." : "" + title + ". " + n + " Stücke. In der Reihenfolge der Zahlen schneiden. Die Pfeilspitze an jedem Kreis zeigt zu der Kante, von der gemessen wird.");
    }

    @Override
    public String cutTitle() {
        return "Zuschneiden";
    }

    @Override
    public String cutWhole() {
        return "Diese Stücke ganz verwenden";
    }

    @Override
    public String drawn(String scale) {
        return "Gezeichnet " + scale + ".";
    }

    @Override
    public String faceDrawn(String face, String scale) {
        return face + ", gezeichnet " + scale;
    }

    @Override
    public String faceFells(String face) {
        return (face.equals("front") ? "Vorderseite, mit Nahtlagen und Saum" : "Rückseite, mit Nahtlagen und Saum");
    }

    @Override
    public String faceName(String face) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite");
    }

    @Override
    public String faceSheet(String scale, String size, String title) {
        return title + ". " + size + " fertig, gesäumt. Gezeichnet " + scale + ".";
    }

    @Override
    public String figureCuts() {
        return "Schnitte";
    }

    @Override
    public String figureFinished() {
        return "Fertig";
    }

    @Override
    public String figureJoins() {
        return "Stückelungen";
    }

    @Override
    public String figureLost() {
        return "Verlust";
    }

    @Override
    public String figurePatches() {
        return "Flicken";
    }

    @Override
    public String figureSeams() {
        return "Nähte";
    }

    @Override
    public String figureThread() {
        return "Garn";
    }

    @Override
    public String grain() {
        return "Fadenlauf";
    }

    @Override
    public String grainNap() {
        return "Fadenlauf, Strich hierher";
    }

    @Override
    public String hemTitle() {
        return "Säumen";
    }

    @Override
    public String item(String topic, String words) {
        return topic + ": " + words;
    }

    @Override
    public String kitsBuy(String name, String what) {
        return name + ": " + what + ".";
    }

    @Override
    public String kitsEach(String shared) {
        return "Jedes Stück ist nur in einer Tüte" + (shared.equals("yes") ? ", außer denen, die zwei sich teilen: Da schneidet die erste Person vor der zweiten." : "; niemand muss auf andere warten.");
    }

    @Override
    public String kitsFirst(String of, String piece, String size, String who) {
        return who + " schneidet zuerst Stück " + of + "; was übrig ist, " + size + ", wird Stück " + piece + ".";
    }

    @Override
    public String kitsHanded(String of, String piece, String who) {
        return "Stück " + piece + " ist, was " + who + " von Stück " + of + " übrig lässt: nach " + who + " schneiden.";
    }

    @Override
    public String kitsLacks(String made, String name, String why) {
        return name + ": " + (made.equals("no") ? "nichts ließ sich machen." : "nicht wie gewünscht.") + " " + why;
    }

    @Override
    public String kitsNearest() {
        return "Das ist das Nächste, was sich machen ließ; siehe Einkaufsliste.";
    }

    @Override
    public String kitsQuarters(int n) {
        return (n == 1 ? "" + n + " Fat Quarter" : "" + n + " Fat Quarters");
    }

    @Override
    public String kitsRunning(int n) {
        return "Päckchen für " + (n == 1 ? "" + n + " Tuch" : "" + n + " Tücher");
    }

    @Override
    public String kitsTitle() {
        return "Päckchen";
    }

    @Override
    public String kitsWay(String goods, String unit) {
        return (goods.equals("FAT_QUARTERS") ? "" + (unit.equals("in") ? "In Fat Quarters (mindestens 18 × 20 in)" : "In Fat Quarters (mindestens 45 × 50 cm)") : goods.equals("NARROW_BOLT") ? "" + (unit.equals("in") ? "Vom Ballen, 44 in breit (40 in zwischen den Webkanten)" : "Vom Ballen, 110 cm breit (102 cm zwischen den Webkanten)") : "" + (unit.equals("in") ? "Vom Ballen, 60 in breit (58 in zwischen den Webkanten)" : "Vom Ballen, 150 cm breit (145 cm zwischen den Webkanten)"));
    }

    @Override
    public String kitsWorst(int n) {
        return (n == 0 ? "Kein Streifen ist gestückelt." : n == 1 ? "Niemand hat mehr als " + n + " Stückelung." : "Niemand hat mehr als " + n + " Stückelungen.");
    }

    @Override
    public String kitsYards(String n, String way) {
        return n + " " + (way.equals("part") ? "Yard" : "Yards");
    }

    @Override
    public String labelHearth() {
        return "Mitte";
    }

    @Override
    public String labelOffcut(String number) {
        return "Rest " + number;
    }

    @Override
    public String legendFell() {
        return "Nahtlage, dunkler";
    }

    @Override
    public String legendStitches() {
        return "Stichreihe";
    }

    @Override
    public String legendUnknown(String fabric) {
        return fabric + " (Farbe noch unbekannt)";
    }

    @Override
    public String legendWrong() {
        return "Schraffiert: linke Stoffseite";
    }

    @Override
    public String lostJoins(int n) {
        return (n == 1 ? "Kein Plan für dieses Tuch hat weniger als " + n + " Stückelung." : "Kein Plan für dieses Tuch hat weniger als " + n + " Stückelungen.");
    }

    @Override
    public String lostLeast(String least, String touched) {
        return "Verlust: Reste, zu klein zum Wiederverwenden. Angeschnitten werden " + touched + " Stoff; kein Plan für dieses Tuch käme mit weniger als " + least + " aus.";
    }

    @Override
    public String lostLeastLost(String least, String lost, String touched) {
        return "Verlust: Reste, zu klein zum Wiederverwenden. Angeschnitten werden " + touched + " Stoff; kein Plan für dieses Tuch käme mit weniger als " + least + " aus oder verlöre weniger als " + lost + ".";
    }

    @Override
    public String lostTouched(String touched) {
        return "Verlust: Reste, zu klein zum Wiederverwenden. Angeschnitten werden " + touched + " Stoff.";
    }

    @Override
    public String matStays() {
        return "bleibt";
    }

    @Override
    public String matTitle(String all, String made, String piece) {
        return "Stück " + piece + " auf der Matte, " + made + " von " + all + " Schnitten gemacht";
    }

    @Override
    public String measuringPrint() {
        return "Mit 100 % drucken, nicht anpassen. Flach zwischen die Stücke legen.";
    }

    @Override
    public String measuringRuler() {
        return "Ein Lineal an die dünne Linie legen: 20 cm (7 7/8 in).";
    }

    @Override
    public String measuringSay() {
        return "Sonst beim Senden des Fotos ihre Länge angeben.";
    }

    @Override
    public String measuringTitle() {
        return "Messblatt";
    }

    @Override
    public String needsTitle() {
        return "Was gebraucht wird";
    }

    @Override
    public String netFold() {
        return "Innenseite oben, wie es vor dir liegt. An den Linien falten; wo sie sich drängen, ist der Stoff gerafft: das Papier dort knüllen oder drehen.";
    }

    @Override
    public String netHow(String gift, String scale, String size, String small) {
        return "Ein Tuch von " + size + " um " + gift + ", gezeichnet " + scale + ". Ausgeschnitten passt es um " + small + " aus Karton.";
    }

    @Override
    public String netSquare(String side) {
        return side + " im Quadrat";
    }

    @Override
    public String netTitle(String tie) {
        return "Die Falten: " + tie;
    }

    @Override
    public String page(String all, String number) {
        return "Seite " + number + " von " + all;
    }

    @Override
    public String pictureCuts(String name) {
        return "Zuschnittplan: " + name;
    }

    @Override
    public String pictureDone() {
        return "Gebunden";
    }

    @Override
    public String pictureKnot() {
        return "Ein Kreuzknoten";
    }

    @Override
    public String pictureNet() {
        return "Netz, Innenseite oben: an den Linien falten";
    }

    @Override
    public String pictureTied() {
        return "Das gebundene Geschenk von oben, von vorn und über Eck";
    }

    @Override
    public String pictureTying() {
        return "Beim Binden";
    }

    @Override
    public String piecesDone(String piece) {
        return piece + ", schon zugeschnitten";
    }

    @Override
    public String piecesHow(String unit) {
        return "Jedes Stück mit dem, was daraus geschnitten wird. Maße sind Breite × Länge in " + (unit.equals("metric") ? "Zentimetern" : "Zoll") + ": Die zweite Zahl läuft im Fadenlauf.";
    }

    @Override
    public String piecesTitle() {
        return "Stoffe und Stücke";
    }

    @Override
    public String pinHatched() {
        return "In jedem Bild schraffiert: die linke Stoffseite.";
    }

    @Override
    public String pinLies(String added, String face, String work) {
        return added + " liegt obenauf, " + (face.equals("front") ? "Vorderseite" : "Rückseite") + " nach oben, an " + work + " gesteckt.";
    }

    @Override
    public String pinSticksOut(String length, String wrapping) {
        return wrapping + " steht " + length + " über. Diese breitere Nahtzugabe wird um die andere gelegt.";
    }

    @Override
    public String pinStitching() {
        return "Die gestrichelte Linie ist die Naht. Jede Nadel herausziehen, bevor der Nähfuß sie erreicht.";
    }

    @Override
    public String pinTitle() {
        return "Schritt 1, gesteckt";
    }

    @Override
    public String seamTitle() {
        return "Die Naht";
    }

    @Override
    public String sectionFold() {
        return "Einschlagen, absteppen";
    }

    @Override
    public String sectionOpen() {
        return "Aufklappen, bügeln";
    }

    @Override
    public String sectionStitch() {
        return "Nähen";
    }

    @Override
    public String sectionWrapped(String name) {
        return name + ", umschlossen";
    }

    @Override
    public String sectionWraps(String name) {
        return name + ", umschließt";
    }

    @Override
    public String sewTitle() {
        return "Nähen";
    }

    @Override
    public String shopNoWay() {
        return "Wie viel auch von einem Stoff dazukam: Es fand sich kein Weg, diese zu machen.";
    }

    @Override
    public String shopNone() {
        return "Nichts: Jedes Tuch lässt sich aus dem schneiden, was da ist. Garn und Werkzeug nennt jede Anleitung.";
    }

    @Override
    public String shopTitle() {
        return "Einkaufsliste";
    }

    @Override
    public String shopWays() {
        return "Einer dieser Wege genügt, zusammen mit dem, was die anderen übrig lassen. Jeder wurde erprobt: Die Tücher sind daraus geplant. Gekauftes vor dem Schneiden waschen und bügeln.";
    }

    @Override
    public String slipsHow() {
        return "An den gestrichelten Linien ausschneiden. Jeden Zettel gleich nach dem Zuschneiden an seinen Flicken stecken, auf die Seite, die am Tuch vorn liegt. Der Pfeil zeigt zur Oberkante des Tuchs.";
    }

    @Override
    public String slipsRunning(String title) {
        return title + ", Flickenzettel";
    }

    @Override
    public String slipsSize(String size) {
        return size + ", Zuschnitt";
    }

    @Override
    public String slipsTitle() {
        return "Flickenzettel";
    }

    @Override
    public String slipsTop() {
        return "oben";
    }

    @Override
    public String slipsUp(String showing) {
        return (showing.equals("RIGHT") ? "Rechte Seite oben" : showing.equals("WRONG") ? "Linke Seite oben" : "Beide Seiten gleich");
    }

    @Override
    public String square(String side) {
        return "Dieses Quadrat misst " + side + " an jeder Seite. Falls nicht, mit 100 % neu drucken (nicht „an Seite anpassen“). Nur dort auf dem Papier messen, wo „Originalgröße“ steht. Sonst gelten die geschriebenen Maße.";
    }

    @Override
    public String stepTrim() {
        return "kürzen";
    }

    @Override
    public String stepWraps() {
        return "umschließt";
    }

    @Override
    public String tableAlone(String alone, String measure) {
        return measure + "; Streifen " + alone;
    }

    @Override
    public String tableHow() {
        return "Jede Naht wie in Schritt 1 nähen. „Arbeit“ ist alles, was bis dahin zusammengenäht ist. Maße sind Breite × Höhe, Vorderseite oben. An dicken Stellen langsam nähen oder das Handrad drehen.";
    }

    @Override
    public String tableJoin(String n, String what) {
        return what + " (erst die " + n + " Teile)";
    }

    @Override
    public String tableMeasures() {
        return "Maß";
    }

    @Override
    public String tableNewWraps() {
        return "In einem gestückelten Streifen umschließt jeder neue Teil den vorigen.";
    }

    @Override
    public String tableOldWraps() {
        return "In einem gestückelten Streifen umschließt jeder Teil den nächsten.";
    }

    @Override
    public String tableSew() {
        return "Nähen";
    }

    @Override
    public String tableStep() {
        return "Nr.";
    }

    @Override
    public String tableThick() {
        return "Dick";
    }

    @Override
    public String tableTitle() {
        return "Alle Nähte der Reihe nach";
    }

    @Override
    public String tableWraps() {
        return "Umschließt";
    }

    @Override
    public String teacherAbout(int joins, int patches, int pieces, String size, String title) {
        return title + ", " + size + ": " + "" + patches + " Flicken" + " aus " + (pieces == 1 ? "" + pieces + " Stück" : "" + pieces + " Stücken") + (joins == 0 ? "" : joins == 1 ? ", " + joins + " Stückelung" : ", " + joins + " Stückelungen") + ".";
    }

    @Override
    public String teacherDot() {
        return "Ein Punkt auf einem Tuch zeigt, wo die meisten Lagen aufeinandertreffen. Dort mit Dampf bügeln und das Handrad drehen lassen.";
    }

    @Override
    public String teacherNoCross() {
        return "Keine Naht kreuzt eine andere.";
    }

    @Override
    public String teacherThick(int count, int places, String plies, String steps) {
        return "Am dicksten: " + plies + " Lagen an " + (places == 1 ? "" + places + " Stelle" : "" + places + " Stellen") + ", genäht in " + (count == 1 ? "Schritt " + steps : "den Schritten " + steps) + ".";
    }

    @Override
    public String teacherTitle() {
        return "Für die Kursleitung";
    }

    @Override
    public String thickTitle() {
        return "Wo es dick wird";
    }

    @Override
    public String threadTitle() {
        return "Garn";
    }

    @Override
    public String tieCare() {
        return "Vorsicht beim Binden";
    }

    @Override
    public String tieKnot() {
        return "Der Kreuzknoten";
    }

    @Override
    public String tieTitle() {
        return "Binden";
    }

    @Override
    public String tiedCare() {
        return "Vorsicht, wenn gebunden ist";
    }

    @Override
    public String tiedHow(String suited, String tie) {
        return tie + ", für: " + suited + ". Jeder Pfeil endet dort, wo der Zipfel jetzt liegt.";
    }

    @Override
    public String tiedHowNamed(String suited, String tie, String trade) {
        return tie + " (" + trade + "), für: " + suited + ". Jeder Pfeil endet dort, wo der Zipfel jetzt liegt.";
    }

    @Override
    public String tiedJust(String reason, String size) {
        return "Dieses Tuch (" + size + ") reicht gerade für " + reason + ".";
    }

    @Override
    public String tiedKnot() {
        return "Der Knoten";
    }

    @Override
    public String tiedLeaves(String reason, String size, String spare) {
        return "Dieses Tuch (" + size + ") hat für " + reason + " " + spare + " mehr, als der Plan vorsieht.";
    }

    @Override
    public String tiedNear() {
        return "Nahe am Knoten (etwa eine Handbreit) rafft sich echter Stoff, und lose Enden fallen, wie sie wollen.";
    }

    @Override
    public String tiedNext(String size, String uses) {
        return "Die nächste fertige Größe ist " + size + ", verkauft für: " + uses + ".";
    }

    @Override
    public String tiedNextNamed(String size, String trade, String uses) {
        return "Die nächste fertige Größe ist " + size + " (" + trade + "), verkauft für: " + uses + ".";
    }

    @Override
    public String tiedSheet(String gift, String tie) {
        return "Das Geschenk, gebunden: " + gift + ", " + tie;
    }

    @Override
    public String tiedShort() {
        return "Wenn ein Zipfel nicht reicht";
    }

    @Override
    public String tiedShows() {
        return "Was zu sehen ist";
    }

    @Override
    public String tiedSure() {
        return "Wie sicher die Größe ist";
    }

    @Override
    public String tiedTitle() {
        return "Das Geschenk, gebunden";
    }

    @Override
    public String tiedTying() {
        return "So wird gebunden";
    }

    @Override
    public String toolsEach(String tool) {
        return tool + ".";
    }

    @Override
    public String toolsTitle() {
        return "Werkzeug";
    }

    @Override
    public String view(String view) {
        return (view.equals("above") ? "Von oben" : view.equals("front") ? "Von vorn" : view.equals("right") ? "Von rechts" : view.equals("spine") ? "Vom Rücken" : "Von einer Ecke");
    }

    @Override
    public String washingTitle() {
        return "Waschen";
    }
}
