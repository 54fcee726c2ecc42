package hearthcloth.words.keeping;

/** The room of keeping in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + " ; chez " + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + " ; a emballé : " + what;
    }

    @Override
    public String aboutMade(String day) {
        return "Fait : " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "Chez " + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "A emballé : " + what;
    }

    @Override
    public String archiveAdd() {
        return "Garder ce qui est là et ajouter l’archive";
    }

    @Override
    public String archiveBring() {
        return "Apporter";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return (pieces == 0 || pieces == 1 ? "" + pieces + " morceau" : "" + pieces + " morceaux") + " et " + (cloths == 0 || cloths == 1 ? "" + cloths + " carré" : "" + cloths + " carrés") + " repris. L’annulation de la réserve les ressort.";
    }

    @Override
    public String archiveHow() {
        return "Le travail déjà là";
    }

    @Override
    public String archiveIn() {
        return "Une archive à apporter";
    }

    @Override
    public String archiveInstead() {
        return "Remplacer ce qui est là : la réserve, et les carrés que l’archive a aussi";
    }

    @Override
    public String archiveOut() {
        return "Tout sortir";
    }

    @Override
    public String archiveTitle() {
        return "Tout dans un fichier";
    }

    @Override
    public String archiveWhat() {
        return "Réserve, images des tissus et carrés, dans un fichier zip. Gardez-en une copie en lieu sûr, ou emportez-le sur une autre machine.";
    }

    @Override
    public String beside() {
        return "Côte à côte";
    }

    @Override
    public String cardLacking() {
        return "Vous n’avez pas assez de tissu pour lui.";
    }

    @Override
    public String cardMore() {
        return "Guide, fichiers, nom";
    }

    @Override
    public String cardPhotograph() {
        return "Le photographier";
    }

    @Override
    public String cardSlip() {
        return "Sa fiche";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + ", " + used;
    }

    @Override
    public String classes() {
        return "Un cours";
    }

    @Override
    public String compareBack() {
        return "Retour à vos carrés";
    }

    @Override
    public String compareFew() {
        return "Choisissez deux carrés ou plus pour les voir côte à côte.";
    }

    @Override
    public String copy() {
        return "Nouveau dessin à partir de lui";
    }

    @Override
    public String find() {
        return "Chercher un carré";
    }

    @Override
    public String findExample() {
        return "nom, tissu, cadeau ou personne";
    }

    @Override
    public String findGo() {
        return "Chercher";
    }

    @Override
    public String first() {
        return "Le premier ira ici.";
    }

    @Override
    public String found(String all, String found, String sought) {
        return found + " sur " + all + " pour « " + sought + " ».";
    }

    @Override
    public String ideaGo() {
        return "Idées, à donner et à prendre";
    }

    @Override
    public String ideaTitle() {
        return "Une idée dans un fichier";
    }

    @Override
    public String ideaWhat() {
        return "Transmettez un carré sous forme de règles qui donnent autre chose avec chaque réserve, ou prenez ce qu’on vous a envoyé.";
    }

    @Override
    public String kits() {
        return "Kits et cadeaux";
    }

    @Override
    public String labelRemoved(String name) {
        return name + " retiré";
    }

    @Override
    public String name() {
        return "Nom";
    }

    @Override
    public String open(String name) {
        return "Ouvrir " + name;
    }

    @Override
    public String redo(String deed) {
        return "Refaire : " + deed;
    }

    @Override
    public String remove() {
        return "Supprimer";
    }

    @Override
    public String removeSure(String name) {
        return "Supprimer " + name + " pour de bon ?";
    }

    @Override
    public String removed(String name) {
        return name + " est supprimé. Annuler le ramène.";
    }

    @Override
    public String rename() {
        return "Renommer";
    }

    @Override
    public String see() {
        return "Voir ce que permet votre réserve";
    }

    @Override
    public String showAll() {
        return "Tout montrer";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "dessiné" : stage.equals("CUT") ? "coupé" : stage.equals("RECUT") ? "coupé, sauf ce qui a été demandé depuis" : "cousu");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "Carré" : what.equals("cut") ? "Couper" : what.equals("sew") ? "Coudre" : what.equals("guideA4") ? "Guide, A4" : what.equals("guideLetter") ? "Guide, Letter" : what.equals("guide") ? "Guide" : what.equals("class") ? "Guide pour un cours" : what.equals("slips") ? "Étiquettes des pièces" : what.equals("front") ? "Image du recto" : what.equals("back") ? "Image du verso" : what.equals("plan") ? "Fichier du plan" : what.equals("kit") ? "Fichier du kit" : "Transmettre l’idée");
    }

    @Override
    public String tick() {
        return "Cochez-en deux ou plus.";
    }

    @Override
    public String title() {
        return "Ce que vous avez fait";
    }

    @Override
    public String undo(String deed) {
        return "Annuler : " + deed;
    }

    @Override
    public String useFor(String who) {
        return "pour " + who;
    }

    @Override
    public String used(int n) {
        return "utilisé " + n + " fois";
    }

    @Override
    public String usedLast(String last, int n) {
        return (n == 0 || n == 1 ? "utilisé " + n + " fois : " + last : "utilisé " + n + " fois, dernière : " + last);
    }
}
