package hearthcloth.words.finishing;

/** The room of finishing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchFinishing implements FinishingWords {

    @Override
    public String againBefore(int n) {
        return "" + n + " fois avant, sans note.";
    }

    @Override
    public String againFor(String who) {
        return "pour " + who;
    }

    @Override
    public String againSomething() {
        return "quelque chose";
    }

    @Override
    public String againTitle() {
        return "Emballé de nouveau";
    }

    @Override
    public String againUsed(String cloth, int n) {
        return cloth + " a servi " + "" + n + " fois" + ".";
    }

    @Override
    public String againWhat() {
        return "Quoi";
    }

    @Override
    public String againWhen() {
        return "Quand";
    }

    @Override
    public String againWho() {
        return "Pour qui";
    }

    @Override
    public String bars(int n) {
        return (n == 0 || n == 1 ? "" + n + " bande" : "" + n + " bandes");
    }

    @Override
    public String date(String day, String month, String year) {
        return day + " " + (month.equals("m1") ? "janvier" : month.equals("m2") ? "février" : month.equals("m3") ? "mars" : month.equals("m4") ? "avril" : month.equals("m5") ? "mai" : month.equals("m6") ? "juin" : month.equals("m7") ? "juillet" : month.equals("m8") ? "août" : month.equals("m9") ? "septembre" : month.equals("m10") ? "octobre" : month.equals("m11") ? "novembre" : "décembre") + " " + year;
    }

    @Override
    public String how(int days, int fabrics, String parts) {
        return parts + ", " + (fabrics == 0 || fabrics == 1 ? "" + fabrics + " tissu" : "" + fabrics + " tissus") + (days == 0 ? "" : days == 1 ? ", cousu en un jour" : ", cousu en " + days + " jours") + ".";
    }

    @Override
    public String labelAgain() {
        return "emballé de nouveau";
    }

    @Override
    public String labelSlip() {
        return "étiquette";
    }

    @Override
    public String labelSlipOf(String cloth) {
        return "étiquette de " + cloth;
    }

    @Override
    public String lastStep() {
        return "Retour à la dernière étape";
    }

    @Override
    public String leftBack(int n) {
        return (n == 0 || n == 1 ? "Elle est revenue sur la table, à sa taille actuelle." : "Elles sont revenues sur la table, à leur taille actuelle.");
    }

    @Override
    public String leftFirst() {
        return "Ces chutes servent d’abord. Qu’allez-vous emballer ?";
    }

    @Override
    public String leftHeading(int n) {
        return (n == 0 ? "Pas de chute à garder" : n == 1 ? "Une chute à garder" : "" + n + " chutes à garder");
    }

    @Override
    public String leftNone() {
        return "Aucune n’est plus dans la réserve.";
    }

    @Override
    public String leftOne(String fabric, String size) {
        return fabric + ", " + size;
    }

    @Override
    public String leftSome(String n) {
        return n + " encore sur la table, le reste a servi depuis.";
    }

    @Override
    public String leftUse() {
        return "Utiliser les chutes";
    }

    @Override
    public String leftUsed() {
        return "Tout a servi depuis.";
    }

    @Override
    public String notMade() {
        return "Il n’est pas encore fait : il n’y a pas assez de tissu.";
    }

    @Override
    public String patches(int n) {
        return (n == 0 || n == 1 ? "" + n + " pièce" : "" + n + " pièces");
    }

    @Override
    public String photoAnother() {
        return "Une autre photo";
    }

    @Override
    public String photoAway() {
        return "L’ôter";
    }

    @Override
    public String photoAwayAsk() {
        return "Ôter la photo ? Elle n’est gardée nulle part ailleurs ici.";
    }

    @Override
    public String photoDrawn(String cloth) {
        return cloth + ", dessiné";
    }

    @Override
    public String photoIsAway() {
        return "La photo est ôtée ; le dessin la remplace.";
    }

    @Override
    public String photoIts() {
        return "Sa photo";
    }

    @Override
    public String photoKeep() {
        return "La garder";
    }

    @Override
    public String photoKept() {
        return "La photo est gardée. Le lieu et la date de prise de vue ne le sont pas.";
    }

    @Override
    public String photoNone() {
        return "Il n’y a pas de photo de ce carré.";
    }

    @Override
    public String photoSend() {
        return "Les deux faces, à envoyer";
    }

    @Override
    public String photoTake() {
        return "Le photographier";
    }

    @Override
    public String photoYours(String cloth) {
        return "Votre photo de " + cloth;
    }

    @Override
    public String picture(String cloth) {
        return "Recto de " + cloth;
    }

    @Override
    public String slipAgainst(String across, String both, String height, String up, String width) {
        return (across.equals("less") ? "" + width + " plus étroit" : across.equals("more") ? "" + width + " plus large" : "") + (both.equals("yes") ? ", " : "") + (up.equals("less") ? "" + height + " moins haut" : up.equals("more") ? "" + height + " plus haut" : "") + " que prévu.";
    }

    @Override
    public String slipAnd() {
        return "et";
    }

    @Override
    public String slipAsPlanned() {
        return "Comme prévu.";
    }

    @Override
    public String slipCorners() {
        return "D’un coin à l’autre";
    }

    @Override
    public String slipCornersOther() {
        return "D’un coin à l’autre, dans l’autre sens";
    }

    @Override
    public String slipHeight() {
        return "Hauteur";
    }

    @Override
    public String slipIsKept() {
        return "L’étiquette est gardée.";
    }

    @Override
    public String slipIts() {
        return "Son étiquette";
    }

    @Override
    public String slipKeep() {
        return "Garder cette étiquette";
    }

    @Override
    public String slipKeeper() {
        return "Pour qui";
    }

    @Override
    public String slipLeans(String length) {
        return "D’un coin à l’autre, les deux sens diffèrent de " + length + " : il penche un peu. Noué, personne ne le voit.";
    }

    @Override
    public String slipLongName(String most) {
        return "Écrivez un nom de " + most + " lettres au plus.";
    }

    @Override
    public String slipLongNote(String most) {
        return "Une note compte " + most + " lettres au plus.";
    }

    @Override
    public String slipMade() {
        return "Fait le";
    }

    @Override
    public String slipMeasures(String unit) {
        return "Il mesure, " + unit;
    }

    @Override
    public String slipMissing(String side) {
        return (side.equals("width") ? "Indiquez aussi la largeur, ou laissez toute la taille vide." : "Indiquez aussi la hauteur, ou laissez toute la taille vide.");
    }

    @Override
    public String slipName() {
        return "Son nom";
    }

    @Override
    public String slipPlanned(String size) {
        return "prévu " + size;
    }

    @Override
    public String slipPrint() {
        return "L’imprimer";
    }

    @Override
    public String slipSewn() {
        return "Il est cousu";
    }

    @Override
    public String slipStraight() {
        return "D’un coin à l’autre, c’est pareil dans les deux sens.";
    }

    @Override
    public String slipTie() {
        return "Comment le nouer";
    }

    @Override
    public String slipUnread(String field, String why) {
        return (field.equals("width") ? "La largeur" : field.equals("height") ? "La hauteur" : field.equals("corner") ? "D’un coin à l’autre" : "L’autre diagonale") + " : " + why;
    }

    @Override
    public String slipWidth() {
        return "Largeur";
    }

    @Override
    public String slipWord() {
        return "Un mot pour vous";
    }

    @Override
    public String slipWrapped() {
        return "Il a emballé";
    }

    @Override
    public String title() {
        return "Il est cousu, et il tient.";
    }
}
