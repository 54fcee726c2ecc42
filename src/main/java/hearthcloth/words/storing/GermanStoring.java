package hearthcloth.words.storing;

/** The room of storing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanStoring implements StoringWords {

    @Override
    public String again() {
        return "Nichts wurde geändert; noch einmal versuchen.";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "Dieses Archiv ist beschädigt; nichts wurde daraus übernommen." : why.equals("LARGE") ? "Dieses Archiv enthält mehr, als eine Werkstatt fasst; nichts wurde daraus übernommen." : why.equals("NONE") ? "Diese Datei ist kein Archiv von Hearthcloth." : why.equals("NEWER") ? "Dieses Archiv ist von einem neueren Hearthcloth; nichts wurde daraus übernommen." : why.equals("PIECES") ? "Dieses Archiv enthält mehr Stücke, als ein Vorrat fasst; nichts wurde daraus übernommen." : why.equals("CHOOSE") ? "Zuerst ein Archiv wählen." : why.equals("WHOLE") ? "Die Datei ist nicht ganz angekommen; noch einmal versuchen." : why.equals("BUSY") ? "Gerade kommt ein anderes Archiv herein; gleich noch einmal versuchen." : why.equals("MEMORY") ? "Dieses Archiv ist zu groß für den Speicher dieses Geräts; nichts wurde daraus übernommen." : "Das Archiv ließ sich nicht schreiben.");
    }

    @Override
    public String archiveIn() {
        return "Archiv hereingeholt";
    }

    @Override
    public String archiveLacks(String name) {
        return "Diese Datei ist kein ganzes Archiv von Hearthcloth: Es fehlt " + name + ".";
    }

    @Override
    public String archivePass(String most) {
        return "Damit überstiege der Vorrat " + most + " Stück. Nichts wurde aus dem Archiv übernommen.";
    }

    @Override
    public String changed(String name, String what) {
        return (what.equals("CLOTH") ? "Dieses Tuch wurde inzwischen in einem anderen Fenster geändert. Nichts wurde geändert; noch einmal nachsehen." : what.equals("PHOTO") ? "Dieses Foto wurde inzwischen in einem anderen Fenster geändert. Nichts wurde geändert; noch einmal nachsehen." : "" + name + " wurde inzwischen geändert oder verwendet. Nichts wurde geändert; noch einmal nachsehen.");
    }

    @Override
    public String copy(String path, String why) {
        return (why.equals("FOLDER") ? "Der Ordner der Sicherungskopien, " + path + ", ist nicht lesbar." : why.equals("MAKE") ? "In " + path + " ließ sich keine Sicherungskopie anlegen." : why.equals("FULL") ? "In den Ordner lässt sich nicht schreiben, oder die Festplatte ist voll." : why.equals("BACK") ? "Die Kopie ließ sich nicht zurücklegen; die Werkstatt ist, wie sie war." : why.equals("DAMAGED") ? "Die Kopie " + path + " ist beschädigt oder nicht lesbar. Nichts wurde geändert; eine andere wählen." : "Die Kopie ließ sich nicht zurücklegen: In den Ordner von " + path + " lässt sich nicht schreiben.");
    }

    @Override
    public String copyWhole() {
        return "Die Sicherung war nicht vollständig.";
    }

    @Override
    public String example() {
        return "Das Beispiel fehlt in diesem Programm; Hearthcloth neu bauen.";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "Dieses Tuch wurde in einem anderen Fenster entfernt." : what.equals("PHOTO") ? "Dieses Foto wurde in einem anderen Fenster gelöscht." : "Diese Kopie gibt es nicht mehr. Nichts wurde geändert.");
    }

    @Override
    public String journal() {
        return "Die Aufzeichnung dessen, was getan wurde, ist nicht lesbar.";
    }

    @Override
    public String lacking() {
        return "Für dieses Tuch reicht der Stoff nicht; ändere es zuerst.";
    }

    @Override
    public String misfit() {
        return "Die Aufzeichnung dieser Änderung passt nicht zu dem, was aufbewahrt ist. Nichts wurde geändert.";
    }

    @Override
    public String misfitAt(String what) {
        return "Die Aufzeichnung passt bei „" + what + "“ nicht zu dem, was aufbewahrt ist. In dieser Datei wird nichts geändert, bis das behoben ist: alles ansehen, als Archiv herausnehmen oder eine Sicherungskopie zurücklegen.";
    }

    @Override
    public String missing(String name, String path) {
        return "In " + path + " gibt es keine Sicherungskopie" + (name.equals("last") ? "" : " „" + name + "“") + ". Nichts wurde geändert.";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "Die Werkstatt ist schon offen" : "Die Werkstatt ist schon offen: " + address);
    }

    @Override
    public String openAt(String address) {
        return "Die Werkstatt ist offen: " + address;
    }

    @Override
    public String openCamera(String address) {
        return "Ein Handy, das dies innerhalb von zehn Minuten öffnet, ist gleich bei seiner Kamera: " + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "Die Werkstatt ist schon offen; sie zuerst schließen, dann noch einmal versuchen." : "Die Werkstatt ist schon offen (" + address + "); sie zuerst schließen, dann noch einmal versuchen.");
    }

    @Override
    public String openCode(String code) {
        return "Der Code, der dort einzugeben ist: " + code;
    }

    @Override
    public String openFolder(String file) {
        return "Der Ordner von " + file + " lässt sich nicht anlegen; mit --data eine andere Datei wählen.";
    }

    @Override
    public String openKept(String file) {
        return "Deine Arbeit liegt in " + file + ". Strg-C schließt sie.";
    }

    @Override
    public String openLan(String address) {
        return "Andere Geräte in diesem Netz kommen herein über " + address;
    }

    @Override
    public String openRestoreStudio() {
        return "Die Datenbank eines Studios stellt wieder her, wer sie führt; docs/studio.md sagt, wie.";
    }

    @Override
    public String openRestored(String made) {
        return "Zurückgelegt: die Sicherung vom " + made;
    }

    @Override
    public String openStudio(String address) {
        return "Die Arbeit des Studios liegt in " + address + ". Strg-C schließt sie.";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return (copy.equals("none") ? "Die Datei " + name + " ist beschädigt und bleibt, wie sie ist. Es gibt noch keine Sicherung von ihr; ein herausgenommenes Archiv lässt sich in eine neue einlesen." : "Die Datei " + name + " ist beschädigt und bleibt, wie sie ist. Die letzte Sicherung ist von " + copy + "; starte mit „--restore last“, um sie an ihre Stelle zu setzen. Die beschädigte Datei bleibt daneben erhalten.");
    }

    @Override
    public String openedFile(String name, String why) {
        return (why.equals("FOLDER") ? "Die Datei " + name + " ist ein Ordner. Sie bleibt, wie sie ist; wähle mit --data eine andere." : why.equals("UNREAD") ? "Die Datei " + name + " ist nicht zu lesen. Sie bleibt, wie sie ist; wähle mit --data eine andere." : why.equals("FOREIGN") ? "Die Datei " + name + " gehört einem anderen Programm. Sie bleibt, wie sie ist; wähle mit --data eine andere." : why.equals("NEWER") ? "Die Datei " + name + " wurde von einem neueren Hearthcloth geschrieben, das sie öffnet. Sie bleibt, wie sie ist; wähle mit --data eine andere." : "Die Datei " + name + " bleibt, wie sie ist; wähle mit --data eine andere.");
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "Deine Arbeit lag in " + path + " und ist nicht mehr dort. Leg die Datei zurück, oder beginn dort mit --new eine leere Werkstatt." : "Deine Arbeit lag in " + path + " und ist nicht mehr dort. Leg die Datei zurück, starte mit „--restore last“, um die Sicherung von " + copy + " zu nehmen, oder beginn dort mit --new eine leere Werkstatt.");
    }

    @Override
    public String openedOlder(String name, String why) {
        return "Die Datei " + name + " ist von einem älteren Hearthcloth und muss auf den neuen Stand gebracht werden, doch das ging nicht. " + why + " Sie bleibt, wie sie ist.";
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "Jemand hat dieses Studio gerade begonnen; bitte um Einlass." : why.equals("NAME") ? "Einen Namen mit höchstens " + most + " Zeichen schreiben." : why.equals("PASSPHRASE") ? "Eine Passphrase hat mindestens " + most + " Zeichen und enthält den Namen nicht; drei oder vier Wörter ohne Zusammenhang sind gut." : why.equals("TAKEN") ? "Jemand heißt schon so; einen zweiten Namen anfügen." : why.equals("WRONG") ? "Zu viele falsche Passphrasen für diesen Namen; in einer Minute noch einmal versuchen." : why.equals("BUSY") ? "Gerade kommen viele herein; in einigen Sekunden noch einmal versuchen." : "Nur die Kursleitung gibt Leitlinien aus und nimmt sie zurück.");
    }

    @Override
    public String photoUnread() {
        return "Was aus diesem Foto gelesen wurde, ist nicht mehr lesbar.";
    }

    @Override
    public String photosFull() {
        return "Die begonnenen Fotos füllen den Platz, der für sie da ist. Ihre Stücke übernehmen oder eines weglegen, dann dieses noch einmal senden.";
    }

    @Override
    public String piece(String fabric, String piece) {
        return "Stück " + piece + " von " + fabric;
    }

    @Override
    public String placeArriving(String path) {
        return "In " + path + " lässt sich kein Ordner für ankommende Dateien anlegen.";
    }

    @Override
    public String placeNoPort(String port) {
        return "Ab " + port + " ist kein Port frei; wähle mit --port einen anderen.";
    }

    @Override
    public String proxy() {
        return "Die Adresse des Proxys lässt sich nicht lesen; sie so schreiben: https://studio.example.";
    }

    @Override
    public String record(String what, String why) {
        return "Die Aufzeichnung " + (what.equals("none") ? "dieser Änderung" : "von „" + what + "“") + " ist nicht lesbar" + (why.equals("none") ? "." : ": " + why + ".");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "Das Studio " + address + " lässt sich nicht öffnen; prüf, ob es läuft, und --data." : why.equals("NEWER") ? "Dieses Studio ist von einem neueren Hearthcloth. Es bleibt, wie es ist; bring dieses hier auf den neuen Stand." : why.equals("LEFT") ? "Das Studio bleibt, wie es ist." : "Die Adresse des Studios ist nicht lesbar; schreib postgresql://NAME@HOST/DATABASE, Zeichen wie @ oder / im Passwort als %40 oder %2F.");
    }

    @Override
    public String teacher() {
        return "Das tut nur eine Lehrerin oder ein Lehrer.";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "Ein anderes Fenster war mit derselben Nummer schneller." : why.equals("SILENT") ? "Die Datenbank des Studios antwortet nicht." : why.equals("HELD") ? "Ein anderes Programm hält die Datei zu lange fest." : why.equals("UNWRITABLE") ? "In die Datei oder ihren Ordner lässt sich nicht schreiben." : why.equals("DISK") ? "Die Festplatte hat nicht richtig gelesen oder geschrieben." : why.equals("DAMAGED") ? "Die Datei ist beschädigt." : why.equals("FULL") ? "Die Festplatte ist voll." : why.equals("UNOPENED") ? "Die Datei lässt sich nicht öffnen oder anlegen." : why.equals("FOREIGN") ? "Die Datei wurde nicht von Hearthcloth geschrieben." : why.equals("REFUSED") ? "Die Datenbank des Studios weist diesen Namen oder dieses Passwort zurück." : why.equals("WORK") ? "Eine andere Werkstatt hält diese Arbeit zu lange fest." : why.equals("NONE") ? "Eine Datenbank dieses Namens gibt es nicht." : why.equals("STUDIO_FULL") ? "Die Festplatte der Studio-Datenbank ist voll." : why.equals("STUDIO_BUSY") ? "Die Datenbank des Studios ist beschäftigt." : why.equals("STUDIO_UNWRITABLE") ? "Unter diesem Namen darf in die Datenbank des Studios nicht geschrieben werden." : why.equals("STUDIO") ? "Die Datenbank des Studios tut nicht, was sie soll." : "Die Datei tut nicht, was sie soll.");
    }

    @Override
    public String troubleGone(String path) {
        return "Deine Arbeit ist nicht mehr an ihrem Platz: " + path + " wurde verschoben oder gelöscht. Nichts wurde geändert.";
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "Die Werkstatt lässt sich nicht öffnen." : why.equals("PLACE") ? "Deine Arbeit liegt an ihrem Platz. Nichts wurde geändert." : why.equals("OTHER") ? "An " + path + " liegt jetzt eine andere Datei. Erst wegbewegen; nichts wurde geändert." : "Deine Arbeit ließ sich nicht nach " + path + " schreiben.");
    }
}
