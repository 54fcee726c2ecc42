package hearthcloth.words.handing;

/** The room of handing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "Deine Stücke geben kein Mittelstück mit Streifen her; die Reste werden zusammengelegt, wie sie sind.";
    }

    @Override
    public String by() {
        return "Wer sie weitergibt (wenn gewünscht)";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "die Idee: wie in diesem Tuch" : choice.equals("open") ? "nur an dem Tag: wie der Vorrat es hergibt" : choice.equals("share") ? "die Idee: ihr Anteil an der Breite" : choice.equals("square") ? "das größte Quadrat im Vorrat" : choice.equals("strips") ? "so breit wie die Stoffstreifen" : choice.equals("any") ? "irgendein Stoff" : choice.equals("favourite") ? "ein Lieblingsstoff" : choice.equals("lightest") ? "der hellste Stoff" : "der dunkelste Stoff");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + " nach " + teacher;
    }

    @Override
    public String classAway() {
        return "Zurücknehmen";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return cloth + " zurücknehmen";
    }

    @Override
    public String classAwayAsk(String cloth) {
        return cloth + " zurücknehmen?";
    }

    @Override
    public String classFitAbout(String cloth) {
        return cloth + " meinem Vorrat anpassen";
    }

    @Override
    public String classFits() {
        return "Es passt zu deinem Vorrat. Es gehört jetzt dir: ändere, was du willst.";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + ", von " + teacher;
    }

    @Override
    public String classHand() {
        return "Ein Tuch an alle ausgeben";
    }

    @Override
    public String classHandOut() {
        return "Ausgeben";
    }

    @Override
    public String classHanded(String cloth) {
        return cloth + " ist an alle ausgegeben.";
    }

    @Override
    public String classIsAway() {
        return "Zurückgenommen. Danach gemachte Tücher bleiben bei denen, die sie gemacht haben.";
    }

    @Override
    public String classKeepFirst() {
        return "Zuerst ein eigenes Tuch speichern; dann lässt es sich an alle ausgeben.";
    }

    @Override
    public String classLacks() {
        return "Dafür fehlt Stoff; die Seite sagt, was fehlt.";
    }

    @Override
    public String classLead() {
        return "Größen, Reihenfolge und Verarbeitung sind von der Kursleitung; der Stoff ist deiner.";
    }

    @Override
    public String classNone() {
        return "Noch wurde kein Tuch ausgegeben.";
    }

    @Override
    public String classOne() {
        return "Eines deiner Tücher";
    }

    @Override
    public String classTitle() {
        return "Leitlinien";
    }

    @Override
    public String classWithdrawn() {
        return "Diese Leitlinie wurde zurückgenommen.";
    }

    @Override
    public String empty() {
        return "Dein Vorrat ist leer; zuerst eintragen, was da ist.";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "Die Größe" : field.equals("hearth") ? "Das Mittelstück" : field.equals("bars") ? "Die Streifen" : field.equals("rounds") ? "Wie viele Runden" : field.equals("order") ? "Die Reihenfolge" : field.equals("colours") ? "Die Farben" : "In der Mitte");
    }

    @Override
    public String fitsAll() {
        return "Es passt zu deinem Vorrat und hält jede Regel ein. Es gehört jetzt dir: ändere, was du willst.";
    }

    @Override
    public String inFavourite() {
        return "Dein liebster Stoff (falls die Idee danach fragt)";
    }

    @Override
    public String inFile() {
        return "Die Datei";
    }

    @Override
    public String inFit() {
        return "Meinem Vorrat anpassen";
    }

    @Override
    public String inHow() {
        return "Eine Leitliniendatei oder die Plandatei eines Tuchs, die dir jemand geschickt hat. Sie wird deinem Vorrat angepasst; lässt sich nicht jede Regel einhalten, gibt es das Nächste, und es wird gesagt, was gebogen wurde.";
    }

    @Override
    public String inTitle() {
        return "Eine Idee hereinholen";
    }

    @Override
    public String is() {
        return "Das ist";
    }

    @Override
    public String lacks() {
        return "Für dieses Tuch fehlt noch Stoff; eine Idee wird aus einem genommen, das sich machen lässt.";
    }

    @Override
    public String lead(String cloth) {
        return "Bei jeder Wahl in " + cloth + " angeben, ob sie zur Idee gehört oder nur an dem Tag so war. Naht und Saum gehen mit, wie sie sind.";
    }

    @Override
    public String name() {
        return "Name der Idee";
    }

    @Override
    public String nearest(String bent, String why) {
        return "Das Nächste, was dein Vorrat hergibt. " + bent + " Warum: " + why;
    }

    @Override
    public String noCloth() {
        return "Dieses Tuch gibt es nicht; vielleicht wurde es entfernt.";
    }

    @Override
    public String noneFits(String why) {
        return "Aus deinem Vorrat wird noch kein Tuch dieser Idee. " + why;
    }

    @Override
    public String outNone() {
        return "Es gibt noch kein Tuch mit Mittelstück und Streifen.";
    }

    @Override
    public String outTitle() {
        return "Eines von deinen weitergeben";
    }

    @Override
    public String own(String example) {
        return "oder eine eigene Regel, etwa " + example;
    }

    @Override
    public String refused(String why) {
        return "Diese Datei lässt sich so nicht verwenden. " + why;
    }

    @Override
    public String saveFile() {
        return "Als Leitliniendatei speichern";
    }

    @Override
    public String savePage() {
        return "Als Seite speichern, die alle öffnen können";
    }

    @Override
    public String scraps() {
        return "Ein Tuch aus Resten gehört zu seinen Resten: Nur ein Tuch mit Mittelstück und Streifen lässt sich weitergeben.";
    }

    @Override
    public String title() {
        return "Eine Idee weitergeben";
    }

    @Override
    public String words() {
        return "Was du dazu sagen möchtest";
    }
}
