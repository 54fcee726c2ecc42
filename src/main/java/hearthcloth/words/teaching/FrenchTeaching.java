package hearthcloth.words.teaching;

/** The room of teaching in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchTeaching implements TeachingWords {

    @Override
    public String classBegin() {
        return "Commencer le cours";
    }

    @Override
    public String classCode() {
        return "Code";
    }

    @Override
    public String classCount(int inside) {
        return (inside == 0 ? "Personne n’est encore là." : inside == 0 || inside == 1 ? "" + inside + " élève est là." : "" + inside + " élèves sont là.");
    }

    @Override
    public String classEnd() {
        return "Finir le cours";
    }

    @Override
    public String classEndAsk() {
        return "Finir le cours ? Tous les élèves sortent, et ce qu’ils n’ont pas enregistré est perdu.";
    }

    @Override
    public String classEnded() {
        return "Le cours est fini. Tous les élèves sont sortis.";
    }

    @Override
    public String classFile() {
        return "Le fichier";
    }

    @Override
    public String classFromCloth() {
        return "Commencer avec l’idée d’un carré";
    }

    @Override
    public String classFromFile() {
        return "Commencer avec un fichier de consignes";
    }

    @Override
    public String classHidden() {
        return "ne montre encore rien";
    }

    @Override
    public String classIntro() {
        return "Les élèves entrent avec leur téléphone et écrivent leurs propres chutes. Chacun reçoit un carré selon votre idée. Le mur montre ce qu’ils veulent montrer.";
    }

    @Override
    public String classIsOut(String name) {
        return name + " est dehors.";
    }

    @Override
    public String classNoCloth() {
        return "Il n’y a pas encore de carré avec une pièce centrale et des bandes.";
    }

    @Override
    public String classNotShared() {
        return "Les élèves ne peuvent entrer que si l’atelier est ouvert au réseau. Fermez-le et lancez-le avec ./hearthcloth --lan, sur un réseau sûr.";
    }

    @Override
    public String classOut(String name) {
        return "Faire sortir " + name;
    }

    @Override
    public String classPoint() {
        return "Pointez l’appareil photo du téléphone vers l’image, ou ouvrez l’adresse et écrivez le code. Il laisse entrer tout le monde pendant le cours.";
    }

    @Override
    public String classQr() {
        return "Code QR de l’adresse avec le code";
    }

    @Override
    public String classSeams(String all, String sewn) {
        return sewn + " coutures sur " + all + " sont cousues";
    }

    @Override
    public String classTitle() {
        return "Un cours";
    }

    @Override
    public String classWall() {
        return "Le mur";
    }

    @Override
    public String comeCode() {
        return "Code sur l’écran du professeur";
    }

    @Override
    public String comeFull() {
        return "Le cours est complet.";
    }

    @Override
    public String comeIn() {
        return "Entrer";
    }

    @Override
    public String comeName() {
        return "Votre nom, tel que les autres le voient";
    }

    @Override
    public String comeNone() {
        return "Il n’y a pas de cours en ce moment. Demandez au professeur.";
    }

    @Override
    public String comeTitle() {
        return "Entrer dans le cours";
    }

    @Override
    public String comeWait() {
        return "Trop de codes faux. Attendez dix minutes.";
    }

    @Override
    public String comeWrong() {
        return "Ce code n’est pas juste. Regardez l’écran du professeur.";
    }

    @Override
    public String cutCut() {
        return "Coupe";
    }

    @Override
    public String cutFabric() {
        return "Tissu";
    }

    @Override
    public String cutList() {
        return "Liste de coupe";
    }

    @Override
    public String cutPatch() {
        return "Pièce";
    }

    @Override
    public String cutPiece() {
        return "Morceau";
    }

    @Override
    public String mineAgain() {
        return "Préparer de nouveau";
    }

    @Override
    public String mineAnother() {
        return "Montrer l’autre";
    }

    @Override
    public String mineCentimetres() {
        return "centimètres";
    }

    @Override
    public String mineFavourite() {
        return "Le tissu que vous préférez";
    }

    @Override
    public String mineGuide() {
        return "Guide à imprimer";
    }

    @Override
    public String mineHelp() {
        return "Une ligne pour chaque sorte : largeur par longueur, combien, ce que c’est. Largeur en travers, longueur le long de la lisière.";
    }

    @Override
    public String mineHide() {
        return "Le retirer du mur";
    }

    @Override
    public String mineInches() {
        return "pouces";
    }

    @Override
    public String mineKeep() {
        return "Rien n’est gardé à la fin du cours. Enregistrez ce que vous voulez emporter.";
    }

    @Override
    public String mineKeeps() {
        return "Il respecte toutes les règles de l’idée.";
    }

    @Override
    public String mineLeave() {
        return "Quitter le cours";
    }

    @Override
    public String mineLess() {
        return "Une couture de moins";
    }

    @Override
    public String mineLooking() {
        return "Votre carré est en préparation …";
    }

    @Override
    public String mineMore() {
        return "Une couture de plus";
    }

    @Override
    public String mineNearest() {
        return "Le plus proche que vos morceaux permettent.";
    }

    @Override
    public String mineNone() {
        return "Ces morceaux ne font pas encore de carré.";
    }

    @Override
    public String mineOnWall() {
        return "Le mur montre son image, sa taille et votre nom.";
    }

    @Override
    public String minePlan() {
        return "Préparer mon carré";
    }

    @Override
    public String minePlanFile() {
        return "Fichier du plan à garder";
    }

    @Override
    public String mineRuler() {
        return "Règle";
    }

    @Override
    public String mineRules() {
        return "Les règles de l’idée";
    }

    @Override
    public String mineSample() {
        return "10 x 20 cm, 12 morceaux, imprimé vert";
    }

    @Override
    public String mineScraps() {
        return "Vos morceaux";
    }

    @Override
    public String mineScrapsOnly() {
        return "Vos morceaux ne donnent pas de pièce centrale entourée de bandes. Les chutes sont assemblées telles quelles.";
    }

    @Override
    public String mineShow() {
        return "Le montrer au mur";
    }

    @Override
    public String mineWhy() {
        return "Pourquoi";
    }
}
