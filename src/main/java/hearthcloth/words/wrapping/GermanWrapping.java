package hearthcloth.words.wrapping;

/** The room of wrapping in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "was es einbindet";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "Wo der Stoff jedes Flickens liegt, in Prozent des Flickens" : "Wo jeder Stoff liegt, in Prozent des Stoffs");
    }

    @Override
    public String showsEnds() {
        return "Knoten und Enden";
    }

    @Override
    public String showsFrom() {
        return "Zu sehen von";
    }

    @Override
    public String showsHidden() {
        return "Eingefaltet";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "Flicken" : "Stoff");
    }

    @Override
    public String showsOf() {
        return "Vom Sichtbaren";
    }

    @Override
    public String showsSides() {
        return "Seiten";
    }

    @Override
    public String showsTop() {
        return "Oben";
    }

    @Override
    public String showsUnder() {
        return "Unten";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "oben" : view.equals("FRONT") ? "vorn" : view.equals("BACK") ? "hinten" : view.equals("RIGHT") ? "rechts" : view.equals("LEFT") ? "links" : view.equals("CORNER") ? "einer Ecke" : view.equals("UNDERNEATH") ? "unten" : "nirgends");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "Wo jeder Flicken liegt" : "Wo jeder Stoff liegt");
    }

    @Override
    public String tieCare() {
        return "Vorsicht";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "passt" : "zu klein");
    }

    @Override
    public String tieKnot() {
        return "Der Knoten: Kreuzknoten, nicht Altweiberknoten";
    }

    @Override
    public String tieLarge() {
        return "Wie groß das Tuch sein muss";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "Für: " + suited + "; hier " + gift + ", gezeichnet mit " + (own.equals("yes") ? "deinem Tuch" : "einem einfarbigen Tuch") + ". Jeder Pfeil endet dort, wo der Zipfel jetzt liegt.";
    }

    @Override
    public String tieNone() {
        return "Diese Bindung gibt es hier nicht.";
    }

    @Override
    public String tieNothing() {
        return "nichts von dieser Form";
    }

    @Override
    public String tieShort() {
        return "Wenn ein Zipfel nicht reicht";
    }

    @Override
    public String tieSold() {
        return "Größen, die es zu kaufen gibt";
    }

    @Override
    public String tieSoldFor() {
        return "Verkauft für (üblich)";
    }

    @Override
    public String tieSquare() {
        return "im Quadrat, fertig";
    }

    @Override
    public String tieSquareOf() {
        return "Seitenlänge";
    }

    @Override
    public String tieThisGift() {
        return "Dieses Geschenk";
    }

    @Override
    public String tieTitle(String tie) {
        return tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return tie + ", " + trade;
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return "„" + tie + "“ ist für: " + suited + ". Für " + gift + " bitte etwas anderes wählen.";
    }

    @Override
    public String tieUpTo() {
        return "So gebunden, ein Geschenk dieser Form bis";
    }

    @Override
    public String tiedAwayExample() {
        return "0; −2 ist näher";
    }

    @Override
    public String tiedBack() {
        return "Zurück zum Tuch";
    }

    @Override
    public String tiedBackFace() {
        return "Rückseite";
    }

    @Override
    public String tiedByPatch() {
        return "Flicken für Flicken";
    }

    @Override
    public String tiedCanvas() {
        return "Das gebundene Geschenk. Pfeiltasten drehen es, Plus und Minus holen es näher oder weiter weg, Pos 1 zeigt es von einer Ecke.";
    }

    @Override
    public String tiedDown() {
        return "Von dir weg kippen";
    }

    @Override
    public String tiedDrag() {
        return "Mit dem Finger oder der Maus ziehen, oder die Pfeiltasten benutzen.";
    }

    @Override
    public String tiedExample(String unit) {
        return (unit.equals("in") ? "box 12 x 8 x 4 in" : "box 30 x 20 x 10 cm");
    }

    @Override
    public String tiedFace() {
        return "Seite, die außen ist";
    }

    @Override
    public String tiedFarther() {
        return "Weiter weg";
    }

    @Override
    public String tiedFolds() {
        return "Die Falten auf Papier, zum Ausschneiden und Falten im Kleinen";
    }

    @Override
    public String tiedFromAbove() {
        return "Von oben";
    }

    @Override
    public String tiedFromCorner() {
        return "Von einer Ecke";
    }

    @Override
    public String tiedFromFront() {
        return "Von vorn";
    }

    @Override
    public String tiedFront() {
        return "Vorderseite";
    }

    @Override
    public String tiedHow() {
        return "Wie es gebunden ist";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "So wird gebunden: " + tie;
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return cloth + " ist jetzt für " + gift + ".";
    }

    @Override
    public String tiedKeep() {
        return "Dafür ist das Tuch";
    }

    @Override
    public String tiedLacks() {
        return "Für dieses Tuch fehlt noch Stoff, also gibt es nichts zu binden.";
    }

    @Override
    public String tiedLeft() {
        return "Nach links";
    }

    @Override
    public String tiedNear() {
        return "Gezeichnet, wie der Stoff gelegt ist. Nahe am Knoten, etwa eine Handbreit, rafft sich echter Stoff, und die Enden fallen, wie sie wollen.";
    }

    @Override
    public String tiedNearer() {
        return "Näher";
    }

    @Override
    public String tiedNone() {
        return "Um dieses Geschenk reicht das Tuch nicht.";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "Aus der Mitte, von dir weg, " + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "Aus der Mitte, nach rechts, " + unit;
    }

    @Override
    public String tiedQuarter(String turns) {
        return (turns.equals("none") ? "wie gezeichnet" : turns.equals("one") ? "ein Viertel" : turns.equals("two") ? "halb" : "drei Viertel");
    }

    @Override
    public String tiedQuarters() {
        return "Das Tuch gegen den Uhrzeigersinn drehen";
    }

    @Override
    public String tiedRight() {
        return "Nach rechts";
    }

    @Override
    public String tiedRightExample() {
        return "0; −2 ist links";
    }

    @Override
    public String tiedSay() {
        return "Eintragen, was eingebunden wird: box 30 x 20 x 10 cm (Schachtel), bottle 8 x 30 cm (Flasche), two bottles 8 x 30 cm (zwei Flaschen), ball 20 cm (Kugel), books 22 x 15 x 3 cm (zwei Bücher), roll 5 x 40 cm (Rolle).";
    }

    @Override
    public String tiedShow() {
        return "Zeigen";
    }

    @Override
    public String tiedShows() {
        return "Was zu sehen ist";
    }

    @Override
    public String tiedTie() {
        return "Bindung";
    }

    @Override
    public String tiedTurn() {
        return "Das Geschenk drehen";
    }

    @Override
    public String tiedTurned(String way) {
        return (way.equals("left") ? "nach links gedreht" : way.equals("right") ? "nach rechts gedreht" : way.equals("up") ? "zu dir gekippt" : "von dir weg gekippt");
    }

    @Override
    public String tiedTurning() {
        return "Das Geschenk zum Drehen";
    }

    @Override
    public String tiedUp() {
        return "Zu dir kippen";
    }

    @Override
    public String tiedWhat() {
        return "Was eingebunden wird";
    }

    @Override
    public String title(String cloth) {
        return cloth + ", gebunden";
    }

    @Override
    public String which() {
        return "Welches Tuch wird gebunden?";
    }
}
