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
        return (inside == 0 ? "Personne n’est encore là." : inside == 1 ? "" + inside + " élève est là." : "" + inside + " élèves sont là.");
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
    public String classWith() {
        return "Commencer un cours avec elle";
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
    public String ideaBack() {
        return "Verso";
    }

    @Override
    public String ideaBy(String name) {
        return "Une idée de " + name;
    }

    @Override
    public String ideaCare(String words) {
        return "Attention : " + words;
    }

    @Override
    public String ideaEmpty() {
        return "Il n’y a rien à montrer.";
    }

    @Override
    public String ideaExample(String size) {
        return "Le recto d’un exemple, " + size + " ; ses tissus sont inventés.";
    }

    @Override
    public String ideaExampleBack() {
        return "Son verso.";
    }

    @Override
    public String ideaFirst() {
        return "Un premier carré ; recherche d’un meilleur …";
    }

    @Override
    public String ideaFoot() {
        return "Cette page ne demande rien à aucun réseau et ne garde rien. Tout se prépare sur votre appareil. Fait avec Hearthcloth.";
    }

    @Override
    public String ideaFront() {
        return "Recto";
    }

    @Override
    public String ideaGuide() {
        return "Le guide entier, page par page";
    }

    @Override
    public String ideaHeapHelp() {
        return "Largeur en travers, longueur le long de la lisière. Ces lignes sont un exemple ; écrivez les vôtres par-dessus.";
    }

    @Override
    public String ideaKeep() {
        return "Enregistrer son plan";
    }

    @Override
    public String ideaLabel() {
        return "L’idée";
    }

    @Override
    public String ideaLanguage() {
        return "Langue";
    }

    @Override
    public String ideaMade() {
        return "Comment il se fait";
    }

    @Override
    public String ideaMadeMore() {
        return "Couture, ourlet, nouage, lavage, et où faire attention";
    }

    @Override
    public String ideaNoCloth(String all, String name) {
        return "Aucun fichier et aucun carré à vous ne s’appelle « " + name + " » ; il y a " + all + ".";
    }

    @Override
    public String ideaNoneKept(String name) {
        return "Aucun fichier et aucun carré à vous ne s’appelle « " + name + " » ; aucun avec pièce centrale et bandes n’est gardé.";
    }

    @Override
    public String ideaOld() {
        return "Ce navigateur ne peut pas préparer de carré ; ouvrez la page dans un plus récent (2023 ou après).";
    }

    @Override
    public String ideaOne() {
        return "Voici votre carré.";
    }

    @Override
    public String ideaOwn() {
        return "Le vôtre, avec vos chutes";
    }

    @Override
    public String ideaPieces() {
        return "Que couper dans quel morceau";
    }

    @Override
    public String ideaPrint() {
        return "Imprimer ce carré";
    }

    @Override
    public String ideaSave() {
        return "Enregistrer les consignes dans un fichier";
    }

    @Override
    public String ideaStop() {
        return "Arrêter";
    }

    @Override
    public String ideaStopped() {
        return "Arrêté.";
    }

    @Override
    public String ideaSuchAs(String fabric) {
        return "par exemple " + fabric;
    }

    @Override
    public String ideaTied() {
        return "Noué.";
    }

    @Override
    public String ideaTrouble() {
        return "La préparation s’est arrêtée. Vos lignes sont encore là ; réessayez avec moins de morceaux.";
    }

    @Override
    public String ideaTwo() {
        return "Voici votre carré, et un autre.";
    }

    @Override
    public String ideaTying() {
        return "Comment il se noue";
    }

    @Override
    public String kitCame() {
        return "Le kit est là : ses morceaux sont dans votre réserve, et le carré est préparé avec eux.";
    }

    @Override
    public String kitHelp() {
        return "Un fichier de kit apporte ses propres morceaux.";
    }

    @Override
    public String kitRefused() {
        return "Ce kit ne peut pas servir : il vient d’un Hearthcloth plus récent, il est abîmé ou a été changé à la main. Redemandez-le ; rien n’a été repris.";
    }

    @Override
    public String kitsAnew() {
        return "Ils ne sont plus là ; préparez-les de nouveau.";
    }

    @Override
    public String kitsAsked(String asked) {
        return "Demandé : " + asked;
    }

    @Override
    public String kitsCount() {
        return "Combien d’élèves";
    }

    @Override
    public String kitsCountFault(String given, String most) {
        return "« " + given + " » ne peut pas être un nombre d’élèves ; écrivez un nombre de 1 à " + most + ".";
    }

    @Override
    public String kitsEmpty() {
        return "Votre réserve n’a aucun morceau libre. Rangez-y d’abord quelque chose.";
    }

    @Override
    public String kitsFair(String least, String most) {
        return "Le plus de raccords dans un carré : " + most + ". Aucun partage de ce tas n’en a moins de " + least + ".";
    }

    @Override
    public String kitsFile() {
        return "Fichier du kit";
    }

    @Override
    public String kitsForget() {
        return "Ranger ce plan";
    }

    @Override
    public String kitsGoing(String all, String tried) {
        return "Recherche d’un partage plus juste : " + tried + " sur " + all + ".";
    }

    @Override
    public String kitsGuide() {
        return "Guide pour un cours";
    }

    @Override
    public String kitsHeap(int count) {
        return (count == 0 || count == 1 ? "" + count + " morceau de votre réserve est libre." : "" + count + " morceaux de votre réserve sont libres.");
    }

    @Override
    public String kitsInTurn(String joins, String lacking) {
        return "L’un après l’autre, le moins bien servi en aurait " + joins + ", et " + lacking + " n’auraient rien.";
    }

    @Override
    public String kitsIntro() {
        return "Préparer beaucoup de carrés ensemble à partir d’un tas : rien n’est promis deux fois, et le moins bien servi l’est aussi bien que possible.";
    }

    @Override
    public String kitsJoins(int count) {
        return (count == 0 ? "aucun raccord" : count == 1 ? "" + count + " raccord" : "" + count + " raccords");
    }

    @Override
    public String kitsKeep() {
        return "Garder ces carrés";
    }

    @Override
    public String kitsKeepHelp() {
        return "Ils vont dans Faits, et leurs morceaux leur sont promis dans votre réserve.";
    }

    @Override
    public String kitsKept(int count) {
        return (count == 0 || count == 1 ? "" + count + " carré est gardé." : "" + count + " carrés sont gardés.") + " Leurs morceaux leur sont promis.";
    }

    @Override
    public String kitsLines() {
        return "Un carré par ligne";
    }

    @Override
    public String kitsLinesHelp() {
        return "Un nom, puis une taille ou un cadeau. Ou collez une liste dont la première ligne nomme les colonnes : name, size, gift, tie, fabrics.";
    }

    @Override
    public String kitsList() {
        return "Une saison : un carré par ligne";
    }

    @Override
    public String kitsMove() {
        return "Donner un morceau à un autre carré";
    }

    @Override
    public String kitsMoveIt() {
        return "Le donner, les autres s’arrangent";
    }

    @Override
    public String kitsMoved(String name, String piece) {
        return "Le morceau " + piece + " est maintenant dans le carré de " + name + ". Les autres se sont arrangés.";
    }

    @Override
    public String kitsNearest() {
        return "C’est le plus proche qui a pu se faire.";
    }

    @Override
    public String kitsNotMoved(String name, String piece) {
        return "Aucun carré avec le morceau " + piece + " n’a été trouvé pour " + name + ". Rien n’a changé.";
    }

    @Override
    public String kitsNothing() {
        return "Rien n’a pu se faire.";
    }

    @Override
    public String kitsPiece() {
        return "Morceau";
    }

    @Override
    public String kitsPlan() {
        return "Préparer le cours";
    }

    @Override
    public String kitsPlanGifts() {
        return "Préparer les cadeaux";
    }

    @Override
    public String kitsPrint() {
        return "Étiquettes, liste d’achats et feuille du professeur";
    }

    @Override
    public String kitsSample() {
        return "Anna, 40 cm\nGrand-mère, box 30 x 20 x 8 cm";
    }

    @Override
    public String kitsSize() {
        return "Taille finie";
    }

    @Override
    public String kitsStop() {
        return "Arrêter et prendre le meilleur";
    }

    @Override
    public String kitsStudents() {
        return "Un cours : tant de carrés semblables";
    }

    @Override
    public String kitsTheList() {
        return "La liste";
    }

    @Override
    public String kitsTitle() {
        return "Kits et cadeaux";
    }

    @Override
    public String kitsTo() {
        return "À";
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
