package hearthcloth.words.finishing;

/** The room of finishing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return (n == 1 ? "Vorher einmal, ohne Notiz." : "Vorher " + n + "-mal, ohne Notiz.");
    }

    @Override
    public String againFor(String who) {
        return "für " + who;
    }

    @Override
    public String againSomething() {
        return "etwas";
    }

    @Override
    public String againTitle() {
        return "Wieder eingebunden";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return cloth + " wurde " + "" + n + "-mal" + " benutzt.";
    }

    @Override
    public String againWhat() {
        return "Was";
    }

    @Override
    public String againWhen() {
        return "Wann";
    }

    @Override
    public String againWho() {
        return "Für wen";
    }

    @Override
    public String bars(int n) {
        return "" + n + " Streifen";
    }

    @Override
    public String date(String day, String month, String year) {
        return day + ". " + (month.equals("m1") ? "Januar" : month.equals("m2") ? "Februar" : month.equals("m3") ? "März" : month.equals("m4") ? "April" : month.equals("m5") ? "Mai" : month.equals("m6") ? "Juni" : month.equals("m7") ? "Juli" : month.equals("m8") ? "August" : month.equals("m9") ? "September" : month.equals("m10") ? "Oktober" : month.equals("m11") ? "November" : "Dezember") + " " + year;
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + ", " + (fabrics == 1 ? "" + fabrics + " Stoff" : "" + fabrics + " Stoffe") + (days == 0 ? "" : days == 1 ? ", an einem Tag genäht" : ", an " + days + " Tagen genäht") + ".";
    }

    @Override
    public String labelAgain() {
        return "wieder eingebunden";
    }

    @Override
    public String labelSlip() {
        return "Zettel";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return "Zettel von " + cloth;
    }

    @Override
    public String lastStep() {
        return "Zurück zum letzten Schritt";
    }

    @Override
    public String leftBack(int n) {
        return (n == 1 ? "Er liegt wieder auf dem Tisch, so groß wie jetzt." : "Sie liegen wieder auf dem Tisch, so groß wie jetzt.");
    }

    @Override
    public String leftFirst() {
        return "Diese Reste werden zuerst verwendet. Was soll eingebunden werden?";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "Keine Reste zum Aufheben" : n == 1 ? "Ein Rest zum Aufheben" : "" + n + " Reste zum Aufheben");
    }

    @Override
    public String leftNone() {
        return "Keiner davon liegt noch im Vorrat.";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String leftSome(String n) {
        return "Davon noch " + n + " auf dem Tisch, der Rest ist verbraucht.";
    }

    @Override
    public String leftUse() {
        return "Die Reste verwenden";
    }

    @Override
    public String leftUsed() {
        return "Alles ist inzwischen verbraucht.";
    }

    @Override
    public String notMade() {
        return "Es ist noch nicht gemacht: Dafür fehlt Stoff.";
    }

    @Override
    public String patches(int n) {
        return "" + n + " Flicken";
    }

    @Override
    public String photoAnother() {
        return "Ein anderes Foto";
    }

    @Override
    public String photoAway() {
        return "Entfernen";
    }

    @Override
    public String photoAwayAsk() {
        return "Das Foto entfernen? Es ist hier sonst nirgends gespeichert.";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + ", gezeichnet";
    }

    @Override
    public String photoIsAway() {
        return "Das Foto ist entfernt; die Zeichnung steht wieder da.";
    }

    @Override
    public String photoIts() {
        return "Sein Foto";
    }

    @Override
    public String photoKeep() {
        return "Behalten";
    }

    @Override
    public String photoKept() {
        return "Das Foto ist gespeichert. Wo und wann es aufgenommen wurde, wird nicht mitgespeichert.";
    }

    @Override
    public String photoNone() {
        return "Von diesem Tuch gibt es kein Foto.";
    }

    @Override
    public String photoSend() {
        return "Beide Seiten, zum Verschicken";
    }

    @Override
    public String photoTake() {
        return "Fotografieren";
    }

    @Override
    public String photoYours(String cloth) {
        return "Dein Foto von " + cloth;
    }

    @Override
    public String picture(String cloth) {
        return "Vorderseite von " + cloth;
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return (across.equals("less") ? "" + width + " schmaler" : across.equals("more") ? "" + width + " breiter" : "") + (both.equals("yes") ? ", " : "") + (up.equals("less") ? "" + height + " niedriger" : up.equals("more") ? "" + height + " höher" : "") + " als geplant.";
    }

    @Override
    public String slipAnd() {
        return "und";
    }

    @Override
    public String slipAsPlanned() {
        return "Wie geplant.";
    }

    @Override
    public String slipCorners() {
        return "Von Ecke zu Ecke";
    }

    @Override
    public String slipCornersOther() {
        return "Von Ecke zu Ecke, andersherum";
    }

    @Override
    public String slipHeight() {
        return "Höhe";
    }

    @Override
    public String slipIsKept() {
        return "Der Zettel ist gespeichert.";
    }

    @Override
    public String slipIts() {
        return "Sein Zettel";
    }

    @Override
    public String slipKeep() {
        return "Zettel behalten";
    }

    @Override
    public String slipKeeper() {
        return "Für wen";
    }

    @Override
    public String slipLeans(String length) {
        return "Von Ecke zu Ecke unterscheiden sich die Richtungen um " + length + ": Es ist etwas schief. Gebunden sieht das niemand.";
    }

    @Override
    public String slipLongName(String most) {
        return "Der Name darf höchstens " + most + " Zeichen haben.";
    }

    @Override
    public String slipLongNote(String most) {
        return "Eine Notiz hat höchstens " + most + " Zeichen.";
    }

    @Override
    public String slipMade() {
        return "Fertig am";
    }

    @Override
    public String slipMeasures(String unit) {
        return "Es misst, " + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "Auch die Breite eintragen, oder die ganze Größe leer lassen." : "Auch die Höhe eintragen, oder die ganze Größe leer lassen.");
    }

    @Override
    public String slipName() {
        return "Name";
    }

    @Override
    public String slipPlanned(String size) {
        return "geplant " + size;
    }

    @Override
    public String slipPrint() {
        return "Drucken";
    }

    @Override
    public String slipSewn() {
        return "Es ist genäht";
    }

    @Override
    public String slipStraight() {
        return "Von Ecke zu Ecke ist es in beiden Richtungen gleich.";
    }

    @Override
    public String slipTie() {
        return "Bindung zeigen";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "Breite" : field.equals("height") ? "Höhe" : field.equals("corner") ? "Von Ecke zu Ecke" : "Die anderen Ecken") + ": " + why;
    }

    @Override
    public String slipWidth() {
        return "Breite";
    }

    @Override
    public String slipWord() {
        return "Ein Wort an dich";
    }

    @Override
    public String slipWrapped() {
        return "Eingebunden";
    }

    @Override
    public String title() {
        return "Es ist genäht, und es hält.";
    }
}
