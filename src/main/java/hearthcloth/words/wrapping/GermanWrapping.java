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
    public String tiedByPatch() {
        return "Flicken für Flicken";
    }

    @Override
    public String tiedFolds() {
        return "Die Falten auf Papier, zum Ausschneiden und Falten im Kleinen";
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
    public String tiedNear() {
        return "Gezeichnet, wie der Stoff gelegt ist. Nahe am Knoten, etwa eine Handbreit, rafft sich echter Stoff, und die Enden fallen, wie sie wollen.";
    }

    @Override
    public String tiedNone() {
        return "Um dieses Geschenk reicht das Tuch nicht.";
    }

    @Override
    public String tiedOff() {
        return "Das Geschenk neben der Mitte";
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
    public String tiedRightExample() {
        return "0; −2 ist links";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + " %";
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
    public String tiedSides() {
        return "Ansehen";
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
