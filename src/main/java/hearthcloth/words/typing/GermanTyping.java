package hearthcloth.words.typing;

/** The room of typing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return "Einen Befehl " + command + " gibt es nicht; es gibt " + commands + ".";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite: Kein Stoff im Vorrat heißt \"" + name + "\"; es gibt " + fabrics + ".";
    }

    @Override
    public String guidelineTwice(String option) {
        return option + ": Das sagt die Leitlinie; " + option + " weglassen oder in die Leitlinie schreiben.";
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return file + " ist geschrieben: " + name + ".";
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "Die Seite wäre " + size + " kB groß, mehr als " + most + " kB; das Bild weglassen oder verkleinern.";
    }

    @Override
    public String ideaNoPieces() {
        return "Die Stücke des Beispiels fehlen; mit --from STASH.csv welche angeben.";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return file + " ist geschrieben, " + size + " kB: eine Datei, die sich ohne Netz öffnet. Verschicke sie oder stelle sie auf deine Seite im Netz.";
    }

    @Override
    public String inside(String what) {
        return "In Hearthcloth ist etwas schiefgegangen (" + what + ").";
    }

    @Override
    public String kitsBoth() {
        return "--students: Die Liste sagt, wie viele Tücher es sind; --students oder --wishes weglassen.";
    }

    @Override
    public String kitsEmpty() {
        return "Der Vorrat ist leer; mindestens ein Stück hinzufügen.";
    }

    @Override
    public String kitsWhich() {
        return "Welche Tücher? --wishes LIST.csv angeben, oder --students 12 --size \"16 in\".";
    }

    @Override
    public String language(String tags, String text) {
        return "\"" + text + "\" ist keine Sprache, die hier gesprochen wird; eine von " + tags + " schreiben, oder ihren Namen";
    }

    @Override
    public String memory() {
        return "Hearthcloth ist bei diesem Vorrat der Speicher ausgegangen. Ein paar Stücke weglassen und noch einmal versuchen.";
    }

    @Override
    public String missing(String what) {
        return "Es fehlt etwas: " + what + ".";
    }

    @Override
    public String notFile(String text) {
        return "\"" + text + "\" ist kein Dateiname; einen anderen wählen";
    }

    @Override
    public String note(String what) {
        return "Hinweis: " + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return option + " nimmt keinen Wert; \"" + text + "\" weglassen.";
    }

    @Override
    public String optionTwice(String option) {
        return option + " ist zweimal getippt; eines davon weglassen.";
    }

    @Override
    public String optionUnknown(String option) {
        return "Eine Option " + option + " gibt es nicht.";
    }

    @Override
    public String pictureColours(String what) {
        return "Die Farben des Bildes und deine nächsten Stoffe: " + what + ".";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + ", " + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + ", nichts in der Nähe";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "wird gezeichnet" : "wird gelesen: " + percent);
    }

    @Override
    public String readCannot(String file) {
        return file + " ist nicht lesbar:";
    }

    @Override
    public String readCannotInput() {
        return "Das Bild ist nicht lesbar:";
    }

    @Override
    public String readDrawn(String file) {
        return "Ins Foto gezeichnet: " + file + ".";
    }

    @Override
    public String readMemory() {
        return "Für dieses Bild reichte der Speicher nicht; ein kleineres nehmen.";
    }

    @Override
    public String readNothing() {
        return "Es wurde keine Vorratsdatei geschrieben, weil kein Stück so hineinkann, wie es ist.";
    }

    @Override
    public String report() {
        return "Deine Dateien sind unberührt. Bitte melde es, mit der Vorratsdatei und dem, was du getippt hast.";
    }

    @Override
    public String settings(String file, String line, String name) {
        return "Die Einstellungsdatei " + file + ", die " + name + " nennt, ist nicht lesbar; Zeilen wie " + line + " schreiben oder " + name + " weglassen.";
    }

    @Override
    public String sheetWrote(String file) {
        return file + " ist geschrieben. Mit 100 % drucken, nicht an die Seite angepasst; die dünne Linie darauf ist dann 20 cm lang, oder 7 7/8 in.";
    }

    @Override
    public String shown(String command) {
        return "\"" + command + "\" zeigt, wie man es schreibt.";
    }

    @Override
    public String sizeReach(String text) {
        return "\"" + text + "\" ist außer Reichweite; ein Tuch misst 5 cm bis 5 m, also Zahl und Einheit prüfen";
    }

    @Override
    public String sizeWhich() {
        return "Sag entweder, was eingebunden wird, --gift \"box 30 x 20 x 8 cm\", oder welches Tuch du hast, --cloth \"38 1/2 in\".";
    }

    @Override
    public String unread(String what) {
        return "So getippt ist das nicht lesbar: " + what + ".";
    }

    @Override
    public String unusable(String file) {
        return file + " ist so nicht brauchbar:";
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "Der Vorrat" : "Was hereinkam,") + " ist so nicht brauchbar:";
    }

    @Override
    public String wordTooMany(String word) {
        return "\"" + word + "\" ist ein Wort zu viel; einen Wunsch aus mehreren Wörtern in Anführungszeichen setzen.";
    }
}
