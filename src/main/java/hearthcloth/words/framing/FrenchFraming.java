package hearthcloth.words.framing;

/** The room of framing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return (n == 0 || n == 1 ? "" + n + " coupe est faite" : "" + n + " coupes sont faites");
    }

    @Override
    public String begunGoCutting() {
        return "Continuer à couper";
    }

    @Override
    public String begunGoOn() {
        return "Continuer";
    }

    @Override
    public String begunGoSewing() {
        return "Continuer à coudre";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "Continuer à coudre : " + next;
    }

    @Override
    public String begunLacks() {
        return "il manque du tissu";
    }

    @Override
    public String begunLook() {
        return "Voir";
    }

    @Override
    public String begunPlanned() {
        return "prévu";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "prévu pour " + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return sewn + " coutures sur " + seams + " sont faites ; il reste d’abord à couper";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return sewn + " coutures sur " + seams + " sont faites";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return sewn + " coutures sur " + seams + " sont faites, pour " + gift;
    }

    @Override
    public String drawerMeasures() {
        return "Règle, papier et langue";
    }

    @Override
    public String drawerTitle() {
        return "Le tiroir";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "Nom" : field.equals("width") ? "Largeur" : field.equals("length") ? "Longueur" : field.equals("fabric") ? "Tissu" : field.equals("washed") ? "Lavé" : field.equals("at") ? "Couper à" : field.equals("many") ? "Combien" : field.equals("colour") ? "Couleur" : field.equals("faces") ? "Faces" : field.equals("nap") ? "Sens du poil" : field.equals("made") ? "Fait le" : field.equals("wrapped") ? "Emballé" : "Qui l’a");
    }

    @Override
    public String firstAgain() {
        return "Revoir";
    }

    @Override
    public String firstExample() {
        return "Un exemple";
    }

    @Override
    public String firstFilm() {
        return "Exemple : neuf chutes d’un panier deviennent un carré de douze bandes, noué autour d’une boîte";
    }

    @Override
    public String firstFour() {
        return "et voilà l’emballage. Il reste un carré de tissu.";
    }

    @Override
    public String firstKinds() {
        return "Que va-t-il envelopper ?";
    }

    @Override
    public String firstOne() {
        return "Neuf chutes sorties d’un panier";
    }

    @Override
    public String firstPrivate() {
        return "Tout reste sur cette machine. Rien n’est demandé à internet.";
    }

    @Override
    public String firstStop() {
        return "Arrêter";
    }

    @Override
    public String firstThree() {
        return "Douze bandes, l’une après l’autre,";
    }

    @Override
    public String firstTwo() {
        return "et une boîte à offrir.";
    }

    @Override
    public String frameBesides() {
        return "À côté";
    }

    @Override
    public String frameCopies() {
        return "Copies de sécurité";
    }

    @Override
    public String frameExample() {
        return "Exemple";
    }

    @Override
    public String frameExampleAway() {
        return "Ranger l’exemple";
    }

    @Override
    public String frameExampleIs() {
        return "Ceci est un exemple pour essayer.";
    }

    @Override
    public String frameExampleNotYours() {
        return "Rien n’y est à vous.";
    }

    @Override
    public String frameGuidelines() {
        return "Consignes";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth, la table";
    }

    @Override
    public String frameLeave() {
        return "Sortir";
    }

    @Override
    public String framePeople() {
        return "Personnes";
    }

    @Override
    public String frameSkip() {
        return "Aller à la page";
    }

    @Override
    public String frameStages() {
        return "Étapes";
    }

    @Override
    public String frameStudio() {
        return "Atelier";
    }

    @Override
    public String giftCloth(String size) {
        return "un carré de " + size;
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "Boîte" : shape.equals("BOTTLE") ? "Bouteille" : shape.equals("TWO_BOTTLES") ? "Deux bouteilles" : shape.equals("ROUND") ? "Boule" : shape.equals("BOOKS") ? "Deux livres" : "Rouleau");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "longueur" : measure.equals("wide") ? "largeur" : measure.equals("high") ? "hauteur" : measure.equals("across") ? "diamètre" : "épaisseur");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return "Vos coutures prennent " + eats + " en moyenne (médiane de " + n + ") ; la moitié était à moins de " + spread + " de là. La couture habituelle prend " + usual + ".";
    }

    @Override
    public String handFrom() {
        return "D’où cela vient";
    }

    @Override
    public String handIsOwn() {
        return "Les nouveaux carrés sont prévus avec votre couture.";
    }

    @Override
    public String handIsUsual() {
        return "Les nouveaux carrés sont prévus avec la couture habituelle.";
    }

    @Override
    public String handOwn() {
        return "Prévoir les nouveaux carrés avec cette couture";
    }

    @Override
    public String handTitle() {
        return "Votre main";
    }

    @Override
    public String handUnknown(String n) {
        return "Dès que " + n + " coutures auront été mesurées à la page Coudre, ceci dira ce que vos coutures prennent vraiment.";
    }

    @Override
    public String handUsual() {
        return "Revenir à la couture habituelle";
    }

    @Override
    public String homeAll(String n) {
        return "Tous (" + n + ")";
    }

    @Override
    public String homeEmpty() {
        return "Votre table est vide. Qu’y a-t-il dans votre panier ?";
    }

    @Override
    public String homeFirst() {
        return "Le premier ira ici";
    }

    @Override
    public String homeMade() {
        return "Faits";
    }

    @Override
    public String homeMaking() {
        return "En cours";
    }

    @Override
    public String homeNothing() {
        return "Rien encore. Dites ce qu’il enveloppera, et voyez ce que permet votre réserve.";
    }

    @Override
    public String homeOnTable() {
        return "Sur la table";
    }

    @Override
    public String homePhotograph() {
        return "Le photographier";
    }

    @Override
    public String homePieces(int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau sur la table" : "" + n + " morceaux sur la table");
    }

    @Override
    public String homeTitle() {
        return "Que va-t-il envelopper ?";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Entrée" : key.equals("space") ? "Espace" : key.equals("pageDown") ? "Page suiv." : key.equals("pageUp") ? "Page préc." : "Échap");
    }

    @Override
    public String keysArrows() {
        return "d’un morceau à l’autre sur la table, d’une bande à l’autre sur le carré ; tourner le cadeau noué";
    }

    @Override
    public String keysEnter() {
        return "appuyer";
    }

    @Override
    public String keysEscape() {
        return "ferme ce qui est ouvert";
    }

    @Override
    public String keysNumbers() {
        return "les quatre vues d’un carré ; un carré de la galerie";
    }

    @Override
    public String keysPages() {
        return "Fait et Retour pour couper et coudre ; une pédale envoie ces touches";
    }

    @Override
    public String keysPlusMinus() {
        return "plus près et plus loin, sur la table et autour du cadeau noué";
    }

    @Override
    public String keysSingle() {
        return "Les touches d’une seule lettre ou d’un seul signe marchent sur cet appareil";
    }

    @Override
    public String keysSpace() {
        return "choisit un morceau ou une bande ; pour couper et coudre : Fait";
    }

    @Override
    public String keysTab() {
        return "passer d’une chose à la suivante";
    }

    @Override
    public String keysTitle() {
        return "Touches";
    }

    @Override
    public String keysU() {
        return "annule ce qui a été fait en dernier";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "pouces, à ⅛ près";
    }

    @Override
    public String measureKeep() {
        return "Enregistrer";
    }

    @Override
    public String measureLanguage() {
        return "Votre langue";
    }

    @Override
    public String measureLetter() {
        return "Letter";
    }

    @Override
    public String measureMillimetres() {
        return "centimètres, à 1 mm près";
    }

    @Override
    public String measurePaper() {
        return "Le papier de votre imprimante";
    }

    @Override
    public String measureQuarters() {
        return "pouces, à ¼ près";
    }

    @Override
    public String measureRuler() {
        return "La règle que vous avez en main";
    }

    @Override
    public String measureSixteenths() {
        return "pouces, à 1⁄16 près";
    }

    @Override
    public String safeArchive() {
        return "Tout dans un fichier";
    }

    @Override
    public String safeArchiveHow() {
        return "réserve, tissus et carrés, à garder ailleurs";
    }

    @Override
    public String safeClose() {
        return "Fermer l’atelier";
    }

    @Override
    public String safeCloseHow() {
        return "rien n’est perdu pour autant";
    }

    @Override
    public String safeCopies() {
        return "des copies entières de votre travail, faites chaque jour, où revenir";
    }

    @Override
    public String safeDevices() {
        return "Cette tablette, et un téléphone";
    }

    @Override
    public String safeDevicesHow() {
        return "utiliser l’atelier sur un autre écran aussi";
    }

    @Override
    public String safeTitle() {
        return "En sûreté, et à portée de main";
    }

    @Override
    public String scriptKeeping() {
        return "Enregistrement …";
    }

    @Override
    public String scriptKeepingMore() {
        return "Enregistrement ; %d autres attendent.";
    }

    @Override
    public String scriptKeepingOne() {
        return "Enregistrement ; un autre attend.";
    }

    @Override
    public String scriptSilent() {
        return "L’atelier ne répond pas. Relancez Hearthcloth ; rien de ce qui était gardé n’est perdu.";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "Cadeau" : stage.equals("Stash") ? "Réserve" : stage.equals("Cloth") ? "Carré" : stage.equals("Cut") ? "Couper" : stage.equals("Sew") ? "Coudre" : stage.equals("Tie") ? "Nouer" : stage.equals("Made") ? "Faits" : "Tiroir");
    }

    @Override
    public String staleCloth(String name) {
        return "Entre-temps, " + name + " a été changé dans une autre fenêtre. Rien n’a été changé ici.";
    }

    @Override
    public String staleTitle() {
        return "Changé dans deux fenêtres";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "La couleur du fil « " + line + " » n’est pas connue ; écrivez-la après, par exemple " + name + " #8a9a5b.";
    }

    @Override
    public String threadsKept(int n) {
        return (n == 0 || n == 1 ? "" + n + " fil est enregistré." : "" + n + " fils sont enregistrés.");
    }

    @Override
    public String threadsLines() {
        return "Un par ligne : son nom, et sa couleur si le nom ne la dit pas (vieux bleu #27344d)";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "Écrivez " + most + " fils au plus, de " + longest + " lettres au plus chacun.";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "Fil : " + all + " en tout, avec les bouts et 15 % de plus ; dont " + bobbin + " sur la canette.";
    }

    @Override
    public String threadsSave() {
        return "Enregistrer";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "Sur cette couture, " + least + " se voit le moins, " + most + " le plus.";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "Sur cette couture, " + least + " se voit le moins.";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "De vos fils, " + least + " se voit le moins sur ces tissus, " + most + " le plus.";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "De vos fils, " + least + " se voit le moins sur ces tissus.";
    }

    @Override
    public String threadsTitle() {
        return "Vos fils";
    }

    @Override
    public String threadsUsed() {
        return "La page Coudre dit lequel se voit le moins sur un carré, et lequel le plus.";
    }

    @Override
    public String troubleColour(String written) {
        return "« " + written + " » n’est pas une couleur connue ; écrivez par exemple vert sauge ou #8a9a5b, ou laissez vide.";
    }

    @Override
    public String troubleComeIn() {
        return "Entrez d’abord avec votre nom et votre phrase de passe.";
    }

    @Override
    public String troubleGone() {
        return "Chargez la page pour qu’il soit réécrit.";
    }

    @Override
    public String troubleInside() {
        return "Quelque chose n’a pas marché dans l’atelier. Rien n’a été changé ; réessayez.";
    }

    @Override
    public String troubleLarge(String most) {
        return "Ce fichier dépasse " + most + " Mo ; choisissez-en un plus petit.";
    }

    @Override
    public String troubleNoFile() {
        return "Aucun fichier n’est choisi, ou il est vide.";
    }

    @Override
    public String troubleNotWhole() {
        return "Le fichier n’est pas arrivé entier ; renvoyez-le.";
    }

    @Override
    public String troubleNothing() {
        return "Il n’y a rien à cette adresse.";
    }

    @Override
    public String troublePlain() {
        return "Cela n’a pas marché.";
    }

    @Override
    public String troubleTitle() {
        return "Cela n’a pas marché";
    }

    @Override
    public String troubleUnread() {
        return "L’envoi est illisible ; rechargez la page et renvoyez-le.";
    }

    @Override
    public String unitCentimetres() {
        return "Je mesure en centimètres";
    }

    @Override
    public String unitInches() {
        return "Je mesure en pouces";
    }

    @Override
    public String wayExample() {
        return "Essayer l’exemple";
    }

    @Override
    public String wayExampleHow() {
        return "Soixante chutes et un carré, qu’un clic suffit à ranger.";
    }

    @Override
    public String wayGift() {
        return "Commencer par le cadeau";
    }

    @Override
    public String wayGiftHow() {
        return "et voir quelle taille de carré il faut";
    }

    @Override
    public String wayPhotograph() {
        return "Les photographier";
    }

    @Override
    public String wayPhotographHow() {
        return "étalés à côté d’une feuille de papier";
    }

    @Override
    public String waySay() {
        return "Décrire un morceau";
    }

    @Override
    public String waySayHow() {
        return "« 12 imprimé vert 10 x 20 » ; plusieurs lignes à la fois aussi";
    }
}
