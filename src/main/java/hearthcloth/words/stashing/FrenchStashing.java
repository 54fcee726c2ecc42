package hearthcloth.words.stashing;

/** The room of stashing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchStashing implements StashingWords {

    @Override
    public String added(String first, String last, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau ajouté, numéro " + first + "." : "" + n + " morceaux ajoutés, numéros " + first + " à " + last + ".");
    }

    @Override
    public String addedKnown(String fabric) {
        return fabric + " était déjà là ; sa couleur, ses faces et son poil restent comme ici.";
    }

    @Override
    public String and(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String area(String number, String unit) {
        return (unit.equals("m") ? "" + number + " m²" : "" + number + " vg²");
    }

    @Override
    public String asideBack() {
        return "Remettre";
    }

    @Override
    public String asideNote() {
        return "Ce qui est mis de côté reste dans la réserve, mais n’entre dans aucun plan.";
    }

    @Override
    public String asideSet() {
        return "Mettre de côté";
    }

    @Override
    public String asideTitle() {
        return "Pour autre chose";
    }

    @Override
    public String backStash() {
        return "Retour à la réserve";
    }

    @Override
    public String backTable() {
        return "Retour à la table";
    }

    @Override
    public String chosen() {
        return "Ce qui est choisi";
    }

    @Override
    public String chosenBack() {
        return "Remettre";
    }

    @Override
    public String chosenFirst() {
        return "Utiliser d’abord";
    }

    @Override
    public String chosenFreeAlready() {
        return "Ils sont déjà libres.";
    }

    @Override
    public String chosenKeep() {
        return "Garder pour plus tard";
    }

    @Override
    public String chosenKeptAlready() {
        return "Ils sont déjà gardés.";
    }

    @Override
    public String chosenMany() {
        return "%d choisis";
    }

    @Override
    public String chosenMore() {
        return "En dire plus";
    }

    @Override
    public String chosenNone() {
        return "Aucun";
    }

    @Override
    public String chosenNothing() {
        return "Choisissez d’abord des morceaux sur la table.";
    }

    @Override
    public String chosenUsed() {
        return "Épuisé";
    }

    @Override
    public String colour(String hue, String tone) {
        return (tone.equals("dark") ? "" + hue + " foncé" : tone.equals("light") ? "" + hue + " clair" : tone.equals("pale") ? "" + hue + " pâle" : tone.equals("bright") ? "" + hue + " vif" : tone.equals("greyish") ? "" + hue + " grisâtre" : "" + hue);
    }

    @Override
    public String colourUnknown() {
        return "couleur pas encore connue";
    }

    @Override
    public String deedAdd(String what) {
        return "ajouter " + what;
    }

    @Override
    public String deedAddFile(String what) {
        return "ajouter " + what + " d’un fichier";
    }

    @Override
    public String deedAside(String what) {
        return "mettre de côté " + what;
    }

    @Override
    public String deedBack(String what) {
        return "remettre " + what;
    }

    @Override
    public String deedChange(String what) {
        return "modifier " + what;
    }

    @Override
    public String deedDelete(String what) {
        return "supprimer " + what;
    }

    @Override
    public String deedFabric(String fabric) {
        return "modifier le tissu " + fabric;
    }

    @Override
    public String deedSplit(String what) {
        return "couper en deux " + what;
    }

    @Override
    public String deedUse(String what) {
        return "épuiser " + what;
    }

    @Override
    public String done(String deed) {
        return "Fait : " + deed + ".";
    }

    @Override
    public String fabricAbout(String colour, String faces, String nap) {
        return colour + ", " + (faces.equals("RIGHT") ? "avec un endroit" : "pareil des deux côtés") + (nap.equals("LENGTHWISE") ? ", poil en longueur" : "");
    }

    @Override
    public String fabricAboutWrong(String colour, String faces, String nap, String wrong) {
        return colour + ", " + (faces.equals("RIGHT") ? "avec un endroit" : "pareil des deux côtés") + ", envers " + wrong + (nap.equals("LENGTHWISE") ? ", poil en longueur" : "");
    }

    @Override
    public String fabricAcross() {
        return "Tissu le long du petit côté";
    }

    @Override
    public String fabricAll() {
        return "Pour tous ses morceaux";
    }

    @Override
    public String fabricAsideAll() {
        return "Tout mettre de côté";
    }

    @Override
    public String fabricAsideSome(String aside, String pieces) {
        return aside + " sur " + pieces + " mis de côté.";
    }

    @Override
    public String fabricAway() {
        return "Enlever l’image";
    }

    @Override
    public String fabricAwaySure() {
        return "Enlever l’image ? Il faudrait la renvoyer.";
    }

    @Override
    public String fabricBackAll() {
        return "Tout remettre";
    }

    @Override
    public String fabricChanged(String pieces) {
        return "Modifié pour " + pieces + ".";
    }

    @Override
    public String fabricFile() {
        return "Image, PNG ou JPEG";
    }

    @Override
    public String fabricHow() {
        return "Posez le tissu à plat, à la lumière du jour. Le milieu de l’image est répété partout où ce tissu est dessiné ici.";
    }

    @Override
    public String fabricIsAside() {
        return "Mis de côté : aucun carré n’est prévu avec.";
    }

    @Override
    public String fabricIsBack() {
        return "Remis : il sert de nouveau aux plans.";
    }

    @Override
    public String fabricMerge() {
        return "Donnez-lui le nom d’un autre tissu et les deux n’en font qu’un. Cela s’annule sur la page de la réserve.";
    }

    @Override
    public String fabricNoPicture() {
        return "Il n’y a pas d’image de ce tissu.";
    }

    @Override
    public String fabricNone() {
        return "Il n’y a plus de tissu de ce nom dans la réserve.";
    }

    @Override
    public String fabricOwn() {
        return "Votre propre image";
    }

    @Override
    public String fabricPicture(String about) {
        return about + ". L’image en montre 20 cm, environ 8 po.";
    }

    @Override
    public String fabricSavePicture() {
        return "Enregistrer l’image";
    }

    @Override
    public String fabricTiled() {
        return "Votre image est enregistrée et répétée à l’échelle.";
    }

    @Override
    public String fabricUntiled() {
        return "L’image est enlevée ; la couleur se montre de nouveau.";
    }

    @Override
    public String fabricWrongAcross() {
        return "Une image montre entre 1 cm et 3 m de tissu ; mesurez du bord gauche au bord droit.";
    }

    @Override
    public String fieldColour() {
        return "Couleur";
    }

    @Override
    public String fieldColourBlank() {
        return "Couleur (facultatif)";
    }

    @Override
    public String fieldFabric() {
        return "Tissu";
    }

    @Override
    public String fieldFaces() {
        return "Faces";
    }

    @Override
    public String fieldFacesAre(String faces) {
        return (faces.equals("same") ? "pareil des deux côtés" : "a un endroit");
    }

    @Override
    public String fieldHowMany() {
        return "Combien";
    }

    @Override
    public String fieldHowManyOf(String n) {
        return "Combien des " + n;
    }

    @Override
    public String fieldLength() {
        return "Le long de la lisière";
    }

    @Override
    public String fieldLengthIn(String unit) {
        return "Le long de la lisière, " + unit;
    }

    @Override
    public String fieldName() {
        return "Nom";
    }

    @Override
    public String fieldNap() {
        return "Sens du poil";
    }

    @Override
    public String fieldNapIs(String nap) {
        return (nap.equals("any") ? "aucun, dans tous les sens" : "en longueur");
    }

    @Override
    public String fieldWashed() {
        return "Lavé";
    }

    @Override
    public String fieldWashedIs(String washed) {
        return (washed.equals("UNKNOWN") ? "pas sûr" : washed.equals("YES") ? "lavé" : "non lavé");
    }

    @Override
    public String fieldWidth() {
        return "Largeur";
    }

    @Override
    public String fieldWidthIn(String unit) {
        return "Largeur, " + unit;
    }

    @Override
    public String fieldWrong() {
        return "Envers";
    }

    @Override
    public String fieldWrongOwn() {
        return "L’envers a cette couleur";
    }

    @Override
    public String fileColumns() {
        return "Les colonnes qui ne parlent pas de tissu ont été laissées.";
    }

    @Override
    public String fileEncoding() {
        return "Ce fichier n’est pas du texte en UTF-8 ; enregistrez-le depuis le tableur en CSV (UTF-8).";
    }

    @Override
    public String fileRefused() {
        return "Le fichier n’a pas été pris ; rien n’a été changé.";
    }

    @Override
    public String goCloth() {
        return "Que peut donner ma réserve ?";
    }

    @Override
    public String goGift() {
        return "Que va-t-il envelopper ?";
    }

    @Override
    public String goneDelete() {
        return "Supprimer (saisi par erreur)";
    }

    @Override
    public String goneNoPiece() {
        return "Ce morceau n’existe plus ; il a été épuisé ou enlevé.";
    }

    @Override
    public String goneTitle() {
        return "N’y est plus";
    }

    @Override
    public String goneUndo() {
        return "L’un et l’autre s’annulent sur la page de la réserve.";
    }

    @Override
    public String groupNote(String faces, String nap, String pieces) {
        return pieces + (faces.equals("RIGHT") ? " · R" : "") + (nap.equals("LENGTHWISE") ? " · poil" : "");
    }

    @Override
    public String heardAbout(String about, String length, String width) {
        return about + " ; " + width + " de large, " + length + " le long de la lisière";
    }

    @Override
    public String heardFabrics(int fabrics, String pieces) {
        return (fabrics == 0 || fabrics == 1 ? "" + pieces + ", " + fabrics + " tissu" : "" + pieces + ", " + fabrics + " tissus");
    }

    @Override
    public String heardKnown(String about, String fabric) {
        return fabric + " est déjà dans votre réserve et y reste tel quel : " + about + ".";
    }

    @Override
    public String heardUnclear(String first, int n) {
        return (n == 0 || n == 1 ? "Une ligne n’est pas claire. " + first : "" + n + " lignes ne sont pas claires ; la première : " + first);
    }

    @Override
    public String heardWhat(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String heldAside(int n) {
        return (n == 0 ? "mis de côté" : "" + n + " mis de côté");
    }

    @Override
    public String heldFor(String cloth, int n) {
        return (n == 0 ? "pour " + cloth : "" + n + " pour " + cloth);
    }

    @Override
    public String heldMore(String before, String next) {
        return before + " ; " + next;
    }

    @Override
    public String hue(String hue) {
        return (hue.equals("white") ? "blanc" : hue.equals("grey") ? "gris" : hue.equals("black") ? "noir" : hue.equals("pink") ? "rose" : hue.equals("wine_red") ? "bordeaux" : hue.equals("orange") ? "orange" : hue.equals("brown") ? "brun" : hue.equals("red") ? "rouge" : hue.equals("cream") ? "crème" : hue.equals("beige") ? "beige" : hue.equals("yellow") ? "jaune" : hue.equals("olive_green") ? "vert olive" : hue.equals("green") ? "vert" : hue.equals("yellow_green") ? "vert-jaune" : hue.equals("teal") ? "bleu canard" : hue.equals("turquoise") ? "turquoise" : hue.equals("blue") ? "bleu" : "violet");
    }

    @Override
    public String lineAdd() {
        return "Ajouter";
    }

    @Override
    public String lineAsks() {
        return "Combien, quoi, quelle taille ; plusieurs lignes à la fois aussi.";
    }

    @Override
    public String lineExample(String unit) {
        return (unit.equals("metric") ? "12 imprimé vert 10 x 20" : "12 imprimé vert 4 x 8");
    }

    @Override
    public String lineListening() {
        return "À l’écoute ; touchez pour arrêter";
    }

    @Override
    public String lineMany(String lines, String most) {
        return "Il y a " + lines + " lignes ; " + most + " à la fois au plus. Un fichier CSV en prend davantage.";
    }

    @Override
    public String lineMend() {
        return "Ceci est à corriger d’abord.";
    }

    @Override
    public String linePhotograph() {
        return "Les photographier";
    }

    @Override
    public String lineSay() {
        return "Décrire un morceau";
    }

    @Override
    public String lineSpeak() {
        return "Dicter";
    }

    @Override
    public String lineStill() {
        return "Ces lignes sont encore dans la case ci-dessous.";
    }

    @Override
    public String lineUnclear(String line, String why) {
        return "« " + line + " » : " + why + ".";
    }

    @Override
    public String lot(String fabric, int n, String numbers, String size) {
        return (n == 0 || n == 1 ? "" + fabric + ", " + size + ", numéro " + numbers : "" + n + ", " + fabric + ", " + size + ", numéros " + numbers);
    }

    @Override
    public String lotWashed(String fabric, int n, String numbers, String size, String washed) {
        return (n == 0 || n == 1 ? "" + fabric + ", " + size + ", " + washed + ", numéro " + numbers : "" + n + ", " + fabric + ", " + size + ", " + washed + ", numéros " + numbers);
    }

    @Override
    public String markClaimed() {
        return "retenu pour un carré";
    }

    @Override
    public String markGreys() {
        return "du foncé au clair";
    }

    @Override
    public String markKept() {
        return "gardé pour plus tard";
    }

    @Override
    public String markNap() {
        return "poil vers le haut";
    }

    @Override
    public String markRight() {
        return "a un endroit";
    }

    @Override
    public String moreAll() {
        return "Toute la réserve";
    }

    @Override
    public String moreByFabric() {
        return "Par tissu";
    }

    @Override
    public String moreFiles() {
        return "Dans des champs, et en fichier";
    }

    @Override
    public String moreFill() {
        return "Remplir des champs, ou apporter un fichier";
    }

    @Override
    public String moreFind() {
        return "Chercher";
    }

    @Override
    public String moreLeast() {
        return "Au moins cette taille";
    }

    @Override
    public String moreLeastExample() {
        return "4 x 8";
    }

    @Override
    public String moreSave() {
        return "Enregistrer en CSV";
    }

    @Override
    public String moreText() {
        return "Tissu ou numéro";
    }

    @Override
    public String moreTitle() {
        return "Plus : chercher, tissus, fichiers";
    }

    @Override
    public String photoBegun(String day, String pieces) {
        return day + ", à prendre : " + pieces;
    }

    @Override
    public String photoDay() {
        return "dd/MM, HH:mm";
    }

    @Override
    public String photoNotRead(String day) {
        return day + ", pas encore lu";
    }

    @Override
    public String photoNothing(String day) {
        return day + ", rien n’y a été lu";
    }

    @Override
    public String pieceAlike(int n, String numbers) {
        return (n == 0 || n == 1 ? "Un morceau, numéro " + numbers : "" + n + " pareils, numéros " + numbers);
    }

    @Override
    public String pieceChange() {
        return "Modifier";
    }

    @Override
    public String pieceTitle(String fabric, String size) {
        return size + ", " + fabric;
    }

    @Override
    public String pieceWay(String about) {
        return about + ". Sa longueur va de haut en bas sur l’image, le long de la lisière.";
    }

    @Override
    public String pieces(int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau" : "" + n + " morceaux");
    }

    @Override
    public String piecesOf(String fabric, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau (" + fabric + ")" : "" + n + " morceaux (" + fabric + ")");
    }

    @Override
    public String piecesSaid(String fabric, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau (" + fabric + ")" : "" + n + " morceaux (" + fabric + ")");
    }

    @Override
    public String redo() {
        return "Refaire";
    }

    @Override
    public String redoNothing() {
        return "Il n’y a rien à refaire.";
    }

    @Override
    public String redone(String deed) {
        return "Refait : " + deed + ".";
    }

    @Override
    public String save() {
        return "Enregistrer";
    }

    @Override
    public String splitAt(String unit) {
        return "À, " + unit;
    }

    @Override
    public String splitDivides() {
        return "Une coupe droite qui partage";
    }

    @Override
    public String splitLength(String length) {
        return "la longueur, " + length;
    }

    @Override
    public String splitTitle() {
        return "Couper en deux";
    }

    @Override
    public String splitWidth(String width) {
        return "la largeur, " + width;
    }

    @Override
    public String staleChoose() {
        return "Entre-temps, ces morceaux ont été changés dans une autre fenêtre. Rien n’a été changé ; regardez de nouveau, puis choisissez.";
    }

    @Override
    public String staleFabric() {
        return "Entre-temps, ce tissu a été changé dans une autre fenêtre. Rien n’a été changé ici.";
    }

    @Override
    public String staleFabricNow(String about, String colour, String fabric, String pieces) {
        return fabric + ", " + colour + ", " + about + " ; " + pieces + ".";
    }

    @Override
    public String staleGone() {
        return "Ils ne sont plus dans la réserve.";
    }

    @Override
    public String staleLast(String deed) {
        return "Entre-temps, la réserve a été changée dans une autre fenêtre : le dernier changement est maintenant « " + deed + " ». Rien n’a été changé ; regardez de nouveau.";
    }

    @Override
    public String staleNothing() {
        return "Entre-temps, la réserve a été changée dans une autre fenêtre : il ne reste rien à annuler. Rien n’a été changé ; regardez de nouveau.";
    }

    @Override
    public String staleNow(String pieces, String size) {
        return pieces + ", " + size + ".";
    }

    @Override
    public String staleNowWashed(String pieces, String size, String washed) {
        return pieces + ", " + size + ", " + washed + ".";
    }

    @Override
    public String stalePieces() {
        return "Entre-temps, ces morceaux ont été changés dans une autre fenêtre. Rien n’a été changé ici.";
    }

    @Override
    public String summary(String area, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau, " + area : "" + n + " morceaux, " + area);
    }

    @Override
    public String summarySome(String area, String found, int n) {
        return (n == 0 || n == 1 ? "" + found + " sur " + n + " morceau, " + area : "" + found + " sur " + n + " morceaux, " + area);
    }

    @Override
    public String tableBefore() {
        return "Avant";
    }

    @Override
    public String tableChange(String fabric) {
        return "Modifier le tissu " + fabric;
    }

    @Override
    public String tableColour() {
        return "Couleur";
    }

    @Override
    public String tableColours() {
        return "Couleurs";
    }

    @Override
    public String tableDrawn() {
        return "Vos morceaux, à l’échelle";
    }

    @Override
    public String tableFarther() {
        return "Plus loin";
    }

    @Override
    public String tableGreys() {
        return "Clair et foncé";
    }

    @Override
    public String tableKeep() {
        return "gardé";
    }

    @Override
    public String tableNearer() {
        return "Plus près";
    }

    @Override
    public String tableNext() {
        return "Suivant";
    }

    @Override
    public String tableNone() {
        return "Aucun morceau n’est ainsi.";
    }

    @Override
    public String tablePage(String page, String pages) {
        return "Page " + page + " sur " + pages;
    }

    @Override
    public String tablePages() {
        return "Pages de la réserve";
    }

    @Override
    public String tableShowAll() {
        return "Montrer toute la réserve";
    }

    @Override
    public String tableShown() {
        return "Comment la table est montrée";
    }

    @Override
    public String tableTap() {
        return "Touchez un morceau pour le choisir.";
    }

    @Override
    public String tableUnknown() {
        return "couleur pas encore connue : touchez pour choisir";
    }

    @Override
    public String title() {
        return "Qu’avez-vous ?";
    }

    @Override
    public String titleWays() {
        return "Champs et fichiers";
    }

    @Override
    public String unchanged() {
        return "Rien n’a été changé.";
    }

    @Override
    public String undo() {
        return "Annuler";
    }

    @Override
    public String undoNothing() {
        return "Il n’y a rien à annuler.";
    }

    @Override
    public String undoWhat(String deed) {
        return "Annuler : " + deed;
    }

    @Override
    public String undone(String deed) {
        return "Annulé : " + deed + ".";
    }

    @Override
    public String washed(String washed) {
        return (washed.equals("YES") ? "lavé" : washed.equals("NO") ? "non lavé" : "");
    }

    @Override
    public String waysAddFile() {
        return "Ajouter le fichier";
    }

    @Override
    public String waysAlso(String unit) {
        return "Aussi count, colour, faces (same ou right), nap (any ou lengthwise), washed (yes ou no). Les tailles sans unité sont en " + (unit.equals("metric") ? "centimètres" : "pouces") + ". Si une ligne est fausse, rien n’est ajouté.";
    }

    @Override
    public String waysColumns() {
        return "Un fichier avec les colonnes fabric, width, length";
    }

    @Override
    public String waysFields() {
        return "Dans des champs";
    }

    @Override
    public String waysFile() {
        return "En fichier CSV";
    }

    @Override
    public String waysHelp() {
        return "Que puis-je écrire dans la ligne de la table ?";
    }

    @Override
    public String waysHelpSays(String unit) {
        return "Dans n’importe quel ordre : combien, le nom que vous lui donnez, largeur par longueur, une couleur, « endroit » si un côté est le bon, « poil » s’il ne faut pas le tourner, « lavé ». La largeur traverse le tissu, la longueur suit la lisière. " + (unit.equals("metric") ? "« 12 imprimé vert 10 x 20 », « 3 lin sauge 30 x 30 cm »." : "« 12 imprimé vert 4 x 8 », « 3 lin sauge 12 x 12 in ».") + " On peut coller plusieurs lignes à la fois.";
    }

    @Override
    public String wrongCount(String count) {
        return "« " + count + " » n’est pas un nombre de morceaux ; écrivez un nombre entier, ou laissez vide pour un seul.";
    }

    @Override
    public String wrongHowMany(String n) {
        return "Il y en a " + n + " ; dites combien, de 1 à " + n + ".";
    }

    @Override
    public String wrongLongName(String most) {
        return "Le nom est trop long pour une étiquette ; " + most + " lettres au plus.";
    }

    @Override
    public String wrongNoName() {
        return "Le tissu n’a pas de nom ; écrivez comment vous l’appelez.";
    }

    @Override
    public String wrongOutside(String whole) {
        return "La coupe tombe hors du morceau ; dites où elle est, entre 0 et " + whole + ".";
    }
}
