package hearthcloth.words.reporting;

/** The room of reporting in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchReporting implements ReportingWords {

    @Override
    public String areaLarge(String number, String unit) {
        return number + " " + (unit.equals("metric") ? "m²" : "vg²");
    }

    @Override
    public String care(String what) {
        return "Attention : " + what;
    }

    @Override
    public String giftLeast(String gift, String size, String tie) {
        return gift + ", " + tie + " : un carré d’au moins " + size;
    }

    @Override
    public String giftRange(String gift, String least, String most, String size, String tie) {
        return gift + ", " + tie + " : un carré d’au moins " + size + " (" + least + "–" + most + " selon que le tissu des nœuds est fin ou épais)";
    }

    @Override
    public String guidelineBent(String what) {
        return "Assoupli : " + what;
    }

    @Override
    public String guidelineKeeps() {
        return "rien ; toutes les règles sont suivies.";
    }

    @Override
    public String guidelineNearest(String folder, String number, String size, String title) {
        return number + "  " + title + ", " + size + ", dans " + folder + ", prêt à couper et à coudre.";
    }

    @Override
    public String guidelineNone() {
        return "Aucun carré ne peut se faire avec cette réserve.";
    }

    @Override
    public String guidelineNoneKept(String name) {
        return "Aucun carré qui suive toutes les règles de « " + name + " » n’a été trouvé dans cette réserve.";
    }

    @Override
    public String guidelineScraps() {
        return "Ces morceaux ne donnent pas de pièce centrale entourée de bandes ; les chutes sont posées ensemble telles quelles.";
    }

    @Override
    public String kitsCloth(String fabric, int n, String size, String title) {
        return title + ", " + size + ", pièce centrale en " + fabric + ", " + (n == 0 ? "sans raccord" : n == 1 ? "" + n + " raccord" : "" + n + " raccords");
    }

    @Override
    public String kitsFree(int n, String size, String title) {
        return title + ", " + size + ", " + (n == 0 ? "sans raccord" : n == 1 ? "" + n + " raccord" : "" + n + " raccords");
    }

    @Override
    public String kitsHanded(int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau est laissé par un carré à un autre ; kits.pdf dit qui coupe d’abord." : "" + n + " morceaux sont laissés par un carré à un autre ; kits.pdf dit qui coupe d’abord.");
    }

    @Override
    public String kitsInTurn(String n) {
        return "L’un après l’autre : " + n + ".";
    }

    @Override
    public String kitsMost(String bound, String worst) {
        return "Le plus de raccords : " + worst + " ; aucun partage de cette réserve n’en a moins de " + bound + ".";
    }

    @Override
    public String kitsNothing(String name) {
        return name + " : rien n’a pu être fait. Pas comme demandé.";
    }

    @Override
    public String kitsPart(String cloth, String folder, String name) {
        return name + " : " + cloth + ", dans " + folder + ".";
    }

    @Override
    public String kitsPartOther(String cloth, String folder, String name) {
        return name + " : " + cloth + ", dans " + folder + ". Pas comme demandé.";
    }

    @Override
    public String kitsPrint(String file) {
        return "Étiquettes, liste d’achats et feuille de l’enseignante : " + file;
    }

    @Override
    public String kitsWithout(String n) {
        return "L’un après l’autre, " + n + " seraient restés sans rien.";
    }

    @Override
    public String planChosen(String what) {
        return "Choisi pour vous : " + what;
    }

    @Override
    public String planCuts(String cuts, String lost, String percent, String touched) {
        return "Coupes : " + cuts + ". Perte : " + lost + " (" + percent + " des " + touched + " entamés).";
    }

    @Override
    public String planCutsBound(String cuts, String least, String lost, String percent, String touched) {
        return "Coupes : " + cuts + ". Perte : " + lost + " (" + percent + " des " + touched + " entamés ; aucun plan n’en entame moins de " + least + ").";
    }

    @Override
    public String planCutsBounds(String cuts, String least, String leastLost, String lost, String percent, String touched) {
        return "Coupes : " + cuts + ". Perte : " + lost + " (" + percent + " des " + touched + " entamés ; aucun plan n’en entame moins de " + least + " ni n’en perd moins de " + leastLost + ").";
    }

    @Override
    public String planGift(String gift) {
        return "Cadeau : " + gift + ".";
    }

    @Override
    public String planHead(String folder, String size, String title) {
        return title + ", " + size + ", dans " + folder;
    }

    @Override
    public String planImpossible() {
        return "Ce carré ne peut pas être fait avec cette réserve.";
    }

    @Override
    public String planJoinsAbove(String above, String n) {
        return "Raccords : " + n + ", au plus " + above + " de plus que le minimum possible.";
    }

    @Override
    public String planJoinsFewest(String n) {
        return "Raccords : " + n + ", le minimum possible.";
    }

    @Override
    public String planLarger(String length) {
        return "Il est prévu " + length + " plus grand que le minimum, pour ce que la couture peut prendre.";
    }

    @Override
    public String planMore(String size) {
        return "Pour d’autres semblables, demander --size \"" + size + "\" et laisser le reste à la réserve.";
    }

    @Override
    public String planNearest(String size, String title) {
        return "Le plus proche qui puisse être fait mesure " + size + " : " + title + ".";
    }

    @Override
    public String planNearestJoins(int n, String size, String title) {
        return "Le plus proche qui puisse être fait mesure " + size + " : " + title + ", " + (n == 0 ? "sans raccord" : n == 1 ? "" + n + " raccord" : "" + n + " raccords") + ".";
    }

    @Override
    public String planNotFound() {
        return "Aucun moyen n’a été trouvé de faire ce carré avec cette réserve.";
    }

    @Override
    public String planPatches(String patches, String seams) {
        return "Pièces : " + patches + ". Coutures : " + seams + ".";
    }

    @Override
    public String planReady(String fabrics, String folder) {
        return "Il est dans " + folder + ", prêt à couper et à coudre : en " + fabrics + ".";
    }

    @Override
    public String planStash(String area, int fabrics, int pieces) {
        return "Réserve : " + (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + " de " + (fabrics == 0 || fabrics == 1 ? "" + fabrics + " tissu" : "" + fabrics + " tissus") + ", " + area + ".";
    }

    @Override
    public String planTied(String what) {
        return "Noué : " + what;
    }

    @Override
    public String planTimeOut(String budget) {
        return "Note : le temps est écoulé avant que tout soit essayé ; un --budget plus long, comme " + budget + ", peut trouver mieux.";
    }

    @Override
    public String progressBest(int n, String tried) {
        return (n == 0 || n == 1 ? "" + tried + ", la meilleure avec " + n + " raccord" : "" + tried + ", la meilleure avec " + n + " raccords");
    }

    @Override
    public String progressLayouts(String found, String of, String tried) {
        return "plan : " + tried + " dispositions essayées sur " + of + ", " + found + " possibles";
    }

    @Override
    public String progressTogether(int asked, String made, String most, String of, String tried) {
        return (asked == 0 || asked == 1 ? "plan commun : " + tried + " partages essayés sur " + of + ", " + made + " carré fait sur " + asked + ", " + most + " raccords au plus" : "plan commun : " + tried + " partages essayés sur " + of + ", " + made + " carrés faits sur " + asked + ", " + most + " raccords au plus");
    }

    @Override
    public String readAll(String doubt) {
        return "Tous les morceaux : " + doubt;
    }

    @Override
    public String readColumn(String column) {
        return (column.equals("usable") ? "utilisable" : column.equals("shape") ? "forme" : column.equals("colour") ? "couleur" : column.equals("look") ? "aspect" : column.equals("fabric") ? "tissu" : "côtés");
    }

    @Override
    public String readDoubts() {
        return "Incertain :";
    }

    @Override
    public String readFound(int fabrics, int pieces) {
        return "Trouvé : " + (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + ", d’après leur aspect de " + (fabrics == 0 || fabrics == 1 ? "" + fabrics + " tissu" : "" + fabrics + " tissus") + ".";
    }

    @Override
    public String readKnow() {
        return "Bon à savoir :";
    }

    @Override
    public String readLeft(int n, String numbers) {
        return (n == 0 || n == 1 ? "Laissé hors du fichier à cause d’un doute : " + n + " morceau (" + numbers + "). Reprenez la photo comme indiqué, ou ajoutez --keep-doubtful pour l’écrire aussi." : "Laissés hors du fichier à cause d’un doute : " + n + " morceaux (" + numbers + "). Reprenez la photo comme indiqué, ou ajoutez --keep-doubtful pour les écrire aussi.");
    }

    @Override
    public String readLittle() {
        return "trop peu";
    }

    @Override
    public String readLook(String figured) {
        return (figured.equals("yes") ? "imprimé" : "uni");
    }

    @Override
    public String readNarrow(int n, String numbers) {
        return (n == 0 || n == 1 ? "Laissé de côté, car aucun rectangle large d’un centimètre ne peut y être coupé : " + n + " morceau (" + numbers + ")." : "Laissés de côté, car aucun rectangle large d’un centimètre ne peut y être coupé : " + n + " morceaux (" + numbers + ").");
    }

    @Override
    public String readNone() {
        return "Aucun morceau de tissu n’a été trouvé à côté de la feuille. Posez les morceaux sur un fond dont ils se détachent, en laissant voir ce fond tout autour.";
    }

    @Override
    public String readPiece(String doubt, String number) {
        return "Morceau " + number + " : " + doubt;
    }

    @Override
    public String readShape(String n, String shape) {
        return (shape.equals("TRIANGLE") ? "triangle" : shape.equals("STRIP") ? "bande" : shape.equals("SQUARE") ? "carré" : shape.equals("RECTANGLE") ? "rectangle" : shape.equals("UNEVEN") ? "quatre côtés inégaux" : shape.equals("L") ? "en L" : "" + n + " côtés");
    }

    @Override
    public String readWrote(int fabrics, String file, int lines, int pieces) {
        return file + " écrit : " + (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + " de " + (fabrics == 0 || fabrics == 1 ? "" + fabrics + " tissu" : "" + fabrics + " tissus") + " en " + (lines == 0 || lines == 1 ? "" + lines + " ligne" : "" + lines + " lignes") + ". Une photo ne montre ni l’endroit ni la lisière : les deux faces sont notées pareilles, et le grand côté comme longueur. Modifiez le fichier là où ce n’est pas le cas.";
    }

    @Override
    public String sizeCloth(String end, String size) {
        return "Les plus grands cadeaux que noue un carré fini de " + size + ", avec " + end + " à chaque coin noué pour le nœud et le bout :";
    }

    @Override
    public String sizeEnds(String least, String leastEnd, String most, String mostEnd, String usual) {
        return "avec " + usual + " à chaque coin noué ; " + least + " avec " + leastEnd + ", " + most + " avec " + mostEnd;
    }

    @Override
    public String sizeFits(String enough) {
        return (enough.equals("yes") ? "suffit" : "petit");
    }

    @Override
    public String sizeGift(String gift) {
        return "Autour d’" + gift + ", le carré fini mesure au moins :";
    }

    @Override
    public String sizeKnot() {
        return "Le nœud plat :";
    }

    @Override
    public String sizeNoKnot() {
        return "sans nœud";
    }

    @Override
    public String sizeNone(String uses) {
        return "aucun ; vendu pour : " + uses;
    }

    @Override
    public String sizeNothing() {
        return "rien ; il est trop petit";
    }

    @Override
    public String sizeShape(String shape) {
        return (shape.equals("cake") ? "une boîte 3 : 2 : 0,8, comme une boîte à gâteau" : shape.equals("cube") ? "un cube" : shape.equals("flat") ? "une boîte plate 3 : 2 : 0,3, comme une chemise pliée" : shape.equals("long") ? "une longue boîte 5 : 1 : 1" : shape.equals("bottle") ? "une bouteille quatre fois plus haute que large, comme une bouteille de vin" : shape.equals("bottles") ? "deux de ces bouteilles" : shape.equals("ball") ? "une boule" : shape.equals("books") ? "deux livres de poche 1,4 : 1 : 0,14" : "un rouleau quatre fois plus long qu’épais");
    }

    @Override
    public String sizeSold(String tie) {
        return "Tailles du commerce (usage courant), et le plus grand cadeau de cette forme (" + tie + ") :";
    }

    @Override
    public String sizeSteps(String tie) {
        return "Comment nouer (" + tie + ") :";
    }

    @Override
    public String sizeTrade(String size) {
        return "La taille du commerce au-dessus est " + size + ".";
    }

    @Override
    public String sizeTradeNamed(String size, String trade) {
        return "La taille du commerce au-dessus est " + size + " (" + trade + ").";
    }

    @Override
    public String sizeUpTo(String gift, String uses) {
        return "jusqu’à " + gift + " ; vendu pour : " + uses;
    }

    @Override
    public String square(String side) {
        return side + " de côté";
    }

    @Override
    public String student(String n) {
        return "Élève " + n;
    }
}
