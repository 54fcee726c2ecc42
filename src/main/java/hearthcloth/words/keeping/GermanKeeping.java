package hearthcloth.words.keeping;

/** The room of keeping in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + "; bei " + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + "; eingebunden: " + what;
    }

    @Override
    public String aboutMade(String day) {
        return "Fertig " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "Bei " + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "Eingebunden: " + what;
    }

    @Override
    public String archiveAdd() {
        return "Behalten, was hier ist, und das Archiv dazunehmen";
    }

    @Override
    public String archiveBring() {
        return "Hereinholen";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return (pieces == 1 ? "" + pieces + " Stück" : "" + pieces + " Stücke") + " und " + (cloths == 1 ? "" + cloths + " Tuch" : "" + cloths + " Tücher") + " hereingeholt. Rückgängig beim Vorrat nimmt die Stücke wieder heraus.";
    }

    @Override
    public String archiveHow() {
        return "Was schon hier ist";
    }

    @Override
    public String archiveIn() {
        return "Ein Archiv zum Hereinholen";
    }

    @Override
    public String archiveInstead() {
        return "Ersetzen, was hier ist: den Vorrat und Tücher, die auch im Archiv sind";
    }

    @Override
    public String archiveOut() {
        return "Alles herausholen";
    }

    @Override
    public String archiveTitle() {
        return "Alles in einer Datei";
    }

    @Override
    public String archiveWhat() {
        return "Vorrat, Bilder der Stoffe und Tücher in einer Zip-Datei. Eine Kopie sicher aufheben oder auf ein anderes Gerät mitnehmen.";
    }

    @Override
    public String beside() {
        return "Nebeneinander";
    }

    @Override
    public String cardLacking() {
        return "Dafür reicht der Stoff nicht.";
    }

    @Override
    public String cardMore() {
        return "Anleitung, Dateien, Name";
    }

    @Override
    public String cardPhotograph() {
        return "Fotografieren";
    }

    @Override
    public String cardSlip() {
        return "Sein Zettel";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + ", " + used;
    }

    @Override
    public String classes() {
        return "Ein Kurs";
    }

    @Override
    public String compareBack() {
        return "Zurück zu den Tüchern";
    }

    @Override
    public String compareFew() {
        return "Zwei Tücher oder mehr wählen, um sie nebeneinander zu sehen.";
    }

    @Override
    public String copy() {
        return "Neuer Entwurf daraus";
    }

    @Override
    public String find() {
        return "Ein Tuch suchen";
    }

    @Override
    public String findExample() {
        return "Name, Stoff, Geschenk oder Person";
    }

    @Override
    public String findGo() {
        return "Suchen";
    }

    @Override
    public String first() {
        return "Hierher kommt das erste.";
    }

    @Override
    public String found(String all, String found, String sought) {
        return found + " von " + all + " für „" + sought + "“.";
    }

    @Override
    public String ideaGo() {
        return "Ideen, hinaus und herein";
    }

    @Override
    public String ideaTitle() {
        return "Eine Idee in einer Datei";
    }

    @Override
    public String ideaWhat() {
        return "Ein Tuch als Regeln weitergeben, die aus jedem Vorrat anders werden, oder holen, was jemand geschickt hat.";
    }

    @Override
    public String kits() {
        return "Bausätze und Geschenke";
    }

    @Override
    public String labelRemoved(String name) {
        return name + " entfernt";
    }

    @Override
    public String name() {
        return "Name";
    }

    @Override
    public String open(String name) {
        return name + " öffnen";
    }

    @Override
    public String redo(String deed) {
        return "Wiederholen: " + deed;
    }

    @Override
    public String remove() {
        return "Entfernen";
    }

    @Override
    public String removeSure(String name) {
        return name + " endgültig entfernen?";
    }

    @Override
    public String removed(String name) {
        return name + " ist entfernt. Rückgängig bringt es zurück.";
    }

    @Override
    public String rename() {
        return "Umbenennen";
    }

    @Override
    public String see() {
        return "Sehen, was dein Vorrat hergibt";
    }

    @Override
    public String showAll() {
        return "Alle zeigen";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "entworfen" : stage.equals("CUT") ? "zugeschnitten" : stage.equals("RECUT") ? "zugeschnitten, bis auf später Verlangtes" : "genäht");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "Tuch" : what.equals("cut") ? "Schneiden" : what.equals("sew") ? "Nähen" : what.equals("guideA4") ? "Anleitung, A4" : what.equals("guideLetter") ? "Anleitung, Letter" : what.equals("guide") ? "Anleitung" : what.equals("class") ? "Anleitung für einen Kurs" : what.equals("slips") ? "Flickenzettel" : what.equals("front") ? "Bild der Vorderseite" : what.equals("back") ? "Bild der Rückseite" : what.equals("plan") ? "Plandatei" : what.equals("kit") ? "Bausatzdatei" : "Die Idee weitergeben");
    }

    @Override
    public String tick() {
        return "Zwei oder mehr ankreuzen.";
    }

    @Override
    public String title() {
        return "Was du gemacht hast";
    }

    @Override
    public String undo(String deed) {
        return "Rückgängig: " + deed;
    }

    @Override
    public String useFor(String who) {
        return "für " + who;
    }

    @Override
    public String used(int n) {
        return "" + n + "-mal benutzt";
    }

    @Override
    public String usedLast(String last, int n) {
        return (n == 1 ? "" + n + "-mal benutzt: " + last : "" + n + "-mal benutzt, zuletzt: " + last);
    }
}
