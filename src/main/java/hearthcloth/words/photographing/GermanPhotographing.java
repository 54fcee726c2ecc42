package hearthcloth.words.photographing;

/** The room of photographing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanPhotographing implements PhotographingWords {

    @Override
    public String absent(String sheet) {
        return "Nicht gefunden: " + sheet + ".";
    }

    @Override
    public String again(String how, String sheet) {
        return (how.equals("FREE") ? "Neu aufnehmen, ganz im Bild und rundherum frei: " + sheet + "." : how.equals("FLAT") ? "Flach hinlegen, ohne etwas zu berühren, und neu aufnehmen: " + sheet + "." : "Flach hinlegen, ohne etwas zu berühren, und von näher neu aufnehmen: " + sheet + ".");
    }

    @Override
    public String doubtCutOff() {
        return "Es ragt aus dem Bild; hineinschieben oder zurücktreten und neu aufnehmen.";
    }

    @Override
    public String doubtEdge() {
        return "Es reicht bis an den Bildrand; was darüber hinausgeht, ist nicht gemessen. Geht es weiter, neu aufnehmen.";
    }

    @Override
    public String doubtFar() {
        return "Es liegt weit vom Blatt, wo das Bild Größen weniger sicher zeigt; näher hinlegen.";
    }

    @Override
    public String doubtFrayed(String mm) {
        return "Die Kanten sind etwa " + mm + " mm ausgefranst; gemessen ist ohne die Fäden. Zur Sicherheit erst begradigen.";
    }

    @Override
    public String doubtGround() {
        return "Es hebt sich kaum vom Grund ab; auf etwas Helleres oder Dunkleres legen.";
    }

    @Override
    public String doubtOver(String piece) {
        return "Es liegt über Stück " + piece + "; eines weglassen, sonst kommt derselbe Stoff zweimal herein.";
    }

    @Override
    public String doubtRim() {
        return "Ein Teil des Randes ist nicht zu erkennen; den Umriss prüfen oder auf anderen Grund legen.";
    }

    @Override
    public String doubtRough() {
        return "Die Ecken sind nur ungefähr gesetzt; genau ansehen und jede an ihren Platz ziehen.";
    }

    @Override
    public String doubtSheetAlike(String sheet) {
        return "So schräg gesehen gleichen sich A4 und Letter; prüfen, ob es " + sheet + " ist, oder gerade von oben aufnehmen.";
    }

    @Override
    public String doubtSheetFaint(String sheet) {
        return "Kaum vom Grund abgehoben: " + sheet + "; und alle Größen hängen daran. Den Umriss im Bild prüfen oder auf dunkleren oder farbigeren Grund legen und neu aufnehmen.";
    }

    @Override
    public String doubtSheetSkew(String share, String sheet) {
        return "Um " + share + " % zu lang oder zu kurz sieht es aus: " + sheet + ". Vielleicht teils verdeckt, nicht flach oder zu klein im Bild; und alle Größen hängen daran. Flach und frei hinlegen und von näher neu aufnehmen.";
    }

    @Override
    public String doubtSheetTapped(String share, String sheet) {
        return "Was du angetippt hast (" + sheet + "), sieht um " + share + " % zu lang oder zu kurz aus: Vielleicht liegt eine Ecke daneben, oder es liegt nicht flach. Alle Größen hängen daran.";
    }

    @Override
    public String doubtSheetUnseen(String sheet, int sides) {
        return (sides == 1 ? "Eine Seite ist" : "Mehrere Seiten sind") + " nicht zu sehen (" + sheet + "); sie gilt dort, wo du getippt hast, und alle Größen hängen daran.";
    }

    @Override
    public String doubtSheetsApart(String share) {
        return "Die Blätter im Bild sind sich nicht einig: Nach dem einen ist alles um etwa " + share + " % größer als nach dem anderen. Flach und frei hinlegen oder nur eines liegen lassen, und neu aufnehmen.";
    }

    @Override
    public String doubtSides() {
        return "Die Seiten sind schlecht zu erkennen; den Umriss prüfen.";
    }

    @Override
    public String doubtTwo() {
        return "Es sind vielleicht zwei Stücke, die sich berühren oder überlappen; auseinanderlegen oder hier teilen.";
    }

    @Override
    public String doubtUneven() {
        return "Der Rand ist uneben; den Umriss prüfen.";
    }

    @Override
    public String goneFabric() {
        return "Dieser Stoff ist nicht mehr auf diesem Foto.";
    }

    @Override
    public String gonePiece(String piece) {
        return "Auf diesem Foto gibt es Stück " + piece + " nicht mehr.";
    }

    @Override
    public String kept(String why) {
        return (why.equals("LARGE") ? "Dieses Bild ist größer als 20 MB; verkleinern und noch einmal versuchen." : why.equals("DAMAGED") ? "Dieses Bild ist beschädigt; neu als PNG oder JPEG exportieren." : why.equals("KIND") ? "Das ist kein PNG- oder JPEG-Bild; als eines davon exportieren." : "Dieses Bild hat über 50 Megapixel; verkleinern und noch einmal versuchen.");
    }

    @Override
    public String noMarks() {
        return "Das Messblatt wurde nicht gefunden: Weniger als drei seiner Quadratzeichen sind zu erkennen. Flach und unbedeckt zwischen die Stücke legen und von näher, scharf und von oben aufnehmen.";
    }

    @Override
    public String noRival(String sheet) {
        return "Zwei Dinge im Bild könnten " + sheet + " sein: Eines hat die Form, ein anderes ist ebenso weiß, aber gebogen, verdeckt, im Schatten oder abgeschnitten. Die vier Ecken des richtigen antippen oder das andere wegnehmen und neu aufnehmen.";
    }

    @Override
    public String noRound(String sheet) {
        return "Die vier angetippten Ecken gehen nicht um eine Form. Noch einmal tippen, eine nach der anderen rundherum: " + sheet + ".";
    }

    @Override
    public String noShadow(String sheet) {
        return "Zwei Dinge im Bild könnten " + sheet + " sein: Das größere ist ebenso weiß, aber ein Schattenrand läuft darüber. Das andere wegnehmen oder das Blatt ganz ins Licht oder ganz in den Schatten legen und neu aufnehmen.";
    }

    @Override
    public String noShare(String share, String sheet) {
        return "Was zwischen den vier Ecken liegt, ist " + share + " % zu lang oder zu kurz für " + sheet + ". Angeben, was es ist, oder die Ecken neu antippen.";
    }

    @Override
    public String noSizes(String sheet) {
        return "Zwei Dinge im Bild könnten " + sheet + " sein, und sie sind verschieden groß. Das Stück mit derselben Form wegnehmen und neu aufnehmen.";
    }

    @Override
    public String noTwin(String sheet, String twin) {
        return "Was da liegt, sieht aus wie " + twin + ", nicht wie " + sheet + ". Das gesehene wählen, oder das andere hinlegen und neu aufnehmen.";
    }

    @Override
    public String notePicture(String numbers) {
        return "im Bild: " + numbers;
    }

    @Override
    public String outlineCorner() {
        return "Dieses Stück hat diese Ecke nicht mehr.";
    }

    @Override
    public String outlineFault(String fault, String most) {
        return (fault.equals("FEW") ? "Ein Stück hat drei Ecken oder mehr; noch eine setzen." : fault.equals("OUTSIDE") ? "Eine Ecke liegt außerhalb des Bildes; zurücknehmen und auf das Foto setzen." : fault.equals("CROSSING") ? "Zwei Seiten kreuzen sich; die letzten Ecken zurücknehmen und der Reihe nach um das Stück setzen." : fault.equals("SMALL") ? "Daraus lässt sich nichts von 1 cm mal 1 cm schneiden; ein Stück ist größer." : "Ein Stück wird mit höchstens " + most + " Ecken gezeichnet; einige zurücknehmen und später in die Seiten setzen.") + " Nichts wurde hinzugefügt.";
    }

    @Override
    public String outlineGrain() {
        return "Die Linie ist zu kurz für eine Richtung. Nichts wurde geändert.";
    }

    @Override
    public String outlineNone() {
        return "So bliebe kein Umriss; ein Stück hat drei Ecken oder mehr, keine jenseits seines Randes. Nichts wurde geändert.";
    }

    @Override
    public String outlineSplit(String piece) {
        return "Die Linie teilt Stück " + piece + " nicht; ganz hindurch ziehen. Nichts wurde geändert.";
    }

    @Override
    public String pictureDamaged() {
        return "Das Bild ist beschädigt; als JPEG neu speichern und noch einmal senden.";
    }

    @Override
    public String pictureHeic() {
        return "Das ist ein HEIC- (oder AVIF-)Foto, das hier nicht lesbar ist. Ein JPEG senden: in den Einstellungen der Kamera JPEG oder das kompatibelste Format wählen und neu aufnehmen, oder öffnen und als JPEG speichern oder teilen.";
    }

    @Override
    public String pictureKind() {
        return "Das ist kein Foto als JPEG oder PNG; bitte eines davon senden.";
    }

    @Override
    public String pictureLarge() {
        return "Die Datei ist größer als 80 MB; das Foto so senden, wie das Telefon es aufnahm.";
    }

    @Override
    public String picturePixels(String height, String mega, String width) {
        return "Das Bild hat " + width + " × " + height + " Pixel (" + mega + " Megapixel); gelesen werden höchstens 50. Ein kleineres senden.";
    }

    @Override
    public String pictureScans() {
        return "Dieses JPEG ist so gebaut, wie es keine Kamera tut; neu exportieren und noch einmal senden.";
    }

    @Override
    public String pictureSmall(String height, String width) {
        return "Das Bild hat nur " + width + " × " + height + " Pixel; zum Messen braucht es 2 Megapixel oder mehr. In Originalgröße senden.";
    }

    @Override
    public String pictureUnread() {
        return "Das Bild ist beschädigt oder von einer Art, die hier nicht lesbar ist; als JPEG neu speichern und noch einmal senden.";
    }

    @Override
    public String referenceCorner(String corner) {
        return "„" + corner + "“ ist keine Ecke; schreib, wie weit quer und wie weit unten sie liegt, als Anteil am Bild, etwa 0.21 0.30.";
    }

    @Override
    public String referenceCorners(String count) {
        return "Ein Blatt hat vier Ecken, und " + count + " sind angegeben; alle vier der Reihe nach angeben, mit Kommas dazwischen.";
    }

    @Override
    public String referenceLine() {
        return "Die Linie auf dem Messblatt sollte etwa 20 cm (7 7/8 in) lang sein; die lange dünne Linie zwischen ihren Endstrichen noch einmal messen.";
    }

    @Override
    public String referenceSmall(String size) {
        return "Eine Vorlage von " + size + " ist zum Messen zu klein; eine von 2 cm oder mehr nehmen.";
    }

    @Override
    public String seenCut(String where, String white, String why) {
        return (where.equals("MIDDLE") ? "In der Mitte" : where.equals("UPPER_LEFT") ? "Oben links" : where.equals("UPPER") ? "Oben" : where.equals("UPPER_RIGHT") ? "Oben rechts" : where.equals("LEFT") ? "Links" : where.equals("RIGHT") ? "Rechts" : where.equals("LOWER_LEFT") ? "Unten links" : where.equals("LOWER") ? "Unten" : "Unten rechts") + " im Bild liegt etwas " + (white.equals("yes") ? "Weißes" : "mit vier Ecken") + ", aber " + (why.equals("CUT") ? "es ragt aus dem Bild oder berührt etwas, das hinausragt" : why.equals("RIM") ? "der Rand sind nicht vier gerade Seiten: Etwas berührt es oder liegt darauf, oder es ist gefaltet" : "es ist im Bild zu klein oder zu undeutlich, um danach zu messen") + ".";
    }

    @Override
    public String seenNothing(String white) {
        return "Nichts " + (white.equals("yes") ? "Weißes mit vier geraden Seiten" : "mit vier geraden Seiten") + " hebt sich vom Grund ab. Flach zwischen die Stücke legen, ganz im Bild, ohne etwas zu berühren, und von oben aufnehmen.";
    }

    @Override
    public String seenSkew(String share, String sheet, String where, String white) {
        return (where.equals("MIDDLE") ? "In der Mitte" : where.equals("UPPER_LEFT") ? "Oben links" : where.equals("UPPER") ? "Oben" : where.equals("UPPER_RIGHT") ? "Oben rechts" : where.equals("LEFT") ? "Links" : where.equals("RIGHT") ? "Rechts" : where.equals("LOWER_LEFT") ? "Unten links" : where.equals("LOWER") ? "Unten" : "Unten rechts") + " im Bild liegt etwas " + (white.equals("yes") ? "Weißes" : "mit vier Ecken") + ", aber das Verhältnis der Seiten weicht um " + share + " % ab (" + sheet + "). Ist es das, dann ist es gebogen oder teils verdeckt: flach und frei hinlegen und neu aufnehmen; sonst angeben, was es ist.";
    }

    @Override
    public String seenWhite(String sheet) {
        return "Was das Bild größtenteils füllt, ist selbst hell und fast farblos: Entweder füllt " + sheet + " das Bild, oder es liegt auf etwas ebenso Weißem. Auf etwas Dunkleres oder Farbigeres legen, die Stücke darum, ohne etwas zu berühren, und neu aufnehmen.";
    }

    @Override
    public String sheet(String sheet) {
        return (sheet.equals("MEASURING") ? "das Messblatt" : sheet.equals("A4") ? "das A4-Blatt" : sheet.equals("LETTER") ? "das Letter-Blatt" : sheet.equals("CARD") ? "die Karte" : "das Rechteck");
    }
}
