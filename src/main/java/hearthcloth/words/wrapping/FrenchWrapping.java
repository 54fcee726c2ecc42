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
    public String tiedBackFace() {
        return "verso";
    }

    @Override
    public String tiedByPatch() {
        return "Pièce par pièce";
    }

    @Override
    public String tiedCanvas() {
        return "Le cadeau noué. Les flèches le tournent, plus et moins l’approchent ou l’éloignent, Début le montre d’un coin.";
    }

    @Override
    public String tiedDown() {
        return "Incliner vers l’arrière";
    }

    @Override
    public String tiedDrag() {
        return "Faites-le glisser du doigt ou de la souris, ou utilisez les flèches.";
    }

    @Override
    public String tiedExample(String unit) {
        return (unit.equals("in") ? "box 12 x 8 x 4 in" : "box 30 x 20 x 10 cm");
    }

    @Override
    public String tiedFace() {
        return "Face visible";
    }

    @Override
    public String tiedFarther() {
        return "Plus loin";
    }

    @Override
    public String tiedFolds() {
        return "Les plis sur papier, à découper et à plier en petit";
    }

    @Override
    public String tiedFromAbove() {
        return "D’en haut";
    }

    @Override
    public String tiedFromCorner() {
        return "D’un coin";
    }

    @Override
    public String tiedFromFront() {
        return "De face";
    }

    @Override
    public String tiedFront() {
        return "recto";
    }

    @Override
    public String tiedHow() {
        return "Comment il est noué";
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
    public String tiedLeft() {
        return "À gauche";
    }

    @Override
    public String tiedNear() {
        return "Dessiné tel que le tissu est posé. Près du nœud, sur une largeur de main, le vrai tissu se fronce, et les bouts tombent comme ils veulent.";
    }

    @Override
    public String tiedNearer() {
        return "Plus près";
    }

    @Override
    public String tiedNone() {
        return "Ce carré ne peut pas nouer ce cadeau.";
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
    public String tiedQuarter(String turns) {
        return (turns.equals("none") ? "comme dessiné" : turns.equals("one") ? "un quart" : turns.equals("two") ? "un demi" : "trois quarts");
    }

    @Override
    public String tiedQuarters() {
        return "Tourner le carré vers la gauche";
    }

    @Override
    public String tiedRight() {
        return "À droite";
    }

    @Override
    public String tiedRightExample() {
        return "0 ; −2 à gauche";
    }

    @Override
    public String tiedSay() {
        return "Écrivez ce qu’on emballe : box 30 x 20 x 10 cm (boîte), bottle 8 x 30 cm (bouteille), two bottles 8 x 30 cm (deux bouteilles), ball 20 cm (boule), books 22 x 15 x 3 cm (deux livres), roll 5 x 40 cm (rouleau).";
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
    public String tiedTie() {
        return "Nœud";
    }

    @Override
    public String tiedTurn() {
        return "Tourner le cadeau";
    }

    @Override
    public String tiedTurned(String way) {
        return (way.equals("left") ? "tourné à gauche" : way.equals("right") ? "tourné à droite" : way.equals("up") ? "incliné vers vous" : "incliné vers l’arrière");
    }

    @Override
    public String tiedTurning() {
        return "Le cadeau, à tourner";
    }

    @Override
    public String tiedUp() {
        return "Incliner vers vous";
    }

    @Override
    public String tiedWhat() {
        return "Ce qu’on emballe";
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
