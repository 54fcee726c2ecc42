package hearthcloth.words.helping;

/** The room of helping in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanHelping implements HelpingWords {

    @Override
    public String command() {
        return "[Befehl]";
    }

    @Override
    public String completionHeader() {
        return "Schreibt eine Ergänzung für bash, zsh oder fish, oder die Handbuchseite.";
    }

    @Override
    public String completionKind() {
        return "Was geschrieben wird.";
    }

    @Override
    public String guidelineAbout() {
        return "Sag von jeder Wahl am Tuch, was sie ist: die Idee selbst (\"kept\"), ihr Anteil an der Breite des Tuchs (\"share\"), nur wie es sich damals ergab (\"open\"), oder eine eigene Regel. Naht und Saum sind die des Tuchs.";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\", \"share\", \"open\", \"strips\" (so breit wie die Streifen, die du hast), \"2 to 3 in\" oder \"8 to 12 %\"; sonst \"open\".";
    }

    @Override
    public String guidelineBy() {
        return "Wer sie weitergibt.";
    }

    @Override
    public String guidelineCloth() {
        return "Das Tuch: plan.json aus seinem Ordner, \"-\" für die Standardeingabe, oder sein Name unter den fertigen.";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\", \"open\" oder Arten wie \"two halves or frames\" (zwei Hälften oder Rahmen); sonst \"kept\".";
    }

    @Override
    public String guidelineExFollow() {
        return "ein Tuch aus dem eigenen Vorrat nach dieser Leitlinie";
    }

    @Override
    public String guidelineExPage() {
        return "eine Seite, die alle öffnen und mit der alle planen können";
    }

    @Override
    public String guidelineHeader() {
        return "Macht aus einem fertigen Tuch eine Leitlinie zum Weitergeben.";
    }

    @Override
    public String guidelineHearth() {
        return "Das Mittelstück: \"kept\", \"share\", \"open\", \"largest square\" (das größte Quadrat), \"30 to 40 %\" oder \"14 in cut\"; sonst \"share\".";
    }

    @Override
    public String guidelineMiddle() {
        return "Was in der Mitte liegt: \"any\" (gleich was), \"favourite\" (der liebste), \"lightest\" (der hellste), \"darkest\" (der dunkelste) oder der Name eines Stoffs; sonst \"any\".";
    }

    @Override
    public String guidelineMostJoins() {
        return "Höchstens so viele Stückelungen in einem Streifen, 0 bis 40; ohne Angabe wie beim Tuch.";
    }

    @Override
    public String guidelineName() {
        return "Wie die Idee heißt; ohne Angabe der Titel des Plans.";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" oder \"open\"; sonst \"kept\".";
    }

    @Override
    public String guidelinePicture() {
        return "Ein Bild von dir, PNG oder JPEG.";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\", \"open\", \"3\" oder \"2 to 4\"; sonst \"kept\".";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\", \"open\", \"16 in\", \"16 to 20 in\" oder \"for box 30 x 20 x 8 cm\"; sonst \"open\".";
    }

    @Override
    public String guidelineUnit() {
        return "Das Lineal derer, die ihr folgen; ohne Angabe wie das Tuch geschnitten war.";
    }

    @Override
    public String guidelineWords() {
        return "Was du dazu sagen möchtest.";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "Befehle:" : of.equals("wishes") ? "Wünsche:" : of.equals("examples") ? "Beispiele:" : of.equals("stash") ? "Die Vorratsdatei" : of.equals("list") ? "Die Liste" : of.equals("idea") ? "Was die Idee ist:" : of.equals("ends") ? "Es endet mit:" : of.equals("try") ? "Zum Ausprobieren am mitgelieferten Beispiel:" : "Optionen:");
    }

    @Override
    public String helpAbout() {
        return "Ohne Befehl wird das Programm erklärt.";
    }

    @Override
    public String helpHeader() {
        return "Erklärt einen Befehl mit allen Optionen.";
    }

    @Override
    public String helpWhich() {
        return "Der Befehl, der erklärt wird.";
    }

    @Override
    public String ideaAbout() {
        return "Die Seite ist eine Datei. Sie öffnet sich auf jedem Telefon und Rechner, ohne Netz, und plant für jede Person ein Tuch aus den Stücken, die sie eintippt. Verschicke sie oder stelle sie auf deine Seite im Netz.";
    }

    @Override
    public String ideaExFrom() {
        return "das Beispiel darauf ist aus deinen Resten geplant";
    }

    @Override
    public String ideaFile() {
        return "Die Datei der Leitlinie; \"-\" liest die Standardeingabe.";
    }

    @Override
    public String ideaFrom() {
        return "Stücke für das Beispiel auf der Seite; ohne Angabe erfundene.";
    }

    @Override
    public String ideaHeader() {
        return "Schreibt eine Leitlinie als eine Seite mit dem Planer darin, die alle öffnen können.";
    }

    @Override
    public String kitsAbout() {
        return "Geplant wird ein Tuch für jede Zeile einer Liste oder eines je Teilnehmerin, und kein Stück wird zweimal vergeben. Geteilt wird gerecht: niemand hat mehr Stückelungen als nötig, die Mittelstücke sind verschieden, alle haben Helles und Dunkles. Jedes Tuch bekommt einen nummerierten Ordner wie bei plan. Dazu kommen kits.pdf (ein Blatt für die Lehrerin, die Einkaufsliste, ein Zettel für jede Tüte und jeden Flicken) und kits.json. Was hier gewünscht wird, gilt für alle; die Liste darf abweichen.";
    }

    @Override
    public String kitsCsv() {
        return "Text mit Kommas (CSV, UTF-8), eine Zeile je Tuch. Die erste Zeile nennt die Spalten: name und gift (Geschenk) oder size (Maß). Nach Belieben jeder Wunsch von plan ohne seine Striche, etwa tie, hearth, bars, rounds, fabrics, free.";
    }

    @Override
    public String kitsDone() {
        return "jedes Tuch ist, wie du es wünschst";
    }

    @Override
    public String kitsExList() {
        return "eine Liste von Geschenken";
    }

    @Override
    public String kitsExStudents() {
        return "zwölf Tüten für einen Kurs, ein Maß für alle";
    }

    @Override
    public String kitsFirst() {
        return "Anna";
    }

    @Override
    public String kitsHeader() {
        return "Plant viele Tücher aus einem Vorrat, für einen Kurs oder die Geschenke eines Jahres.";
    }

    @Override
    public String kitsSecond() {
        return "Großmutter";
    }

    @Override
    public String kitsShort() {
        return "manchen Tüchern fehlt etwas; es wird gesagt, was, und das nächste gezeichnet";
    }

    @Override
    public String kitsStudents() {
        return "So viele gleiche Tücher statt einer Liste: 1 bis 99.";
    }

    @Override
    public String kitsWishes() {
        return "Die Liste der Tücher.";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "DATEI" : of.equals("COPY") ? "KOPIE" : of.equals("FOLDER") ? "ORDNER" : of.equals("LIST") ? "LISTE" : of.equals("STASH") ? "VORRAT" : of.equals("IDEA") ? "IDEE" : of.equals("PLAN") ? "PLAN" : of.equals("CLOTH") ? "TUCH" : of.equals("PAGE") ? "SEITE" : of.equals("PICTURE") ? "BILD" : of.equals("PHOTO") ? "FOTO" : of.equals("SHEET") ? "BLATT" : of.equals("FABRIC") ? "STOFF" : of.equals("NAMES") ? "NAMEN" : of.equals("NAME") ? "NAME" : of.equals("WORDS") ? "WORTE" : of.equals("GIFT") ? "GESCHENK" : of.equals("TIE") ? "BINDUNG" : of.equals("LENGTH") ? "LÄNGE" : of.equals("SIZE") ? "MASS" : of.equals("SIZES") ? "MASSE" : of.equals("WIDTHS") ? "BREITEN" : of.equals("FACE") ? "SEITE" : of.equals("WAY") ? "WIE" : of.equals("ORDER") ? "FOLGE" : of.equals("SETTING") ? "LEGUNG" : of.equals("RULE") ? "REGEL" : of.equals("PIECE") ? "STÜCK" : of.equals("PIECES") ? "STÜCKE" : of.equals("SEAM") ? "NAHT" : of.equals("HEM") ? "SAUM" : of.equals("CORNER") ? "ECKE" : of.equals("COLOURS") ? "FARBEN" : of.equals("HOW") ? "WIE" : of.equals("TIME") ? "ZEIT" : of.equals("LANGUAGE") ? "SPRACHE" : of.equals("COMMAND") ? "BEFEHL" : "");
    }

    @Override
    public String mainAbout() {
        return "Ohne Befehl öffnet sich die Werkstatt in deinem Browser.";
    }

    @Override
    public String mainAddress() {
        return "Wo ein Studio über einen Proxy auf diesem Rechner zu erreichen ist: https://studio.example.";
    }

    @Override
    public String mainCode() {
        return "Auch auf diesem Rechner nach einem Code fragen, wenn andere dort angemeldet sind.";
    }

    @Override
    public String mainData() {
        return "Die Datei, die deine Arbeit aufbewahrt; ohne Angabe der übliche Ort. Oder die Datenbank eines Studios: postgresql://HOST/NAME.";
    }

    @Override
    public String mainDone() {
        return "fertig";
    }

    @Override
    public String mainHeader() {
        return "Plant beidseitige, einlagige Einschlagtücher aus Stoff, den du hast.";
    }

    @Override
    public String mainLan() {
        return "Telefone und Tablets in diesem Netz einlassen, jedes mit einem Code, den die Werkstatt zeigt.";
    }

    @Override
    public String mainLanguage() {
        return "Sprache dieser Hilfe und dessen, was hier gesagt wird: \"en\", \"ko\", \"ja\", \"fr\", \"de\" oder \"es\". Die Werkstatt spricht die deines Browsers.";
    }

    @Override
    public String mainMore(String command) {
        return "Alle Wünsche, mit Beispielen: " + command;
    }

    @Override
    public String mainNew() {
        return "Eine leere Werkstatt beginnen, wo deine Datei lag und nicht mehr ist.";
    }

    @Override
    public String mainNoBrowser() {
        return "Nur die Adresse der Werkstatt nennen; keinen Browser öffnen.";
    }

    @Override
    public String mainPort(String usual) {
        return "Wo die Werkstatt zu erreichen ist: ein Port, sonst " + usual + ". Ist er belegt, wird der nächste freie genommen.";
    }

    @Override
    public String mainRestore() {
        return "Zuerst eine Sicherungskopie an die Stelle der Datei setzen: \"last\" (die letzte) oder der Name der Kopie.";
    }

    @Override
    public String mainShort() {
        return "dein Vorrat gibt nicht her, was du wünschst; es wird gesagt, was fehlt";
    }

    @Override
    public String mainWrong() {
        return "etwas Getipptes oder etwas in einer Datei ist nicht brauchbar; es wird gesagt, wo";
    }

    @Override
    public String manualFiles() {
        return "Deine Arbeit. Daneben, in workroom.db.copies, liegen die Sicherungskopien.";
    }

    @Override
    public String manualSame() {
        return "Was gilt, wo die Option dieses Namens nicht getippt ist.";
    }

    @Override
    public String manualSettings() {
        return "Eine Datei mit Zeilen wie HEARTHCLOTH_PORT=4732, die gilt, wo beides fehlt.";
    }

    @Override
    public String optionBudget(String usual) {
        return "Wie lange nach Besserem gesucht wird: \"500ms\", \"2s\", \"1min\"; sonst \"" + usual + "\".";
    }

    @Override
    public String optionFile() {
        return "Die Datei, die geschrieben wird.";
    }

    @Override
    public String optionFolder() {
        return "Der Ordner, der geschrieben wird: ein neuer oder ein früher geplanter.";
    }

    @Override
    public String optionGift() {
        return "Was eingebunden wird: \"box 30 x 20 x 8 cm\" (Schachtel), \"bottle 8 x 30 cm\" (Flasche), \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" (Bücher), \"roll 6 x 40 cm\" (Rolle).";
    }

    @Override
    public String optionGuide(String usual) {
        return "Wie viel jede guide.pdf sagt: \"full\" für dich allein, \"class\" vier bis sechs Seiten zum Unterrichten; sonst \"" + usual + "\".";
    }

    @Override
    public String optionHelp() {
        return "Diese Hilfe zeigen.";
    }

    @Override
    public String optionJson() {
        return "Als JSON sagen, für Programme; Längen in Nanometern.";
    }

    @Override
    public String optionLanguage() {
        return "Sprache dessen, was gesagt und gedruckt wird: \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\" oder ihr Name. Ohne Angabe die deiner Shell.";
    }

    @Override
    public String optionPaper() {
        return "Papier zum Drucken: \"a4\" oder \"letter\". Ohne Angabe Letter bei Zoll, sonst A4.";
    }

    @Override
    public String optionReplace() {
        return "Eine Datei überschreiben, die schon da ist.";
    }

    @Override
    public String optionStash() {
        return "Die Vorratsdatei; \"-\" liest die Standardeingabe.";
    }

    @Override
    public String optionTie() {
        return "Wie gebunden wird, etwa \"errand wrap\" (Botenpäckchen). Ohne Angabe nehmen Pläne die übliche Bindung, und size nennt alle.";
    }

    @Override
    public String optionUnit() {
        return "Dein Lineal und die Einheit bloßer Zahlen: \"in\" (Zoll) oder \"cm\". Ohne Angabe so, wie das Gelesene geschrieben ist.";
    }

    @Override
    public String optionVersion() {
        return "Die Version sagen, und aus welchem Stand sie gebaut ist.";
    }

    @Override
    public String optional() {
        return "[Optionen]";
    }

    @Override
    public String planAbout() {
        return "Der Vorrat wird gelesen; geplant werden mehrere verschiedene Tücher, die sich wirklich daraus machen lassen. Jedes bekommt einen nummerierten Ordner, das beste zuerst, mit plan.json, front.svg, back.svg, cut.svg und guide.pdf. Mit --gift kommt tied.svg dazu, das Geschenk, wie es aussehen wird. Was du weglässt, wird für dich gewählt und genannt.";
    }

    @Override
    public String planCsv() {
        return "Text mit Kommas (CSV, UTF-8). Die erste Zeile nennt die Spalten, in beliebiger Folge; danach kommt eine Zeile je Stück. Nötig: fabric (Stoff), width (Breite), length (Länge an der Webkante). Nach Belieben: count (Anzahl), colour (Farbe, \"#8a9a5b\" oder \"olive\"), faces (Seiten: \"same\" beide gleich oder \"right\" nur eine), nap (Strich: \"any\" oder \"lengthwise\"), washed (gewaschen: \"yes\" oder \"no\"), unit (Einheit), note (Notiz).";
    }

    @Override
    public String planCsvOther() {
        return "Segelstreifen";
    }

    @Override
    public String planCsvPlain() {
        return "Leinen Tang";
    }

    @Override
    public String planDone() {
        return "Tücher sind geplant";
    }

    @Override
    public String planExBest() {
        return "was der Vorrat am besten hergibt, so groß es geht";
    }

    @Override
    public String planExBlocks() {
        return "neun kleine Log Cabins zusammengesetzt";
    }

    @Override
    public String planExCut() {
        return "Mittelstück und Streifen im Zuschnitt; das Maß folgt daraus";
    }

    @Override
    public String planExFree() {
        return "Reste zusammengesetzt, wie sie sind";
    }

    @Override
    public String planExGift() {
        return "groß genug für diese Schachtel";
    }

    @Override
    public String planExIdea() {
        return "die Leitlinie einer Lehrerin, deinem Vorrat angepasst";
    }

    @Override
    public String planExInput() {
        return "der Vorrat kommt aus einem anderen Programm";
    }

    @Override
    public String planExPairs() {
        return "Streifen paarweise angenäht, nur zwei Stoffe";
    }

    @Override
    public String planFavourite() {
        return "Mit --guideline: dein liebster Stoff, für die Mitte, wo die Leitlinie danach fragt.";
    }

    @Override
    public String planGuideline() {
        return "Dieser Leitlinie folgen, statt eigener Wünsche. Du bekommst das nächste Tuch und hörst, welche Regeln es beugt.";
    }

    @Override
    public String planHeader() {
        return "Plant Tücher aus einem Vorrat: was aus welchem Stück geschnitten und wie es genäht wird.";
    }

    @Override
    public String planLike() {
        return "Ein Bild, dessen Farben du liebst. Nur die Stoffe, die seinen Hauptfarben am nächsten sind, werden genommen.";
    }

    @Override
    public String planNet() {
        return "Mit --gift: auch net.pdf und net.svg schreiben, das flache Tuch mit jeder Falte, zum Probieren in Papier.";
    }

    @Override
    public String planPng() {
        return "Die Bilder auch als PNG schreiben.";
    }

    @Override
    public String planShort() {
        return "der Vorrat gibt nicht her, was du wünschst; es wird gesagt, was fehlt, und das nächste Tuch geschrieben";
    }

    @Override
    public String planSlips() {
        return "Auch slips.pdf schreiben: ein Zettel zum Anstecken für jeden Flicken.";
    }

    @Override
    public String readAbout() {
        return "Die Stücke flach und mit Abstand auf einen Grund legen, von dem sie sich abheben. Ein Blatt Papier, eine Bankkarte oder eine Schneidematte von bekannter Größe dazulegen. Ein Foto von oben machen, auf dem alles ganz zu sehen ist. Am Blatt wird jedes Stück gemessen. Stücke im Zweifel werden genannt und weggelassen, wenn du sie nicht doch haben willst.";
    }

    @Override
    public String readDone() {
        return "eine Vorratsdatei ist geschrieben";
    }

    @Override
    public String readExPicture() {
        return "zeichnet auch ins Foto, was gelesen wurde";
    }

    @Override
    public String readExPlan() {
        return "plant Tücher aus dem, was gelesen wurde";
    }

    @Override
    public String readFile() {
        return "Die Datei hat eine Zeile je Stoff und Maß: das größte Rechteck, das sich sicher aus dem Stück schneiden lässt, abgerundet auf die Striche deines Lineals. Was gleich aussieht, gilt als ein Stoff und heißt nach seiner Farbe. Gib den Stoffen in der Datei deine eigenen Namen und schreibe, welche eine rechte Seite haben.";
    }

    @Override
    public String readHeader() {
        return "Liest Stücke von einem Foto und schreibt sie als Vorratsdatei.";
    }

    @Override
    public String readKeepDoubtful() {
        return "Auch die Stücke im Zweifel schreiben.";
    }

    @Override
    public String readOut() {
        return "Die Vorratsdatei, die geschrieben wird.";
    }

    @Override
    public String readPhoto() {
        return "Ein JPEG oder PNG; \"-\" liest die Standardeingabe.";
    }

    @Override
    public String readPicture() {
        return "Auch ins Foto zeichnen, was gelesen wurde.";
    }

    @Override
    public String readSheet() {
        return "Was von bekannter Größe im Bild liegt: \"sheet\" (das Messblatt; \"sheet 19.9 cm\", wenn seine Linie so viel misst), \"a4\", \"letter\", \"card\" (eine Bankkarte) oder ein Maß wie \"12 x 18 in\".";
    }

    @Override
    public String readShort() {
        return "kein Stück ließ sich schreiben; es wird gesagt, warum";
    }

    @Override
    public String readUnit() {
        return "Dein Lineal. Ohne Angabe: Zoll bei \"letter\", Zentimeter bei \"a4\", sonst wie das Blatt geschrieben ist.";
    }

    @Override
    public String sheetAbout() {
        return "Auf einem Foto mit diesem Blatt wird sicherer gemessen als mit leerem Papier. Seine Zeichen lassen sich nicht mit Stoff verwechseln und zeigen, wie das Blatt gewölbt ist. Mit 100 % drucken, nicht an die Seite angepasst. Dann ein Lineal an die dünne Linie legen: Sie ist 20 cm lang, oder 7 7/8 in.";
    }

    @Override
    public String sheetExRuler() {
        return "wenn dein Lineal sagt, dass die gedruckte Linie 19,9 cm lang ist";
    }

    @Override
    public String sheetHeader() {
        return "Schreibt das Messblatt, zum Drucken und Dazulegen.";
    }

    @Override
    public String sheetPaper() {
        return "Das Papier im Drucker: \"a4\" oder \"letter\"; sonst \"a4\".";
    }

    @Override
    public String sizeAbout() {
        return "Das Geschenk außen messen. Eine Schachtel hat Länge x Breite x Höhe; eine Flasche Durchmesser x Höhe; ein Ball den Durchmesser; Bücher Höhe x Breite x Dicke von einem der zwei; eine Rolle Durchmesser x Länge. Welche Seite des Bodens zuerst kommt, ist gleich. Maße sind die des fertigen, gesäumten Tuchs.";
    }

    @Override
    public String sizeCloth() {
        return "Ein fertiges Tuch: \"38 1/2 in\" oder \"90 x 100 cm\".";
    }

    @Override
    public String sizeExCloth() {
        return "worum ein quadratisches Tuch passt";
    }

    @Override
    public String sizeExSteps() {
        return "mit den Schritten des Bindens";
    }

    @Override
    public String sizeExTie() {
        return "nur diese Bindung, in Zentimetern";
    }

    @Override
    public String sizeHeader() {
        return "Sagt, wie groß ein Tuch für ein Geschenk sein muss oder worum ein Tuch passt.";
    }

    @Override
    public String sizeSteps() {
        return "Auch Schritt für Schritt sagen, wie gebunden wird; am besten mit --tie.";
    }

    @Override
    public String usage() {
        return "Aufruf:";
    }

    @Override
    public String wishBands() {
        return "Mit --free: Bahnen, die quer liegen (\"across\") oder längs laufen (\"down\"), oder \"any\"; sonst \"any\".";
    }

    @Override
    public String wishBars() {
        return "Breiten der Streifen, im Zuschnitt: \"5 in\" für alle, \"5 in, 4 in\" Runde um Runde (die letzte geht weiter); mit \"finished\" für das, was man sieht. Sonst \"stash\".";
    }

    @Override
    public String wishBlocks() {
        return "So viele kleine Log Cabins in einer Reihe und so viele Reihen: \"3 x 3\". Dann sind --rounds und --order die jedes Blocks.";
    }

    @Override
    public String wishClearance() {
        return "Eine Stückelung bleibt so weit von jeder Naht, die sie kreuzen würde: \"1 in\" oder \"25 mm\".";
    }

    @Override
    public String wishContrast() {
        return "\"most\" (so viel Kontrast wie möglich), \"reads\" (das Log Cabin ist zu erkennen), \"easy\" (dazwischen), \"quiet\" (ruhig) oder \"melts\" (alles wird ein Feld); sonst \"reads\".";
    }

    @Override
    public String wishCorner() {
        return "Ecken des Saums: \"square\" (gerade) oder \"mitred\" (Briefecken).";
    }

    @Override
    public String wishFabrics() {
        return "Nur diese Stoffe, mit Kommas dazwischen; der erste ist für die Mitte.";
    }

    @Override
    public String wishFell() {
        return "Die Seite, auf der Nahtlagen und Saum liegen: \"front\" (vorn) oder \"back\" (hinten).";
    }

    @Override
    public String wishFree() {
        return "Reste zusammengesetzt, wie sie sind, ohne Mittelstück und Streifen. Mit --blocks oder --rounds Reste um die Log Cabins.";
    }

    @Override
    public String wishHearth() {
        return "Das Mittelstück, im Zuschnitt: \"14 in\", \"12 x 9 in\"; oder \"12 in finished\" für das, was man sieht. Sonst \"stash\": Der Vorrat entscheidet.";
    }

    @Override
    public String wishHem() {
        return "Erster + zweiter Einschlag des Saums: \"1/4 + 1/4 in\".";
    }

    @Override
    public String wishLeastPiece() {
        return "Kein Teil eines gestückelten Streifens zeigt weniger als das: \"2 in\" oder \"5 cm\".";
    }

    @Override
    public String wishLeeway() {
        return "Jeden Streifen um so viel länger schneiden und nach dem Nähen abschneiden: \"1/2 in\" oder \"12 mm\".";
    }

    @Override
    public String wishMiddle() {
        return "Mit --free: die Nummer eines Stücks, das in der Mitte liegt, wie es ist, die anderen darum.";
    }

    @Override
    public String wishMostJoins() {
        return "Höchstens so viele Stückelungen in einem Streifen, 0 bis 40; sonst 4.";
    }

    @Override
    public String wishMostTrim() {
        return "Mit --free: höchstens so viel von der Breite oder der Länge eines Stücks abschneiden: \"1/2 in\".";
    }

    @Override
    public String wishOffMiddle() {
        return "Das Geschenk neben der Mitte des Tuchs: \"1 in right\" (rechts), \"2 cm left, 3 cm away\" (links, weg; oder \"near\", her).";
    }

    @Override
    public String wishOrder() {
        return "\"round\" (jeder Streifen an die nächste Seite), \"pairs\" (gegenüberliegende Seiten) oder \"two-sides\" (das Mittelstück bleibt in einer Ecke).";
    }

    @Override
    public String wishOutside() {
        return "Die Seite, die am gebundenen Geschenk zu sehen ist: \"front\" (Vorderseite) oder \"back\" (Rückseite); sonst \"front\".";
    }

    @Override
    public String wishProposals() {
        return "Wie viele verschiedene Tücher vorgeschlagen werden, 1 bis 12; sonst 4.";
    }

    @Override
    public String wishRounds() {
        return "Runden von Streifen, 1 bis 40, oder \"stash\".";
    }

    @Override
    public String wishScheme() {
        return "Wie die Farben liegen: \"two halves\" (zwei Hälften), \"spiral\", \"turn and turn about\" (abwechselnd), \"ring by ring\" (Ring um Ring), \"light to dark\" (hell nach dunkel), \"frames\" (Rahmen), \"one field\" (ein Feld), \"scattered evenly\" (verstreut), \"one bright scrap\" (ein leuchtender Rest); sonst \"stash\". Zwei zugleich: \"two halves + one bright scrap\".";
    }

    @Override
    public String wishScraps() {
        return "Mit --free: \"as-they-are\" (kein Rest wird geteilt), \"cut\" (wo es hilft) oder \"either\" (beides); sonst \"either\".";
    }

    @Override
    public String wishSeam() {
        return "Schmale + breite Zugabe einer Kappnaht, \"1/4 + 1/2 in\", oder der Name einer Naht: \"ssamsol\", \"french\", \"lapped\" …";
    }

    @Override
    public String wishSeed() {
        return "Eine andere ganze Zahl, ein anderer Zufall; sonst 1.";
    }

    @Override
    public String wishSetting() {
        return "Wie die hellen und dunklen Hälften der Blöcke liegen: \"straight furrow\" (gerade Furche), \"barn raising\" (Rauten), \"sunshine and shadow\" (Sonne und Schatten), \"turned at will\" (frei gedreht) oder \"all alike\" (alle gleich).";
    }

    @Override
    public String wishShow() {
        return "Diesen Stoff dorthin legen, wo er am gebundenen Geschenk zu sehen ist.";
    }

    @Override
    public String wishSize() {
        return "Das Maß des fertigen Tuchs, statt eines Geschenks: \"38 1/2 in\" (ein Quadrat) oder \"38 x 30 in\".";
    }

    @Override
    public String wishSizes() {
        return "Mit --free: \"mixed\" (große und kleine Flicken), \"even\" (so gleich wie möglich) oder \"any\" (gleich wie); sonst \"any\".";
    }

    @Override
    public String wishSlack() {
        return "Wie viel größer als das Kleinste ein Tuch für ein Geschenk geplant wird, für das, was das Nähen nimmt: \"1/2 in\", \"12 mm\" oder \"none\" (nichts).";
    }

    @Override
    public String wishTrim() {
        return "Jeden Streifen um so viel breiter schneiden und nach dem Nähen abschneiden; sonst \"none\".";
    }

    @Override
    public String wishTurned() {
        return "Vierteldrehungen des Tuchs unter dem Geschenk, nach links: 0 bis 3; sonst 0.";
    }

    @Override
    public String wishWith() {
        return "Mit --free: Nummern von Stücken, die ins Tuch müssen, mit Kommas dazwischen: \"3, 12-2\".";
    }
}
