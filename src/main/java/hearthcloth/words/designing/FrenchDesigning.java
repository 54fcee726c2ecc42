package hearthcloth.words.designing;

/** The room of designing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchDesigning implements DesigningWords {

    @Override
    public String againButton() {
        return "Revoir les couleurs";
    }

    @Override
    public String againLocked() {
        return "Ce qui est verrouillé reste.";
    }

    @Override
    public String altEyes(String eyes, String name, String size) {
        return name + " pour des yeux " + eyes + ", " + size;
    }

    @Override
    public String altFace(String face, String name, String size) {
        return (face.equals("FRONT") ? "Recto : " + name + ", " + size : "Verso : " + name + ", " + size);
    }

    @Override
    public String altFront() {
        return "Recto ; chaque bande peut être choisie";
    }

    @Override
    public String altTarget(String bar, String cut, String fabrics, String locked) {
        return bar + ", " + fabrics + ", coupée à " + cut + (locked.equals("yes") ? ", verrouillée" : "");
    }

    @Override
    public String altValues(String name) {
        return "Clair et foncé : " + name + ", en cinq degrés";
    }

    @Override
    public String altWide(String width) {
        return width + " de large";
    }

    @Override
    public String barAny() {
        return "N’importe quel tissu";
    }

    @Override
    public String barAnySays() {
        return "le plan choisit";
    }

    @Override
    public String barCut(String unit) {
        return "Coupé, " + unit;
    }

    @Override
    public String barLock() {
        return "Verrouiller";
    }

    @Override
    public String barLockIt() {
        return "Verrouiller tel quel";
    }

    @Override
    public String barLocked() {
        return "Verrouillé";
    }

    @Override
    public String barMiddle() {
        return "le milieu";
    }

    @Override
    public String barName(String bar, String label) {
        return (bar.equals("hearth") ? "Pièce centrale" : "Bande " + label);
    }

    @Override
    public String barNarrower() {
        return "Plus étroit";
    }

    @Override
    public String barSet() {
        return "Fixer la largeur";
    }

    @Override
    public String barUnlock() {
        return "Verrouillé ; appuyer pour déverrouiller";
    }

    @Override
    public String barWhere(String round, String side) {
        return (side.equals("LEFT") ? "à gauche, tour " + round : side.equals("RIGHT") ? "à droite, tour " + round : side.equals("TOP") ? "en haut, tour " + round : "en bas, tour " + round);
    }

    @Override
    public String barWider() {
        return "Plus large";
    }

    @Override
    public String benchChoices() {
        return "Choix";
    }

    @Override
    public String benchClose() {
        return "Ne rien choisir";
    }

    @Override
    public String benchHolds(String largest, String tie) {
        return tie + " : " + largest;
    }

    @Override
    public String benchLacking() {
        return "Vous n’avez pas assez de tissu pour cela.";
    }

    @Override
    public String benchPanel() {
        return "Ce qui peut changer";
    }

    @Override
    public String benchRedo() {
        return "Refaire";
    }

    @Override
    public String benchRedoWhat(String deed) {
        return "Refaire : " + deed;
    }

    @Override
    public String benchReplan() {
        return "Refaire le plan avec la réserve";
    }

    @Override
    public String benchReplanCuts() {
        return "Refaire le plan de ce qui reste à couper";
    }

    @Override
    public String benchTap() {
        return "Touchez la pièce centrale ou une bande pour changer son tissu ou sa largeur. Une bande hachurée montre l’envers de son tissu.";
    }

    @Override
    public String benchTies() {
        return "Ce qu’il peut nouer";
    }

    @Override
    public String benchUndo() {
        return "Annuler";
    }

    @Override
    public String benchUndoWhat(String deed) {
        return "Annuler : " + deed;
    }

    @Override
    public String benchViews() {
        return "Façons de le regarder";
    }

    @Override
    public String benchWall() {
        return "Remplir l’écran avec l’image";
    }

    @Override
    public String besideName(String deed, String name) {
        return name + ", " + deed;
    }

    @Override
    public String besideOld() {
        return "Ce carré a été changé plusieurs fois dans une autre fenêtre depuis que cette page est ouverte. Rien n’a été changé ici ; rechargez-la.";
    }

    @Override
    public String besideSaid(String deed, String name) {
        return "Entre-temps, " + name + " a été changé dans une autre fenêtre. Les deux sont gardés : l’un tel que cette fenêtre l’a laissé, l’autre à côté avec votre changement (" + deed + ").";
    }

    @Override
    public String coloursBest() {
        return "au mieux selon le plan";
    }

    @Override
    public String coloursContrast() {
        return "Contraste";
    }

    @Override
    public String coloursLabel() {
        return "Couleurs";
    }

    @Override
    public String copyName(String name) {
        return name + ", un autre";
    }

    @Override
    public String deedAgain() {
        return "couleurs revues";
    }

    @Override
    public String deedAnyFabric() {
        return "n’importe quel tissu";
    }

    @Override
    public String deedBar(String bar) {
        return "largeur de " + bar;
    }

    @Override
    public String deedFabric(String fabric, String place) {
        return fabric + " pour " + place;
    }

    @Override
    public String deedFell() {
        return "face des rabats";
    }

    @Override
    public String deedHearth() {
        return "pièce centrale";
    }

    @Override
    public String deedLock(String on, String place) {
        return (on.equals("yes") ? "verrouiller " + place : "déverrouiller " + place);
    }

    @Override
    public String deedMaking(String what) {
        return (what.equals("seam") ? "couture" : "ourlet");
    }

    @Override
    public String deedOrder() {
        return "ordre";
    }

    @Override
    public String deedReplan() {
        return "plan refait";
    }

    @Override
    public String deedRound(String round) {
        return "largeur du tour " + round;
    }

    @Override
    public String deedRounds(int n) {
        return (n == 0 || n == 1 ? "un tour" : "" + n + " tours");
    }

    @Override
    public String deedRules() {
        return "règles de raccord";
    }

    @Override
    public String deedSwap() {
        return "échange de tissus";
    }

    @Override
    public String exampleAway() {
        return "ranger l’exemple";
    }

    @Override
    public String exampleGone() {
        return "L’exemple est supprimé.";
    }

    @Override
    public String exampleLaid() {
        return "Une réserve d’exemple et un carré sont là pour essayer ; un clic les supprime.";
    }

    @Override
    public String exampleLay() {
        return "étaler l’exemple";
    }

    @Override
    public String exampleName(String title) {
        return "Exemple : " + title;
    }

    @Override
    public String eyes(String eyes) {
        return (eyes.equals("PROTAN") ? "aveugles au rouge" : eyes.equals("DEUTAN") ? "aveugles au vert" : "aveugles au bleu");
    }

    @Override
    public String eyesTo() {
        return "Pour d’autres yeux :";
    }

    @Override
    public String eyesTold(String colours, String eyes) {
        return "Pour des yeux " + eyes + " : " + colours;
    }

    @Override
    public String fabricsSwap() {
        return "Échanger";
    }

    @Override
    public String fabricsTitle() {
        return "Tissus";
    }

    @Override
    public String fabricsWith() {
        return "avec";
    }

    @Override
    public String face(String face) {
        return (face.equals("front") ? "recto" : "verso");
    }

    @Override
    public String figureCuts() {
        return "Coupes";
    }

    @Override
    public String figureJoins() {
        return "Raccords";
    }

    @Override
    public String figureJoinsFew(int above, String joins) {
        return (above == 0 ? "" + joins + ", le minimum possible" : "" + joins + ", au plus " + above + " de plus que le minimum");
    }

    @Override
    public String figureLayers(int n) {
        return (n == 0 || n == 1 ? "" + n + " épaisseur" : "" + n + " épaisseurs");
    }

    @Override
    public String figureLost() {
        return "Tissu perdu";
    }

    @Override
    public String figurePatches() {
        return "Pièces";
    }

    @Override
    public String figurePieces() {
        return "Morceaux entamés";
    }

    @Override
    public String figureThickest() {
        return "Endroit le plus épais";
    }

    @Override
    public String figureThread() {
        return "Fil";
    }

    @Override
    public String figureWas(String was) {
        return "avant : " + was;
    }

    @Override
    public String figuresAll() {
        return "Tous les chiffres";
    }

    @Override
    public String goCut() {
        return "Couper ce carré";
    }

    @Override
    public String goRecut() {
        return "Couper ce qui est demandé";
    }

    @Override
    public String goSew() {
        return "Coudre ce carré";
    }

    @Override
    public String handEnough() {
        return "assez";
    }

    @Override
    public String handJoined() {
        return "raccordé";
    }

    @Override
    public String handShort() {
        return "trop court";
    }

    @Override
    public String handWide(String width) {
        return width + " de large";
    }

    @Override
    public String labelRenamed(String name, String was) {
        return was + " renommé en " + name;
    }

    @Override
    public String look(String look) {
        return (look.equals("FLAT") ? "À plat" : look.equals("BACK") ? "Verso" : look.equals("TIED") ? "Noué" : look.equals("VALUES") ? "Clair, foncé" : look.equals("PROTAN") ? "Protan" : look.equals("DEUTAN") ? "Deutan" : "Tritan");
    }

    @Override
    public String nameCopy() {
        return "Garder une copie";
    }

    @Override
    public String nameMore() {
        return "Autres propositions";
    }

    @Override
    public String nameName() {
        return "Nom";
    }

    @Override
    public String nameRename() {
        return "Renommer";
    }

    @Override
    public String nameTitle() {
        return "Nom et copie";
    }

    @Override
    public String nearGone() {
        return "Celui-ci n’est plus possible ; regardez encore une fois.";
    }

    @Override
    public String nearKind(String kind) {
        return (kind.equals("FABRICS") ? "Dans d’autres tissus" : kind.equals("BARS") ? "Avec des bandes plus étroites" : kind.equals("HEARTH") ? "Avec une pièce centrale plus petite" : kind.equals("ROUNDS") ? "Avec moins de tours" : "Plus petit en tout");
    }

    @Override
    public String nearLead() {
        return "Chacun change une seule chose, et vous avez le tissu pour cela.";
    }

    @Override
    public String nearNone() {
        return "Aucun carré proche ne peut être fait avec ce qui est libre. Annulez, ou regardez d’autres carrés.";
    }

    @Override
    public String nearOf(String fabrics) {
        return "En " + fabrics + ".";
    }

    @Override
    public String nearTaken(String way) {
        return "Choisi : " + way + ".";
    }

    @Override
    public String nearTitle() {
        return "Les carrés les plus proches que vous pouvez faire";
    }

    @Override
    public String picturesBack(String kind) {
        return "Verso, " + kind;
    }

    @Override
    public String picturesBoth() {
        return "Les deux, à envoyer";
    }

    @Override
    public String picturesFlat(String kind) {
        return "À plat, " + kind;
    }

    @Override
    public String picturesTied(String kind) {
        return "Noué, " + kind;
    }

    @Override
    public String picturesTitle() {
        return "Images à garder et à envoyer";
    }

    @Override
    public String picturesWhat() {
        return "Une image des deux faces et du cadeau noué, ou chacune à part.";
    }

    @Override
    public String piecingApart(String several) {
        return (several.equals("yes") ? "Séparer" : "Remettre");
    }

    @Override
    public String piecingClear() {
        return "Vider la table";
    }

    @Override
    public String piecingDeed() {
        return "les morceaux";
    }

    @Override
    public String piecingFill(String again) {
        return (again.equals("yes") ? "Remplir de nouveau autour de ce qui est fixé" : "Remplir le reste");
    }

    @Override
    public String piecingFit(String piece, String way) {
        return piece + ", " + way;
    }

    @Override
    public String piecingFrom() {
        return "Changer morceau par morceau";
    }

    @Override
    public String piecingGo() {
        return "Assembler des chutes à la main";
    }

    @Override
    public String piecingHeap(int n) {
        return (n == 0 || n == 1 ? "" + n + " chute à côté" : "" + n + " chutes à côté");
    }

    @Override
    public String piecingIntro() {
        return "Touchez une chute, puis une autre : vous voyez comment elles vont ensemble et ce que cela coupe. Remplissez le reste quand vous voulez ; ce que vous avez assemblé reste assemblé.";
    }

    @Override
    public String piecingIsLocked(String piece) {
        return piece + ", fixé";
    }

    @Override
    public String piecingJoined(String a, String b, String trims) {
        return "Les pièces " + a + " et " + b + " sont assemblées ; " + trims + ".";
    }

    @Override
    public String piecingKeep(String cloth) {
        return "Garder dans " + cloth;
    }

    @Override
    public String piecingLay() {
        return "Poser sur la table";
    }

    @Override
    public String piecingLock(String on) {
        return (on.equals("yes") ? "Libérer" : "Fixer");
    }

    @Override
    public String piecingMake() {
        return "Faire ce carré";
    }

    @Override
    public String piecingMore(String area, String how) {
        return (how.equals("SAME") ? "coupe autant que maintenant" : how.equals("MORE") ? "coupe " + area + " de plus" : "coupe " + area + " de moins");
    }

    @Override
    public String piecingNext() {
        return "Ce qui va à côté";
    }

    @Override
    public String piecingNone(String what) {
        return (what.equals("next") ? "Rien ne va à côté dans ce carré." : what.equals("two") ? "Ces deux-là ne vont pas ensemble : un morceau serait trop petit, ou le carré n’a pas la place." : "Aucune autre chute n’est assez grande pour cette place.");
    }

    @Override
    public String piecingPanel() {
        return "La chute choisie";
    }

    @Override
    public String piecingPiece(String fabric, String piece, String size) {
        return piece + " " + fabric + ", " + size;
    }

    @Override
    public String piecingSaid(String what) {
        return (what.equals("UNDO") ? "Annulé." : what.equals("REDO") ? "Rétabli." : what.equals("CLEAR") ? "La table est vide." : what.equals("LAY") ? "Elle est sur la table et sera dans le carré." : what.equals("APART") ? "Séparé." : what.equals("LOCK") ? "C’est fait." : what.equals("TURN") ? "Tourné." : what.equals("SWAP") ? "Les deux ont changé de place." : what.equals("SIZE") ? "La taille est fixée." : what.equals("FILL") ? "Le carré est rempli. Touchez un morceau pour le fixer ou lui donner une autre chute." : what.equals("SHORT") ? "Aucun moyen de remplir le reste à cette taille. Séparez quelque chose ou faites le carré plus petit." : what.equals("MADE") ? "Votre carré est gardé." : what.equals("FROM") ? "Touchez un morceau pour lui donner une autre chute, ou fixez ce qui vous plaît et remplissez le reste de nouveau." : "Ce carré ne peut pas être changé ici : deux morceaux viennent d’une seule pièce, ou une pièce manque.");
    }

    @Override
    public String piecingSet() {
        return "Fixer";
    }

    @Override
    public String piecingSize(String unit) {
        return "Taille du carré en " + unit;
    }

    @Override
    public String piecingStale() {
        return "La table a changé entre-temps ; regardez-la encore une fois.";
    }

    @Override
    public String piecingSwap() {
        return "Une autre chute à cette place";
    }

    @Override
    public String piecingTable() {
        return "Sur la table";
    }

    @Override
    public String piecingTitle() {
        return "Chutes à la main";
    }

    @Override
    public String piecingTrim(String length, String off, String piece) {
        return (off.equals("NONE") ? "rien n’est coupé" : off.equals("SECOND") ? "" + length + " coupés de la pièce " + piece : "" + length + " coupés de l’autre côté");
    }

    @Override
    public String piecingTurn() {
        return "Tourner";
    }

    @Override
    public String piecingWay(String turned, String where) {
        return (where.equals("BESIDE") ? "à droite" : "en dessous") + (turned.equals("yes") ? ", tournée" : "");
    }

    @Override
    public String piecingWays(String piece) {
        return "Avec " + piece;
    }

    @Override
    public String piecingWhole(String cloth, int n, String percent) {
        return (n == 0 || n == 1 ? "" + n + " morceau" : "" + n + " morceaux") + ", " + cloth + ", " + percent + " % coupés.";
    }

    @Override
    public String place(String label, String place) {
        return (place.equals("hearth") ? "la pièce centrale" : "" + label);
    }

    @Override
    public String saidCalled(String name) {
        return "Il s’appelle maintenant " + name + ".";
    }

    @Override
    public String saidCopy() {
        return "Ceci est une copie ; le premier reste tel quel.";
    }

    @Override
    public String saidLacking() {
        return "Vous n’avez pas assez de tissu ; changez une bande ou une largeur.";
    }

    @Override
    public String saidLocked() {
        return "Verrouillé : un nouveau plan le laisse tel quel.";
    }

    @Override
    public String saidNothing() {
        return "Il n’y a rien à annuler.";
    }

    @Override
    public String saidPlanned() {
        return "Plan refait avec ce qui est dans la réserve.";
    }

    @Override
    public String saidRedone(String deed) {
        return "Refait : " + deed + ".";
    }

    @Override
    public String saidUndone(String deed) {
        return "Annulé : " + deed + ".";
    }

    @Override
    public String saidUnlocked() {
        return "Déverrouillé.";
    }

    @Override
    public String seamKind(String name, String seam) {
        return (seam.equals("felled") ? "rabattue : une marge repliée autour de l’autre et piquée" : seam.equals("ssamsol") ? "ssamsol : une couture rabattue étroite, comme sur les tissus d’emballage coréens" : seam.equals("felled_and_trimmed") ? "rabattue et recoupée : piquée bord à bord, une marge recoupée, puis rabattue" : seam.equals("lapped") ? "emboîtée : deux bords pliés accrochés l’un dans l’autre" : seam.equals("french") ? "anglaise : cousue deux fois, les bords vifs enfermés" : seam.equals("french_trimmed") ? "anglaise, recoupée : marges plus larges, recoupées après la première piqûre" : seam.equals("gamchimjil") ? "gamchimjil : deux bords pliés surjetés à la main" : "" + name);
    }

    @Override
    public String set() {
        return "Fixer";
    }

    @Override
    public String sewingAllowances() {
        return "Rabattue, étroite + large";
    }

    @Override
    public String sewingCorner() {
        return "Coin de l’ourlet";
    }

    @Override
    public String sewingCorners(String corner) {
        return (corner.equals("square") ? "coins droits" : "coins à onglet");
    }

    @Override
    public String sewingFell() {
        return "Côté rabattu des coutures sur le";
    }

    @Override
    public String sewingHelp() {
        return "Que sont étroit et large ?";
    }

    @Override
    public String sewingHelpSays() {
        return "Dans une couture rabattue, une marge est étroite ; l’autre, plus large, se replie par-dessus et se pique. Toutes deux se règlent ci-dessous. Le rabat est sur une face et y fait une ligne. La plus petite pièce est la partie la plus courte que vous acceptez de raccorder dans une bande.";
    }

    @Override
    public String sewingHem(String unit) {
        return "Ourlet, premier + second pli, " + unit;
    }

    @Override
    public String sewingJoins() {
        return "Raccords par bande, au plus";
    }

    @Override
    public String sewingLeast(String unit) {
        return "Plus petite pièce, finie, " + unit;
    }

    @Override
    public String sewingSeam() {
        return "Couture";
    }

    @Override
    public String sewingTitle() {
        return "Couture, ourlet et raccords";
    }

    @Override
    public String shapeHearth(String unit) {
        return "Pièce centrale, coupée, " + unit;
    }

    @Override
    public String shapeHearthHeight(String unit) {
        return "Hauteur de la pièce centrale, coupée, " + unit;
    }

    @Override
    public String shapeHearthWidth(String unit) {
        return "Largeur de la pièce centrale, coupée, " + unit;
    }

    @Override
    public String shapeHelp() {
        return "Que veulent dire ces largeurs ?";
    }

    @Override
    public String shapeHelpSays() {
        return "Chaque largeur est celle que vous coupez, marges de couture comprises ; la bande finie est plus étroite de ce que prennent ses coutures et l’ourlet. La taille ci-dessus est celle du carré fini, ourlé. L’ordre dit dans quel ordre les bandes d’un tour sont cousues.";
    }

    @Override
    public String shapeMixed() {
        return "(différentes)";
    }

    @Override
    public String shapeOrder() {
        return "Ordre";
    }

    @Override
    public String shapeRound(String round, String unit) {
        return "Tour " + round + ", bandes coupées, " + unit;
    }

    @Override
    public String shapeRounds() {
        return "Tours";
    }

    @Override
    public String shapeSetHearth() {
        return "Fixer la pièce centrale";
    }

    @Override
    public String shapeTitle() {
        return "Forme";
    }

    @Override
    public String shapeWhole() {
        return "Le carré entier";
    }

    @Override
    public String shortJoins(int n) {
        return (n == 0 || n == 1 ? "raccord" : "raccords");
    }

    @Override
    public String shortLayers() {
        return "épaisseurs";
    }

    @Override
    public String shortLost() {
        return "perdu";
    }

    @Override
    public String shortSize(String kind) {
        return (kind.equals("square") ? "de côté" : "fini");
    }

    @Override
    public String shortThread() {
        return "fil";
    }

    @Override
    public String sinceEnough() {
        return "Vous avez de nouveau assez de tissu.";
    }

    @Override
    public String sinceJoins(String before, String now) {
        return "Raccords " + before + ", maintenant " + now + ".";
    }

    @Override
    public String sinceLacking(String why) {
        return "Pas assez de tissu : " + why;
    }

    @Override
    public String sinceLost(String before, String now) {
        return "Perdu " + before + ", maintenant " + now + ".";
    }

    @Override
    public String sinceSame() {
        return "Changé ; taille, raccords et perte restent les mêmes.";
    }

    @Override
    public String sinceSize(String before, String now) {
        return "Taille " + before + ", maintenant " + now + ".";
    }

    @Override
    public String sizeSquare(String size) {
        return size + " de côté";
    }

    @Override
    public String staleCalled(String name) {
        return "Il s’appelle " + name + ".";
    }

    @Override
    public String staleRenamed() {
        return "Entre-temps, ce carré a été renommé dans une autre fenêtre. Rien n’a été changé ici.";
    }

    @Override
    public String tiedAlt(String fit, String name) {
        return name + ", noué. " + fit;
    }

    @Override
    public String tiedColours() {
        return "En couleurs";
    }

    @Override
    public String tiedExample() {
        return "box 30 x 20 x 10 cm";
    }

    @Override
    public String tiedFaces() {
        return "Face dehors, et comment le carré est posé";
    }

    @Override
    public String tiedGreys() {
        return "Clair et foncé";
    }

    @Override
    public String tiedMore() {
        return "Ce qui se voit, et plus";
    }

    @Override
    public String tiedQuarter(String turn) {
        return (turn.equals("0") ? "comme dessiné" : turn.equals("1") ? "un quart" : turn.equals("2") ? "un demi" : "trois quarts");
    }

    @Override
    public String tiedRound() {
        return "Noué autour de quoi";
    }

    @Override
    public String tiedRoundWhat() {
        return "Autour de quoi";
    }

    @Override
    public String tiedSay() {
        return "Dites autour de quoi le nouer.";
    }

    @Override
    public String tiedShow() {
        return "Montrer";
    }

    @Override
    public String tiedSize() {
        return "Sa taille";
    }

    @Override
    public String tiedTooSmall() {
        return "trop petit";
    }

    @Override
    public String tiedUnsaid(String gift) {
        return "Vous n’avez pas dit ce qu’il emballe : le voici autour de " + gift + ".";
    }

    @Override
    public String tiedWhich() {
        return "Quel nouage";
    }

    @Override
    public String turnCanvas() {
        return "Le cadeau noué. Les flèches le tournent, plus et moins le rapprochent ou l’éloignent, Début le montre de biais.";
    }

    @Override
    public String turnGroup() {
        return "Tourner le cadeau";
    }

    @Override
    public String turnSaid(String way) {
        return (way.equals("left") ? "tourné à gauche" : way.equals("right") ? "tourné à droite" : way.equals("up") ? "penché vers vous" : "penché au loin");
    }

    @Override
    public String turnTo(String way) {
        return (way.equals("left") ? "Tourner à gauche" : way.equals("right") ? "Tourner à droite" : way.equals("up") ? "Pencher vers vous" : way.equals("down") ? "Pencher au loin" : way.equals("nearer") ? "Plus près" : "Plus loin");
    }

    @Override
    public String warnAside(int n, String pieces) {
        return (n == 0 || n == 1 ? "Ce carré compte sur " + pieces + ", que vous avez mis de côté. Remettez-le dans la réserve, ou refaites le plan." : "Ce carré compte sur " + pieces + ", que vous avez mis de côté. Remettez-les dans la réserve, ou refaites le plan.");
    }

    @Override
    public String warnMany(String fabrics, int n) {
        return (n == 0 || n == 1 ? "" + n + " morceau (" + fabrics + ")" : "" + n + " morceaux (" + fabrics + ")");
    }

    @Override
    public String warnMissing(int n, String pieces) {
        return (n == 0 || n == 1 ? "Ce carré compte sur " + pieces + ", qui n’est plus dans la réserve comme prévu. On ne peut pas le couper ainsi ; refaites le plan." : "Ce carré compte sur " + pieces + ", qui ne sont plus dans la réserve comme prévu. On ne peut pas le couper ainsi ; refaites le plan.");
    }

    @Override
    public String warnPiece(String fabric, String number) {
        return number + " (" + fabric + ")";
    }

    @Override
    public String warnPieces(int n, String pieces) {
        return (n == 0 || n == 1 ? "le morceau " + pieces : "les morceaux " + pieces);
    }

    @Override
    public String warnRuler(String begun, String ruler) {
        return (ruler.equals("metric") ? "Ce carré est mesuré en centimètres" : "Ce carré est mesuré en pouces") + (begun.equals("yes") ? ", comme il est coupé." : ", comme il a été prévu. Refaites le plan pour l’avoir sur la règle que vous utilisez.");
    }

    @Override
    public String warnShared(String cloth, String pieces) {
        return cloth + " compte aussi sur " + pieces + ". Le carré coupé d’abord les prend ; l’autre est alors refait.";
    }

    @Override
    public String wrongBar() {
        return "Choisissez d’abord une bande.";
    }

    @Override
    public String wrongCloth() {
        return "Il n’en resterait pas un carré. Rien n’a été changé ; choisissez d’autres mesures.";
    }

    @Override
    public String wrongFabric(String fabric) {
        return "Aucun tissu de la réserve ne s’appelle « " + fabric + " ».";
    }

    @Override
    public String wrongForm() {
        return "Ce formulaire est d’un autre genre ; rechargez la page.";
    }

    @Override
    public String wrongIsCut() {
        return "Ce carré est déjà coupé. Gardez-en une copie pour changer le dessin.";
    }

    @Override
    public String wrongLacking() {
        return "Vous n’avez pas assez de tissu pour ce carré ; changez-le d’abord.";
    }

    @Override
    public String wrongLeast() {
        return "La plus petite pièce fait plus de zéro et 1 m au plus.";
    }

    @Override
    public String wrongName() {
        return "Écrivez un nom de 80 lettres au plus.";
    }

    @Override
    public String wrongNoBars() {
        return "Ce carré n’a pas de bandes à changer. Pour d’autres chutes ou une autre taille, cherchez de nouveau des propositions.";
    }

    @Override
    public String wrongNoOther() {
        return "Aucun autre plan de couleurs n’a été trouvé pour ces tailles ; déverrouillez une bande ou changez une largeur.";
    }

    @Override
    public String wrongNone() {
        return "Ce carré n’existe pas ; il a peut-être été supprimé.";
    }

    @Override
    public String wrongOrder(String written) {
        return "« " + written + " » n’est pas un ordre.";
    }

    @Override
    public String wrongPart() {
        return "Chaque partie fait plus de zéro et 10 cm au plus.";
    }

    @Override
    public String wrongScheme(String needs, String scheme) {
        return "« " + scheme + " » n’a pas été trouvé pour ces tailles ; il faut " + needs + ".";
    }

    @Override
    public String wrongSeam(String written) {
        return "« " + written + " » n’est pas une couture connue.";
    }

    @Override
    public String wrongTiesNone() {
        return "Ce carré ne noue encore aucun cadeau : dites ce qu’il doit envelopper.";
    }

    @Override
    public String wrongTwo(String what, String written) {
        return (what.equals("hem") ? "« " + written + " » ne convient pas ; un ourlet a un premier et un second pli, par exemple 0,6 + 1,2 cm." : "« " + written + " » ne convient pas ; une couture rabattue a une marge étroite et une large, par exemple 0,6 + 1,2 cm.");
    }

    @Override
    public String wrongWhole(String least, String most, String written) {
        return "« " + written + " » ne convient pas ; écrivez un nombre entier de " + least + " à " + most + ".";
    }

    @Override
    public String wrongWide(String written) {
        return "« " + written + " » est plus large que n’importe quel carré ; vérifiez l’unité.";
    }

    @Override
    public String wrongWrap() {
        return "Le bord large enveloppe l’étroit, donc le second doit être le plus large.";
    }
}
