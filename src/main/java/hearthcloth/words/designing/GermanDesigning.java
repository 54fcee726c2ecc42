package hearthcloth.words.designing;

/** The room of designing in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "Farben neu planen";
    }

    @Override
    public String againLocked() {
        return "Gesperrtes bleibt.";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return name + " für " + eyes + " Augen, " + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "Vorderseite von " + name + ", " + size : "Rückseite von " + name + ", " + size);
    }

    @Override
    public String altFront() {
        return "Vorderseite; jeder Streifen lässt sich wählen";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + ", " + fabrics + ", Zuschnitt " + cut + (locked.equals("yes") ? ", gesperrt" : "");
    }

    @Override
    public String altValues(String name) {
        return "Hell und dunkel von " + name + ", in fünf Stufen";
    }

    @Override
    public String altWide(String width) {
        return width + " breit";
    }

    @Override
    public String barAny() {
        return "Beliebiger Stoff";
    }

    @Override
    public String barAnySays() {
        return "der Plan wählt";
    }

    @Override
    public String barCut(String unit) {
        return "Zuschnitt, " + unit;
    }

    @Override
    public String barLock() {
        return "Sperren";
    }

    @Override
    public String barLockIt() {
        return "So sperren";
    }

    @Override
    public String barLocked() {
        return "Gesperrt";
    }

    @Override
    public String barMiddle() {
        return "die Mitte";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "Mittelstück" : "Streifen " + label);
    }

    @Override
    public String barNarrower() {
        return "Schmaler";
    }

    @Override
    public String barSet() {
        return "Breite setzen";
    }

    @Override
    public String barUnlock() {
        return "Gesperrt; drücken zum Entsperren";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "links, Runde " + round : side.equals("RIGHT") ? "rechts, Runde " + round : side.equals("TOP") ? "oben, Runde " + round : "unten, Runde " + round);
    }

    @Override
    public String barWider() {
        return "Breiter";
    }

    @Override
    public String benchChoices() {
        return "Auswahl";
    }

    @Override
    public String benchClose() {
        return "Nichts wählen";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + ": " + largest;
    }

    @Override
    public String benchLacking() {
        return "Dafür reicht der Stoff nicht.";
    }

    @Override
    public String benchPanel() {
        return "Was sich ändern lässt";
    }

    @Override
    public String benchRedo() {
        return "Wiederholen";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "Wiederholen: " + deed;
    }

    @Override
    public String benchReplan() {
        return "Aus dem Vorrat neu planen";
    }

    @Override
    public String benchReplanCuts() {
        return "Was noch zu schneiden ist, neu planen";
    }

    @Override
    public String benchTap() {
        return "Das Mittelstück oder einen Streifen antippen, um Stoff oder Breite zu ändern. Ein schraffierter Streifen zeigt die linke Stoffseite.";
    }

    @Override
    public String benchTies() {
        return "Worum es reicht";
    }

    @Override
    public String benchUndo() {
        return "Rückgängig";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "Rückgängig: " + deed;
    }

    @Override
    public String benchViews() {
        return "Ansichten";
    }

    @Override
    public String benchWall() {
        return "Das Bild über den ganzen Bildschirm";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + ", " + deed;
    }

    @Override
    public String besideOld() {
        return "Dieses Tuch wurde in einem anderen Fenster mehrmals geändert, seit diese Seite geladen ist. Hier wurde nichts geändert; neu laden.";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return name + " wurde inzwischen in einem anderen Fenster geändert. Beide sind gespeichert: Eins bleibt, wie jenes Fenster es ließ, das andere steht mit dieser Änderung daneben (" + deed + ").";
    }

    @Override
    public String coloursBest() {
        return "wie der Plan es am besten findet";
    }

    @Override
    public String coloursContrast() {
        return "Kontrast";
    }

    @Override
    public String coloursLabel() {
        return "Farben";
    }

    @Override
    public String copyName(String name) {
        return name + ", noch eins";
    }

    @Override
    public String deedAgain() {
        return "Farben neu geplant";
    }

    @Override
    public String deedAnyFabric() {
        return "beliebiger Stoff";
    }

    @Override
    public String deedBar(String bar) {
        return "Breite von " + bar;
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return fabric + " für " + place;
    }

    @Override
    public String deedFell() {
        return "Seite der Nahtlagen";
    }

    @Override
    public String deedHearth() {
        return "Mittelstück";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "" + place + " sperren" : "" + place + " entsperren");
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "Naht" : "Saum");
    }

    @Override
    public String deedOrder() {
        return "Reihenfolge";
    }

    @Override
    public String deedReplan() {
        return "neu geplant";
    }

    @Override
    public String deedRound(String round) {
        return "Breite der Runde " + round;
    }

    @Override
    public String deedRounds(int n) {
        return (n == 1 ? "eine Runde" : "" + n + " Runden");
    }

    @Override
    public String deedRules() {
        return "Regeln der Stückelung";
    }

    @Override
    public String deedSwap() {
        return "Stofftausch";
    }

    @Override
    public String exampleAway() {
        return "das Beispiel wegräumen";
    }

    @Override
    public String exampleGone() {
        return "Das Beispiel ist gelöscht.";
    }

    @Override
    public String exampleLaid() {
        return "Ein Beispielvorrat und ein Tuch liegen zum Ausprobieren da; ein Klick löscht sie wieder.";
    }

    @Override
    public String exampleLay() {
        return "das Beispiel auslegen";
    }

    @Override
    public String exampleName(String title) {
        return "Beispiel: " + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "rotblinde" : eyes.equals("DEUTAN") ? "grünblinde" : "blaublinde");
    }

    @Override
    public String eyesTo() {
        return "Für andere Augen:";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return "Für " + eyes + " Augen: " + colours;
    }

    @Override
    public String fabricsSwap() {
        return "Tauschen";
    }

    @Override
    public String fabricsTitle() {
        return "Stoffe";
    }

    @Override
    public String fabricsWith() {
        return "mit";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "Vorderseite" : "Rückseite");
    }

    @Override
    public String figureCuts() {
        return "Schnitte";
    }

    @Override
    public String figureJoins() {
        return "Stückelungen";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + ", so wenig wie möglich" : "" + joins + ", höchstens " + above + " mehr als möglich");
    }

    @Override
    public String figureLayers(int n) {
        return (n == 1 ? "" + n + " Lage" : "" + n + " Lagen");
    }

    @Override
    public String figureLost() {
        return "Verlorener Stoff";
    }

    @Override
    public String figurePatches() {
        return "Flicken";
    }

    @Override
    public String figurePieces() {
        return "Angeschnittene Stücke";
    }

    @Override
    public String figureThickest() {
        return "Dickste Stelle";
    }

    @Override
    public String figureThread() {
        return "Garn";
    }

    @Override
    public String figureWas(String was) {
        return "vorher " + was;
    }

    @Override
    public String figuresAll() {
        return "Alle Zahlen";
    }

    @Override
    public String goCut() {
        return "Dieses Tuch zuschneiden";
    }

    @Override
    public String goRecut() {
        return "Das Verlangte schneiden";
    }

    @Override
    public String goSew() {
        return "Dieses Tuch nähen";
    }

    @Override
    public String handEnough() {
        return "genug";
    }

    @Override
    public String handJoined() {
        return "gestückelt";
    }

    @Override
    public String handShort() {
        return "zu kurz";
    }

    @Override
    public String handWide(String width) {
        return width + " breit";
    }

    @Override
    public String labelRenamed(String name, String was) {
        return was + " in " + name + " umbenannt";
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "Flach" : look.equals("BACK") ? "Rückseite" : look.equals("TIED") ? "Gebunden" : look.equals("VALUES") ? "Hell, dunkel" : look.equals("PROTAN") ? "Protan" : look.equals("DEUTAN") ? "Deutan" : "Tritan");
    }

    @Override
    public String nameCopy() {
        return "Kopie behalten";
    }

    @Override
    public String nameMore() {
        return "Weitere Vorschläge";
    }

    @Override
    public String nameName() {
        return "Name";
    }

    @Override
    public String nameRename() {
        return "Umbenennen";
    }

    @Override
    public String nameTitle() {
        return "Name und Kopie";
    }

    @Override
    public String nearGone() {
        return "Dieses geht nicht mehr; sehen Sie noch einmal nach.";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "In anderen Stoffen" : kind.equals("BARS") ? "Mit schmaleren Streifen" : kind.equals("HEARTH") ? "Mit kleinerem Mittelstück" : kind.equals("ROUNDS") ? "Mit weniger Runden" : "Im Ganzen kleiner");
    }

    @Override
    public String nearLead() {
        return "Jedes ist in einer Sache anders, und der Stoff dafür ist da.";
    }

    @Override
    public String nearNone() {
        return "Aus dem, was frei ist, wird kein ähnliches Tuch. Machen Sie den Schritt rückgängig, oder sehen Sie sich andere Tücher an.";
    }

    @Override
    public String nearOf(String fabrics) {
        return "Aus " + fabrics + ".";
    }

    @Override
    public String nearTaken(String way) {
        return "Genommen: " + way + ".";
    }

    @Override
    public String nearTitle() {
        return "Die nächsten Tücher, die Sie nähen können";
    }

    @Override
    public String picturesBack(String kind) {
        return "Rückseite, " + kind;
    }

    @Override
    public String picturesBoth() {
        return "Beides, zum Verschicken";
    }

    @Override
    public String picturesFlat(String kind) {
        return "Flach, " + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "Gebunden, " + kind;
    }

    @Override
    public String picturesTitle() {
        return "Bilder zum Behalten und Verschicken";
    }

    @Override
    public String picturesWhat() {
        return "Ein Bild beider Seiten und des gebundenen Geschenks, oder jedes für sich.";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "Auseinandernehmen" : "Zurücklegen");
    }

    @Override
    public String piecingClear() {
        return "Tisch leeren";
    }

    @Override
    public String piecingDeed() {
        return "die Flicken";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "Neu füllen, Festgehaltenes bleibt" : "Den Rest füllen");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + ", " + way;
    }

    @Override
    public String piecingFrom() {
        return "Flicken für Flicken ändern";
    }

    @Override
    public String piecingGo() {
        return "Reste von Hand zusammenlegen";
    }

    @Override
    public String piecingHeap(int n) {
        return (n == 1 ? "" + n + " Rest daneben" : "" + n + " Reste daneben");
    }

    @Override
    public String piecingIntro() {
        return "Einen Rest antippen, dann einen zweiten: Man sieht, wie beide zusammengehen und was dabei abfällt. Der Rest lässt sich jederzeit füllen; was zusammengelegt ist, bleibt zusammen.";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + ", festgehalten";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return "Stück " + a + " und " + b + " liegen zusammen; " + trims + ".";
    }

    @Override
    public String piecingKeep(String cloth) {
        return "In " + cloth + " übernehmen";
    }

    @Override
    public String piecingLay() {
        return "Auf den Tisch legen";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "Loslassen" : "Festhalten");
    }

    @Override
    public String piecingMake() {
        return "Dieses Tuch machen";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "so viel Abfall wie jetzt" : how.equals("MORE") ? "" + area + " mehr Abfall" : "" + area + " weniger Abfall");
    }

    @Override
    public String piecingNext() {
        return "Was als Nächstes passt";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "In diesem Tuch passt nichts daneben." : what.equals("two") ? "Diese beiden gehen nicht zusammen: Ein Flicken zeigte zu wenig, oder das Tuch ist zu klein für beide." : "Kein anderer Rest ist groß genug für diese Stelle.");
    }

    @Override
    public String piecingPanel() {
        return "Der gewählte Rest";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + ", " + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "Zurückgenommen." : what.equals("REDO") ? "Wiederholt." : what.equals("CLEAR") ? "Der Tisch ist leer." : what.equals("LAY") ? "Er liegt auf dem Tisch und kommt ins Tuch." : what.equals("APART") ? "Auseinandergenommen." : what.equals("LOCK") ? "Erledigt." : what.equals("TURN") ? "Gedreht." : what.equals("SWAP") ? "Die beiden haben getauscht." : what.equals("SIZE") ? "Die Größe steht." : what.equals("FILL") ? "Das Tuch ist gefüllt. Einen Flicken antippen, um ihn festzuhalten oder zu tauschen." : what.equals("SHORT") ? "In dieser Größe ließ sich der Rest nicht füllen. Etwas auseinandernehmen oder das Tuch kleiner machen." : what.equals("MADE") ? "Das Tuch ist behalten." : what.equals("FROM") ? "Einen Flicken antippen, um ihn zu tauschen, oder festhalten, was gefällt, und den Rest neu füllen." : "Dieses Tuch lässt sich hier nicht ändern: Zwei Flicken kommen aus einem Stück, oder ein Stück fehlt.");
    }

    @Override
    public String piecingSet() {
        return "Übernehmen";
    }

    @Override
    public String piecingSize(String unit) {
        return "Größe des Tuchs in " + unit;
    }

    @Override
    public String piecingStale() {
        return "Der Tisch hat sich inzwischen geändert; bitte noch einmal ansehen.";
    }

    @Override
    public String piecingSwap() {
        return "Ein anderer Rest an dieser Stelle";
    }

    @Override
    public String piecingTable() {
        return "Auf dem Tisch";
    }

    @Override
    public String piecingTitle() {
        return "Reste von Hand";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "nichts fällt ab" : off.equals("SECOND") ? "" + length + " fallen von Stück " + piece + " ab" : "" + length + " fallen auf der anderen Seite ab");
    }

    @Override
    public String piecingTurn() {
        return "Drehen";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "rechts daneben" : "darunter") + (turned.equals("yes") ? ", gedreht" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return "Zusammen mit " + piece;
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return "" + n + " Flicken" + ", " + cloth + ", " + percent + " % fallen ab.";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "Mittelstück" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "Es heißt jetzt " + name + ".";
    }

    @Override
    public String saidCopy() {
        return "Das ist eine Kopie; das erste bleibt, wie es war.";
    }

    @Override
    public String saidLacking() {
        return "Der Stoff reicht nicht; einen Streifen oder eine Breite ändern.";
    }

    @Override
    public String saidLocked() {
        return "Gesperrt: Beim Neuplanen bleibt es, wie es ist.";
    }

    @Override
    public String saidNothing() {
        return "Es gibt nichts rückgängig zu machen.";
    }

    @Override
    public String saidPlanned() {
        return "Aus dem Vorrat neu geplant.";
    }

    @Override
    public String saidRedone(String deed) {
        return "Wiederholt: " + deed + ".";
    }

    @Override
    public String saidUndone(String deed) {
        return "Rückgängig gemacht: " + deed + ".";
    }

    @Override
    public String saidUnlocked() {
        return "Entsperrt.";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "Kappnaht: eine Zugabe um die andere gelegt und festgenäht" : seam.equals("ssamsol") ? "Ssamsol: schmale Kappnaht, wie an koreanischen Einschlagtüchern" : seam.equals("felled_and_trimmed") ? "Kappnaht, gekürzt: bündig genäht, eine Zugabe gekürzt, dann gekappt" : seam.equals("lapped") ? "verhakt: zwei gefaltete Kanten ineinandergehakt" : seam.equals("french") ? "Rechts-links-Naht: zweimal genäht, die Schnittkanten innen" : seam.equals("french_trimmed") ? "Rechts-links-Naht, gekürzt: breitere Zugaben, nach der ersten Naht gekürzt" : seam.equals("gamchimjil") ? "Gamchimjil: zwei gefaltete Kanten von Hand überwendlich genäht" : "" + name);
    }

    @Override
    public String set() {
        return "Setzen";
    }

    @Override
    public String sewingAllowances() {
        return "Kappnaht, schmal + breit";
    }

    @Override
    public String sewingCorner() {
        return "Ecke des Saums";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "gerade Ecken" : "Briefecken");
    }

    @Override
    public String sewingFell() {
        return "Nahtlagen auf der";
    }

    @Override
    public String sewingHelp() {
        return "Was heißt schmal und breit?";
    }

    @Override
    public String sewingHelpSays() {
        return "Bei einer Kappnaht ist eine Nahtzugabe schmal; die andere, breitere wird darübergelegt und festgenäht. Beide werden unten eingestellt. Die Nahtlage liegt auf einer Seite und macht dort eine Linie. Das kleinste Stück ist der kürzeste Teil, der in einen Streifen gestückelt werden darf.";
    }

    @Override
    public String sewingHem(String unit) {
        return "Saum, erster + zweiter Einschlag, " + unit;
    }

    @Override
    public String sewingJoins() {
        return "Höchstens Stückelungen je Streifen";
    }

    @Override
    public String sewingLeast(String unit) {
        return "Kleinstes Stück, fertig, " + unit;
    }

    @Override
    public String sewingSeam() {
        return "Naht";
    }

    @Override
    public String sewingTitle() {
        return "Naht, Saum und Stückelung";
    }

    @Override
    public String shapeHearth(String unit) {
        return "Mittelstück, zugeschnitten, " + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "Höhe des Mittelstücks, zugeschnitten, " + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "Breite des Mittelstücks, zugeschnitten, " + unit;
    }

    @Override
    public String shapeHelp() {
        return "Was bedeuten diese Breiten?";
    }

    @Override
    public String shapeHelpSays() {
        return "Jede Breite ist das, was geschnitten wird, samt Nahtzugaben; der fertige Streifen ist um das schmaler, was Nähte und Saum wegnehmen. Die Größe oben ist das fertige, gesäumte Tuch. Die Reihenfolge sagt, wie die Streifen einer Runde nacheinander angenäht werden.";
    }

    @Override
    public String shapeMixed() {
        return "(verschieden)";
    }

    @Override
    public String shapeOrder() {
        return "Reihenfolge";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return "Runde " + round + ", Streifen zugeschnitten, " + unit;
    }

    @Override
    public String shapeRounds() {
        return "Runden";
    }

    @Override
    public String shapeSetHearth() {
        return "Mittelstück setzen";
    }

    @Override
    public String shapeTitle() {
        return "Form";
    }

    @Override
    public String shapeWhole() {
        return "Das ganze Tuch";
    }

    @Override
    public String shortJoins(int n) {
        return (n == 1 ? "Stückelung" : "Stückelungen");
    }

    @Override
    public String shortLayers() {
        return "Lagen";
    }

    @Override
    public String shortLost() {
        return "Verlust";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "im Quadrat" : "fertig");
    }

    @Override
    public String shortThread() {
        return "Garn";
    }

    @Override
    public String sinceEnough() {
        return "Der Stoff reicht wieder.";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "Stückelungen " + before + ", jetzt " + now + ".";
    }

    @Override
    public String sinceLacking(String why) {
        return "Nicht genug Stoff: " + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "Verlust " + before + ", jetzt " + now + ".";
    }

    @Override
    public String sinceSame() {
        return "Geändert; Größe, Stückelungen und Verlust bleiben gleich.";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "Größe " + before + ", jetzt " + now + ".";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " im Quadrat";
    }

    @Override
    public String staleCalled(String name) {
        return "Es heißt " + name + ".";
    }

    @Override
    public String staleRenamed() {
        return "Dieses Tuch wurde inzwischen in einem anderen Fenster umbenannt. Hier wurde nichts geändert.";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + ", gebunden. " + fit;
    }

    @Override
    public String tiedColours() {
        return "In seinen Farben";
    }

    @Override
    public String tiedExample() {
        return "box 30 x 20 x 10 cm";
    }

    @Override
    public String tiedFaces() {
        return "Seite außen, und wie das Tuch liegt";
    }

    @Override
    public String tiedGreys() {
        return "Hell und dunkel";
    }

    @Override
    public String tiedMore() {
        return "Was zu sehen ist und mehr";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "wie gezeichnet" : turn.equals("1") ? "ein Viertel" : turn.equals("2") ? "halb" : "drei Viertel");
    }

    @Override
    public String tiedRound() {
        return "Worum gebunden";
    }

    @Override
    public String tiedRoundWhat() {
        return "Worum";
    }

    @Override
    public String tiedSay() {
        return "Angeben, worum es gebunden werden soll.";
    }

    @Override
    public String tiedShow() {
        return "Zeigen";
    }

    @Override
    public String tiedSize() {
        return "Seine Größe";
    }

    @Override
    public String tiedTooSmall() {
        return "zu klein";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "Noch ist nicht gesagt, was es verpackt. Hier ist es um " + gift + " gebunden.";
    }

    @Override
    public String tiedWhich() {
        return "Welche Bindung";
    }

    @Override
    public String turnCanvas() {
        return "Das gebundene Geschenk. Pfeiltasten drehen es, Plus und Minus holen es näher oder ferner, Pos1 zeigt es von einer Ecke.";
    }

    @Override
    public String turnGroup() {
        return "Das Geschenk drehen";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "nach links gedreht" : way.equals("right") ? "nach rechts gedreht" : way.equals("up") ? "zu dir gekippt" : "von dir weg gekippt");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "Nach links drehen" : way.equals("right") ? "Nach rechts drehen" : way.equals("up") ? "Zu dir kippen" : way.equals("down") ? "Von dir weg kippen" : way.equals("nearer") ? "Näher" : "Weiter weg");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return "Für dieses Tuch vorgesehen, aber zurückgelegt: " + pieces + ". Im Vorrat zurückgeben oder das Tuch neu planen.";
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return (n == 1 ? "" + n + " Stück (" + fabrics + ")" : "" + n + " Stücke (" + fabrics + ")");
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return "Für dieses Tuch vorgesehen, aber nicht mehr wie geplant im Vorrat: " + pieces + ". So lässt es sich nicht zuschneiden; neu planen.";
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + " (" + fabric + ")";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return (n == 1 ? "Stück " + pieces : "Stücke " + pieces);
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "Dieses Tuch ist in Zentimetern gemessen" : "Dieses Tuch ist in Zoll gemessen") + (begun.equals("yes") ? ", so wie es zugeschnitten ist." : ", so wie es geplant wurde. Neu planen, um es mit dem jetzigen Lineal zu haben.");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return "Auch für " + cloth + " vorgesehen: " + pieces + ". Das zuerst zugeschnittene Tuch bekommt sie; das andere wird dann neu geplant.";
    }

    @Override
    public String wrongBar() {
        return "Zuerst einen Streifen wählen.";
    }

    @Override
    public String wrongCloth() {
        return "Das ergäbe kein Tuch. Nichts wurde geändert; andere Maße wählen.";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "Kein Stoff im Vorrat heißt „" + fabric + "“.";
    }

    @Override
    public String wrongForm() {
        return "Dieses Formular ist von anderer Art; die Seite neu laden.";
    }

    @Override
    public String wrongIsCut() {
        return "Dieses Tuch ist schon zugeschnitten. Zum Ändern eine Kopie behalten.";
    }

    @Override
    public String wrongLacking() {
        return "Für dieses Tuch reicht der Stoff nicht; zuerst ändern.";
    }

    @Override
    public String wrongLeast() {
        return "Das kleinste Stück ist mehr als nichts und höchstens 1 m.";
    }

    @Override
    public String wrongName() {
        return "Einen Namen mit höchstens 80 Zeichen schreiben.";
    }

    @Override
    public String wrongNoBars() {
        return "Dieses Tuch hat keine Streifen zum Ändern. Für andere Reste oder eine andere Größe noch einmal Vorschläge suchen.";
    }

    @Override
    public String wrongNoOther() {
        return "Für diese Maße wurde kein anderer Farbplan gefunden; einen Streifen entsperren oder eine Breite ändern.";
    }

    @Override
    public String wrongNone() {
        return "So ein Tuch gibt es nicht; vielleicht wurde es entfernt.";
    }

    @Override
    public String wrongOrder(String written) {
        return "„" + written + "“ ist keine Reihenfolge.";
    }

    @Override
    public String wrongPart() {
        return "Jeder Teil ist mehr als nichts und höchstens 10 cm.";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return "„" + scheme + "“ wurde für diese Maße nicht gefunden; nötig: " + needs + ".";
    }

    @Override
    public String wrongSeam(String written) {
        return "„" + written + "“ ist keine bekannte Naht.";
    }

    @Override
    public String wrongTiesNone() {
        return "Dieses Tuch bindet noch kein Geschenk: angeben, was eingebunden werden soll.";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return (what.equals("hem") ? "„" + written + "“ geht nicht; ein Saum hat einen ersten und einen zweiten Einschlag, etwa 0,6 + 1,2 cm." : "„" + written + "“ geht nicht; eine Kappnaht hat eine schmale und eine breite Zugabe, etwa 0,6 + 1,2 cm.");
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return "„" + written + "“ geht nicht; eine ganze Zahl von " + least + " bis " + most + " schreiben.";
    }

    @Override
    public String wrongWide(String written) {
        return "„" + written + "“ ist breiter als jedes Tuch; die Einheit prüfen.";
    }

    @Override
    public String wrongWrap() {
        return "Die breite Kante legt sich um die schmale, also muss die zweite breiter sein.";
    }
}
