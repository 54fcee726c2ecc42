package hearthcloth.words.wrapping;

/** The room of wrapping in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "ce qu’il emballe";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "Où est passé le tissu de chaque pièce, en pour cent de la pièce" : "Où est passé chaque tissu, en pour cent du tissu");
    }

    @Override
    public String showsEnds() {
        return "Nœud et bouts";
    }

    @Override
    public String showsFrom() {
        return "Vu de";
    }

    @Override
    public String showsHidden() {
        return "Replié";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "Pièce" : "Tissu");
    }

    @Override
    public String showsOf() {
        return "De ce qu’on voit";
    }

    @Override
    public String showsSides() {
        return "Côtés";
    }

    @Override
    public String showsTop() {
        return "Dessus";
    }

    @Override
    public String showsUnder() {
        return "Dessous";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "haut" : view.equals("FRONT") ? "face" : view.equals("BACK") ? "derrière" : view.equals("RIGHT") ? "droite" : view.equals("LEFT") ? "gauche" : view.equals("CORNER") ? "coin" : view.equals("UNDERNEATH") ? "dessous" : "nulle part");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "Où est passée chaque pièce" : "Où est passé chaque tissu");
    }

    @Override
    public String tieCare() {
        return "Attention";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "convient" : "trop petit");
    }

    @Override
    public String tieKnot() {
        return "Le nœud : plat, pas de vache";
    }

    @Override
    public String tieLarge() {
        return "Quelle taille le carré doit avoir";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "Pour : " + suited + " ; ici " + gift + ", dessiné avec " + (own.equals("yes") ? "votre carré" : "un carré uni") + ". Chaque flèche finit là où le coin se trouve maintenant.";
    }

    @Override
    public String tieNone() {
        return "Ce nœud n’existe pas ici.";
    }

    @Override
    public String tieNothing() {
        return "rien de cette forme";
    }

    @Override
    public String tieShort() {
        return "Quand un coin n’atteint pas";
    }

    @Override
    public String tieSold() {
        return "Tailles vendues";
    }

    @Override
    public String tieSoldFor() {
        return "Vendu pour (usage courant)";
    }

    @Override
    public String tieSquare() {
        return "de côté, fini";
    }

    @Override
    public String tieSquareOf() {
        return "Côté";
    }

    @Override
    public String tieThisGift() {
        return "Ce cadeau";
    }

    @Override
    public String tieTitle(String tie) {
        return tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return tie + ", " + trade;
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return "« " + tie + " » convient pour : " + suited + ". Choisissez un autre nœud pour " + gift + ".";
    }

    @Override
    public String tieUpTo() {
        return "Ce nœud, un cadeau de cette forme jusqu’à";
    }

    @Override
    public String tiedAwayExample() {
        return "0 ; −2 plus près";
    }

    @Override
    public String tiedBack() {
        return "Retour au carré";
    }

    @Override
    public String tiedByPatch() {
        return "Pièce par pièce";
    }

    @Override
    public String tiedFolds() {
        return "Les plis sur papier, à découper et à plier en petit";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "Comment nouer : " + tie;
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return cloth + " est maintenant pour " + gift + ".";
    }

    @Override
    public String tiedKeep() {
        return "Ce carré est pour cela";
    }

    @Override
    public String tiedLacks() {
        return "Il n’y a pas encore assez de tissu pour ce carré : rien à nouer.";
    }

    @Override
    public String tiedNear() {
        return "Dessiné tel que le tissu est posé. Près du nœud, sur une largeur de main, le vrai tissu se fronce, et les bouts tombent comme ils veulent.";
    }

    @Override
    public String tiedNone() {
        return "Ce carré ne peut pas nouer ce cadeau.";
    }

    @Override
    public String tiedOff() {
        return "Le cadeau hors du milieu";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "Décalé vers le fond, " + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "Décalé vers la droite, " + unit;
    }

    @Override
    public String tiedRightExample() {
        return "0 ; −2 à gauche";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + " %";
    }

    @Override
    public String tiedShow() {
        return "Montrer";
    }

    @Override
    public String tiedShows() {
        return "Ce qu’on voit";
    }

    @Override
    public String tiedSides() {
        return "Regarder";
    }

    @Override
    public String title(String cloth) {
        return cloth + ", noué";
    }

    @Override
    public String which() {
        return "Quel carré allez-vous nouer ?";
    }
}
