package hearthcloth.words.framing;

/** The room of framing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return (n == 1 ? "" + n + " Schnitt ist gemacht" : "" + n + " Schnitte sind gemacht");
    }

    @Override
    public String begunGoCutting() {
        return "Weiter schneiden";
    }

    @Override
    public String begunGoOn() {
        return "Weitermachen";
    }

    @Override
    public String begunGoSewing() {
        return "Weiter nähen";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "Weiter nähen: " + next;
    }

    @Override
    public String begunLacks() {
        return "es fehlt Stoff";
    }

    @Override
    public String begunLook() {
        return "Ansehen";
    }

    @Override
    public String begunPlanned() {
        return "geplant";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "geplant für " + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return sewn + " von " + seams + " Nähten sind genäht; zuerst ist noch etwas zu schneiden";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return sewn + " von " + seams + " Nähten sind genäht";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return sewn + " von " + seams + " Nähten sind genäht, für " + gift;
    }

    @Override
    public String drawerMeasures() {
        return "Lineal, Papier und Sprache";
    }

    @Override
    public String drawerTitle() {
        return "Die Schublade";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "Name" : field.equals("width") ? "Breite" : field.equals("length") ? "Länge" : field.equals("fabric") ? "Stoff" : field.equals("washed") ? "Gewaschen" : field.equals("at") ? "Schnitt bei" : field.equals("many") ? "Wie viele" : field.equals("colour") ? "Farbe" : field.equals("faces") ? "Seiten" : field.equals("nap") ? "Strich" : field.equals("made") ? "Fertig am" : field.equals("wrapped") ? "Eingebunden" : "Wer es hat");
    }

    @Override
    public String firstAgain() {
        return "Noch einmal";
    }

    @Override
    public String firstExample() {
        return "Ein Beispiel";
    }

    @Override
    public String firstFilm() {
        return "Beispiel: Neun Reste aus einem Korb werden ein Tuch aus zwölf Streifen, das um eine Schachtel gebunden wird";
    }

    @Override
    public String firstFour() {
        return "und es ist eingebunden. Es bleibt ein Tuch.";
    }

    @Override
    public String firstKinds() {
        return "Was soll eingebunden werden?";
    }

    @Override
    public String firstOne() {
        return "Neun Reste aus einem Korb";
    }

    @Override
    public String firstPrivate() {
        return "Alles bleibt auf diesem Gerät. Nichts wird aus dem Internet geholt.";
    }

    @Override
    public String firstStop() {
        return "Anhalten";
    }

    @Override
    public String firstThree() {
        return "Zwölf Streifen, einer nach dem anderen,";
    }

    @Override
    public String firstTwo() {
        return "und eine Schachtel zum Verschenken.";
    }

    @Override
    public String frameBesides() {
        return "Außerdem";
    }

    @Override
    public String frameCopies() {
        return "Sicherungskopien";
    }

    @Override
    public String frameExample() {
        return "Beispiel";
    }

    @Override
    public String frameExampleAway() {
        return "Beispiel wegräumen";
    }

    @Override
    public String frameExampleIs() {
        return "Das ist ein Beispiel zum Ausprobieren.";
    }

    @Override
    public String frameExampleNotYours() {
        return "Nichts davon gehört dir.";
    }

    @Override
    public String frameGuidelines() {
        return "Leitlinien";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth, der Tisch";
    }

    @Override
    public String frameLeave() {
        return "Abmelden";
    }

    @Override
    public String framePeople() {
        return "Personen";
    }

    @Override
    public String frameSkip() {
        return "Zum Inhalt";
    }

    @Override
    public String frameStages() {
        return "Stationen";
    }

    @Override
    public String frameStudio() {
        return "Werkstatt";
    }

    @Override
    public String giftCloth(String size) {
        return "ein Tuch " + size;
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "Schachtel" : shape.equals("BOTTLE") ? "Flasche" : shape.equals("TWO_BOTTLES") ? "Zwei Flaschen" : shape.equals("ROUND") ? "Ball" : shape.equals("BOOKS") ? "Zwei Bücher" : "Rolle");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "lang" : measure.equals("wide") ? "breit" : measure.equals("high") ? "hoch" : measure.equals("across") ? "quer" : "dick");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return "Deine Nähte nehmen im Mittel " + eats + " weg (Median von " + n + "); die Hälfte lag höchstens " + spread + " daneben. Die übliche Naht nimmt " + usual + " weg.";
    }

    @Override
    public String handFrom() {
        return "Woraus das gelernt ist";
    }

    @Override
    public String handIsOwn() {
        return "Neue Tücher werden mit deiner eigenen Naht geplant.";
    }

    @Override
    public String handIsUsual() {
        return "Neue Tücher werden mit der üblichen Naht geplant.";
    }

    @Override
    public String handOwn() {
        return "Neue Tücher mit dieser Naht planen";
    }

    @Override
    public String handTitle() {
        return "Deine eigene Hand";
    }

    @Override
    public String handUnknown(String n) {
        return "Sobald auf der Seite Nähen " + n + " Nähte gemessen sind, steht hier, was deine Nähte wirklich wegnehmen.";
    }

    @Override
    public String handUsual() {
        return "Wieder mit der üblichen Naht planen";
    }

    @Override
    public String homeAll(String n) {
        return "Alle " + n;
    }

    @Override
    public String homeEmpty() {
        return "Dein Tisch ist leer. Was liegt in deinem Korb?";
    }

    @Override
    public String homeFirst() {
        return "Hierher kommt das erste";
    }

    @Override
    public String homeMade() {
        return "Fertig";
    }

    @Override
    public String homeMaking() {
        return "In Arbeit";
    }

    @Override
    public String homeNothing() {
        return "Noch nichts. Sag, was eingebunden werden soll, und sieh, was dein Vorrat hergibt.";
    }

    @Override
    public String homeOnTable() {
        return "Auf dem Tisch";
    }

    @Override
    public String homePhotograph() {
        return "Fotografieren";
    }

    @Override
    public String homePieces(int n) {
        return (n == 1 ? "" + n + " Stück auf dem Tisch" : "" + n + " Stücke auf dem Tisch");
    }

    @Override
    public String homeTitle() {
        return "Was soll eingebunden werden?";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Eingabe" : key.equals("space") ? "Leertaste" : key.equals("pageDown") ? "Bild ↓" : key.equals("pageUp") ? "Bild ↑" : "Esc");
    }

    @Override
    public String keysArrows() {
        return "auf dem Tisch von Stück zu Stück, auf dem Tuch von Streifen zu Streifen; drehen das gebundene Geschenk";
    }

    @Override
    public String keysEnter() {
        return "drückt es";
    }

    @Override
    public String keysEscape() {
        return "schließt, was offen ist";
    }

    @Override
    public String keysNumbers() {
        return "die vier Ansichten eines Tuchs; ein Tuch der Galerie";
    }

    @Override
    public String keysPages() {
        return "Fertig und Zurück beim Schneiden und Nähen; ein Fußschalter sendet sie";
    }

    @Override
    public String keysPlusMinus() {
        return "näher und ferner, auf dem Tisch und um das gebundene Geschenk";
    }

    @Override
    public String keysSingle() {
        return "Tasten mit einem Buchstaben oder Zeichen gelten auf diesem Gerät";
    }

    @Override
    public String keysSpace() {
        return "wählt ein Stück oder einen Streifen; beim Schneiden und Nähen: Fertig";
    }

    @Override
    public String keysTab() {
        return "von einem zum nächsten";
    }

    @Override
    public String keysTitle() {
        return "Tasten";
    }

    @Override
    public String keysU() {
        return "macht das Letzte rückgängig";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "Zoll, auf ⅛ genau";
    }

    @Override
    public String measureKeep() {
        return "Speichern";
    }

    @Override
    public String measureLanguage() {
        return "Deine Sprache";
    }

    @Override
    public String measureLetter() {
        return "Letter";
    }

    @Override
    public String measureMillimetres() {
        return "Zentimeter, auf 1 mm genau";
    }

    @Override
    public String measurePaper() {
        return "Das Papier in deinem Drucker";
    }

    @Override
    public String measureQuarters() {
        return "Zoll, auf ¼ genau";
    }

    @Override
    public String measureRuler() {
        return "Das Lineal in deiner Hand";
    }

    @Override
    public String measureSixteenths() {
        return "Zoll, auf 1⁄16 genau";
    }

    @Override
    public String safeArchive() {
        return "Alles in einer Datei";
    }

    @Override
    public String safeArchiveHow() {
        return "Vorrat, Stoffe und Tücher, zum Aufheben anderswo";
    }

    @Override
    public String safeClose() {
        return "Die Werkstatt schließen";
    }

    @Override
    public String safeCloseHow() {
        return "dabei geht nichts verloren";
    }

    @Override
    public String safeCopies() {
        return "ganze Kopien deiner Arbeit, jeden Tag gemacht, zum Zurückgehen";
    }

    @Override
    public String safeDevices() {
        return "Dieses Tablet und ein Telefon";
    }

    @Override
    public String safeDevicesHow() {
        return "die Werkstatt auch auf einem anderen Bildschirm nutzen";
    }

    @Override
    public String safeTitle() {
        return "Sicher verwahrt und zur Hand";
    }

    @Override
    public String scriptKeeping() {
        return "Wird gespeichert …";
    }

    @Override
    public String scriptKeepingMore() {
        return "Wird gespeichert; %d warten noch.";
    }

    @Override
    public String scriptKeepingOne() {
        return "Wird gespeichert; eins wartet noch.";
    }

    @Override
    public String scriptSilent() {
        return "Die Werkstatt antwortet nicht. Hearthcloth neu starten; nichts Gespeichertes ist verloren.";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "Geschenk" : stage.equals("Stash") ? "Vorrat" : stage.equals("Cloth") ? "Tuch" : stage.equals("Cut") ? "Schneiden" : stage.equals("Sew") ? "Nähen" : stage.equals("Tie") ? "Binden" : stage.equals("Made") ? "Fertig" : "Schublade");
    }

    @Override
    public String staleCloth(String name) {
        return name + " wurde inzwischen in einem anderen Fenster geändert. Hier wurde nichts geändert.";
    }

    @Override
    public String staleTitle() {
        return "In zwei Fenstern geändert";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "Die Farbe des Garns „" + line + "“ ist nicht bekannt; sie dahinter schreiben, zum Beispiel " + name + " #8a9a5b.";
    }

    @Override
    public String threadsKept(int n) {
        return (n == 1 ? "Ein Garn ist gespeichert." : "" + n + " Garne sind gespeichert.");
    }

    @Override
    public String threadsLines() {
        return "Eins je Zeile: der Name, und die Farbe, wenn der Name sie nicht sagt (altes Blau #27344d)";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "Höchstens " + most + " Garne mit je höchstens " + longest + " Zeichen eintragen.";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "Garn: insgesamt " + all + ", mit Fadenenden und 15 % Zugabe; davon " + bobbin + " auf der Spule.";
    }

    @Override
    public String threadsSave() {
        return "Speichern";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "An dieser Naht fällt " + least + " am wenigsten auf, " + most + " am meisten.";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "An dieser Naht fällt " + least + " am wenigsten auf.";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "Von deinem Garn fällt " + least + " auf diesen Stoffen am wenigsten auf, " + most + " am meisten.";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "Von deinem Garn fällt " + least + " auf diesen Stoffen am wenigsten auf.";
    }

    @Override
    public String threadsTitle() {
        return "Dein Garn";
    }

    @Override
    public String threadsUsed() {
        return "Die Seite Nähen sagt, welches davon auf einem Tuch am wenigsten auffällt und welches am meisten.";
    }

    @Override
    public String troubleColour(String written) {
        return "„" + written + "“ ist keine bekannte Farbe; zum Beispiel salbeigrün oder #8a9a5b schreiben oder leer lassen.";
    }

    @Override
    public String troubleComeIn() {
        return "Zuerst mit Name und Kennwort hereinkommen.";
    }

    @Override
    public String troubleGone() {
        return "Die Seite laden, dann wird sie neu geschrieben.";
    }

    @Override
    public String troubleInside() {
        return "In der Werkstatt ging etwas schief. Nichts wurde geändert; noch einmal versuchen.";
    }

    @Override
    public String troubleLarge(String most) {
        return "Diese Datei ist größer als " + most + " MB; eine kleinere wählen.";
    }

    @Override
    public String troubleNoFile() {
        return "Es ist keine Datei gewählt, oder sie ist leer.";
    }

    @Override
    public String troubleNotWhole() {
        return "Die Datei ist nicht ganz angekommen; noch einmal senden.";
    }

    @Override
    public String troubleNothing() {
        return "Unter dieser Adresse ist nichts.";
    }

    @Override
    public String troublePlain() {
        return "Das hat nicht geklappt.";
    }

    @Override
    public String troubleTitle() {
        return "Das hat nicht geklappt";
    }

    @Override
    public String troubleUnread() {
        return "Das Gesendete lässt sich nicht lesen; die Seite neu laden und noch einmal senden.";
    }

    @Override
    public String unitCentimetres() {
        return "Ich messe in Zentimetern";
    }

    @Override
    public String unitInches() {
        return "Ich messe in Zoll";
    }

    @Override
    public String wayExample() {
        return "Das Beispiel ausprobieren";
    }

    @Override
    public String wayExampleHow() {
        return "Sechzig Reste und ein Tuch, mit einem Klick wieder weggeräumt.";
    }

    @Override
    public String wayGift() {
        return "Mit dem Geschenk anfangen";
    }

    @Override
    public String wayGiftHow() {
        return "und sehen, wie groß das Tuch sein muss";
    }

    @Override
    public String wayPhotograph() {
        return "Fotografieren";
    }

    @Override
    public String wayPhotographHow() {
        return "neben einem Blatt Papier ausgelegt";
    }

    @Override
    public String waySay() {
        return "Ein Stück beschreiben";
    }

    @Override
    public String waySayHow() {
        return "„12 grüner Druck 10 x 20“; auch viele Zeilen auf einmal";
    }
}
