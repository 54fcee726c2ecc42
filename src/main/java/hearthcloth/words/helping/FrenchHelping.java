package hearthcloth.words.helping;

/** The room of helping in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchHelping implements HelpingWords {

    @Override
    public String command() {
        return "[commande]";
    }

    @Override
    public String completionHeader() {
        return "Écrit une complétion pour bash, zsh ou fish, ou la page de manuel.";
    }

    @Override
    public String completionKind() {
        return "Ce qu’il faut écrire.";
    }

    @Override
    public String guidelineAbout() {
        return "Pour chaque choix du carré, dites ce que c’est : l’idée même (\"kept\"), sa part de la largeur (\"share\"), ou seulement ce qui est venu ce jour-là (\"open\") ; ou écrivez votre propre règle. La couture et l’ourlet sont ceux du carré.";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\", \"share\", \"open\", \"strips\" (aussi larges que vos bandes), \"2 to 3 in\" ou \"8 to 12 %\" ; d’habitude \"open\".";
    }

    @Override
    public String guidelineBy() {
        return "Qui la transmet.";
    }

    @Override
    public String guidelineCloth() {
        return "Le carré : le plan.json de son dossier, \"-\" pour l’entrée standard, ou son nom parmi les carrés faits.";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\", \"open\", ou des manières comme \"two halves or frames\" (deux moitiés ou cadres) ; d’habitude \"kept\".";
    }

    @Override
    public String guidelineExFollow() {
        return "un carré de votre propre réserve, d’après cette consigne";
    }

    @Override
    public String guidelineExPage() {
        return "une page que tout le monde peut ouvrir pour prévoir";
    }

    @Override
    public String guidelineHeader() {
        return "Tire d’un carré fini une consigne à transmettre.";
    }

    @Override
    public String guidelineHearth() {
        return "La pièce centrale : \"kept\", \"share\", \"open\", \"largest square\" (le plus grand carré), \"30 to 40 %\" ou \"14 in cut\" ; d’habitude \"share\".";
    }

    @Override
    public String guidelineMiddle() {
        return "Ce qui est au milieu : \"any\" (n’importe), \"favourite\" (le préféré), \"lightest\" (le plus clair), \"darkest\" (le plus foncé) ou le nom d’un tissu ; d’habitude \"any\".";
    }

    @Override
    public String guidelineMostJoins() {
        return "Raccords dans une bande, au plus, 0 à 40 ; sans cette option, comme pour le carré.";
    }

    @Override
    public String guidelineName() {
        return "Le nom de l’idée ; sans cette option, le titre du plan.";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" ou \"open\" ; d’habitude \"kept\".";
    }

    @Override
    public String guidelinePicture() {
        return "Une image à vous, PNG ou JPEG.";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\", \"open\", \"3\" ou \"2 to 4\" ; d’habitude \"kept\".";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\", \"open\", \"16 in\", \"16 to 20 in\" ou \"for box 30 x 20 x 8 cm\" ; d’habitude \"open\".";
    }

    @Override
    public String guidelineUnit() {
        return "La règle de qui la suit ; sans cette option, comme le carré a été coupé.";
    }

    @Override
    public String guidelineWords() {
        return "Ce que vous voulez en dire.";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "Commandes :" : of.equals("wishes") ? "Souhaits :" : of.equals("examples") ? "Exemples :" : of.equals("stash") ? "Le fichier de la réserve" : of.equals("list") ? "La liste" : of.equals("idea") ? "Ce qui fait l’idée :" : of.equals("ends") ? "Code de fin :" : of.equals("try") ? "À essayer sur l’exemple fourni :" : "Options :");
    }

    @Override
    public String helpAbout() {
        return "Sans commande, explique le programme.";
    }

    @Override
    public String helpHeader() {
        return "Explique une commande, avec toutes ses options.";
    }

    @Override
    public String helpWhich() {
        return "La commande à expliquer.";
    }

    @Override
    public String ideaAbout() {
        return "La page est un seul fichier. Elle s’ouvre sur tout téléphone ou ordinateur, sans réseau, et prévoit pour chaque personne un carré avec les morceaux qu’elle tape. Envoyez-la, ou mettez-la sur votre site.";
    }

    @Override
    public String ideaExFrom() {
        return "son exemple est prévu avec vos chutes";
    }

    @Override
    public String ideaFile() {
        return "Le fichier de la consigne ; \"-\" lit l’entrée standard.";
    }

    @Override
    public String ideaFrom() {
        return "Des morceaux pour l’exemple de la page ; sans cette option, ils sont inventés.";
    }

    @Override
    public String ideaHeader() {
        return "Écrit une consigne en une page que tout le monde peut ouvrir, avec de quoi prévoir dedans.";
    }

    @Override
    public String kitsAbout() {
        return "Un carré est prévu pour chaque ligne d’une liste, ou pour chaque élève, et aucun morceau n’est promis deux fois. Le partage est juste : personne n’a plus de raccords qu’il n’en faut, les pièces centrales diffèrent, chacun a du clair et du foncé. Chaque carré a son dossier numéroté, comme avec plan. S’y ajoutent kits.pdf (une feuille pour le cours, la liste d’achats, une étiquette par sachet et par pièce) et kits.json. Ce qui est souhaité ici vaut pour tous ; la liste peut dire autre chose.";
    }

    @Override
    public String kitsCsv() {
        return "Texte séparé par des virgules (CSV, UTF-8), une ligne par carré. La première ligne nomme les colonnes : name (nom), et gift (cadeau) ou size (taille). Au choix, tout souhait de plan sans ses tirets, comme tie, hearth, bars, rounds, fabrics, free.";
    }

    @Override
    public String kitsDone() {
        return "chaque carré est comme vous le souhaitez";
    }

    @Override
    public String kitsExList() {
        return "une liste de cadeaux";
    }

    @Override
    public String kitsExStudents() {
        return "douze sachets pour un cours, une taille pour tous";
    }

    @Override
    public String kitsFirst() {
        return "Anna";
    }

    @Override
    public String kitsHeader() {
        return "Prévoit beaucoup de carrés avec une même réserve, pour un cours ou les cadeaux d’une saison.";
    }

    @Override
    public String kitsSecond() {
        return "Grand-mère";
    }

    @Override
    public String kitsShort() {
        return "il manque quelque chose à certains ; c’est dit, et le plus proche est dessiné";
    }

    @Override
    public String kitsStudents() {
        return "Autant de carrés pareils, au lieu d’une liste : 1 à 99.";
    }

    @Override
    public String kitsWishes() {
        return "La liste des carrés.";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "FICHIER" : of.equals("COPY") ? "COPIE" : of.equals("FOLDER") ? "DOSSIER" : of.equals("LIST") ? "LISTE" : of.equals("STASH") ? "RÉSERVE" : of.equals("IDEA") ? "IDÉE" : of.equals("PLAN") ? "PLAN" : of.equals("CLOTH") ? "CARRÉ" : of.equals("PAGE") ? "PAGE" : of.equals("PICTURE") ? "IMAGE" : of.equals("PHOTO") ? "PHOTO" : of.equals("SHEET") ? "FEUILLE" : of.equals("FABRIC") ? "TISSU" : of.equals("NAMES") ? "NOMS" : of.equals("NAME") ? "NOM" : of.equals("WORDS") ? "MOTS" : of.equals("GIFT") ? "CADEAU" : of.equals("TIE") ? "NOUAGE" : of.equals("LENGTH") ? "LONGUEUR" : of.equals("SIZE") ? "TAILLE" : of.equals("SIZES") ? "TAILLES" : of.equals("WIDTHS") ? "LARGEURS" : of.equals("FACE") ? "FACE" : of.equals("WAY") ? "SENS" : of.equals("ORDER") ? "ORDRE" : of.equals("SETTING") ? "POSE" : of.equals("RULE") ? "RÈGLE" : of.equals("PIECE") ? "MORCEAU" : of.equals("PIECES") ? "MORCEAUX" : of.equals("SEAM") ? "COUTURE" : of.equals("HEM") ? "OURLET" : of.equals("CORNER") ? "COIN" : of.equals("COLOURS") ? "COULEURS" : of.equals("HOW") ? "MANIÈRE" : of.equals("TIME") ? "DURÉE" : of.equals("LANGUAGE") ? "LANGUE" : of.equals("COMMAND") ? "COMMANDE" : "");
    }

    @Override
    public String mainAbout() {
        return "Sans commande, l’atelier s’ouvre dans votre navigateur.";
    }

    @Override
    public String mainAddress() {
        return "L’adresse d’un atelier partagé derrière un proxy de cet ordinateur : https://studio.example.";
    }

    @Override
    public String mainCode() {
        return "Demander un code aussi sur cet ordinateur, quand d’autres personnes y ont une session.";
    }

    @Override
    public String mainData() {
        return "Le fichier qui garde votre travail ; sans cette option, à l’endroit habituel. Ou la base de données d’un atelier partagé : postgresql://HOST/NAME.";
    }

    @Override
    public String mainDone() {
        return "c’est fait";
    }

    @Override
    public String mainHeader() {
        return "Prévoit des carrés d’emballage en patchwork, réversibles et d’une seule épaisseur, avec les tissus que vous avez.";
    }

    @Override
    public String mainLan() {
        return "Laisser entrer les téléphones et tablettes de ce réseau, chacun avec un code que montre l’atelier.";
    }

    @Override
    public String mainLanguage() {
        return "Langue de cette aide et de ce qui est dit ici : \"en\", \"ko\", \"ja\", \"fr\", \"de\" ou \"es\". L’atelier parle celle de votre navigateur.";
    }

    @Override
    public String mainMore(String command) {
        return "Tous les souhaits, avec des exemples : " + command;
    }

    @Override
    public String mainNew() {
        return "Commencer un atelier vide là où votre fichier était et n’est plus.";
    }

    @Override
    public String mainNoBrowser() {
        return "Dire seulement l’adresse de l’atelier, sans ouvrir de navigateur.";
    }

    @Override
    public String mainPort(String usual) {
        return "Le port de l’atelier, d’habitude " + usual + ". S’il est pris, le premier libre qui suit.";
    }

    @Override
    public String mainRestore() {
        return "Remettre d’abord une copie de sécurité à la place du fichier : \"last\" (la dernière) ou le nom de la copie.";
    }

    @Override
    public String mainShort() {
        return "la réserve ne donne pas ce que vous souhaitez ; ce qui manque est dit";
    }

    @Override
    public String mainWrong() {
        return "ce qui est tapé, ou ce qui est dans un fichier, ne convient pas ; l’endroit est dit";
    }

    @Override
    public String manualFiles() {
        return "Votre travail. À côté, dans workroom.db.copies, ses copies de sécurité.";
    }

    @Override
    public String manualSame() {
        return "Ce qui vaut quand l’option de ce nom n’est pas tapée.";
    }

    @Override
    public String manualSettings() {
        return "Un fichier de lignes comme HEARTHCLOTH_PORT=4732, qui vaut quand ni l’une ni l’autre n’est donnée.";
    }

    @Override
    public String optionBudget(String usual) {
        return "Combien de temps chercher mieux : \"500ms\", \"2s\", \"1min\" ; d’habitude \"" + usual + "\".";
    }

    @Override
    public String optionFile() {
        return "Le fichier à écrire.";
    }

    @Override
    public String optionFolder() {
        return "Le dossier à écrire : nouveau, ou déjà prévu auparavant.";
    }

    @Override
    public String optionGift() {
        return "Ce que vous emballez : \"box 30 x 20 x 8 cm\" (boîte), \"bottle 8 x 30 cm\" (bouteille), \"two bottles 8 x 30 cm\", \"ball 22 cm\" (balle), \"books 21 x 15 x 2 cm\" (livres), \"roll 6 x 40 cm\" (rouleau).";
    }

    @Override
    public String optionGuide(String usual) {
        return "Ce que dit chaque guide.pdf : \"full\" pour coudre chez soi, \"class\" en quatre à six pages pour un cours ; d’habitude \"" + usual + "\".";
    }

    @Override
    public String optionHelp() {
        return "Montrer cette aide.";
    }

    @Override
    public String optionJson() {
        return "Le dire en JSON, pour des programmes ; longueurs en nanomètres.";
    }

    @Override
    public String optionLanguage() {
        return "Langue de ce qui est dit et imprimé : \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\", ou son nom. Sans cette option, celle de votre terminal.";
    }

    @Override
    public String optionPaper() {
        return "Le papier d’impression : \"a4\" ou \"letter\". Sans cette option, letter avec des pouces, sinon A4.";
    }

    @Override
    public String optionReplace() {
        return "Écrire par-dessus un fichier qui est déjà là.";
    }

    @Override
    public String optionStash() {
        return "Le fichier de la réserve ; \"-\" lit l’entrée standard.";
    }

    @Override
    public String optionTie() {
        return "Comment le nouer, par exemple \"errand wrap\" (paquet à un nœud). Sans cette option, les plans prennent le nouage habituel, et size les dit tous.";
    }

    @Override
    public String optionUnit() {
        return "Votre règle, et l’unité des nombres seuls : \"in\" (pouces) ou \"cm\". Sans cette option, comme ce qui est lu est écrit.";
    }

    @Override
    public String optionVersion() {
        return "Dire la version, et de quel état elle est construite.";
    }

    @Override
    public String optional() {
        return "[options]";
    }

    @Override
    public String planAbout() {
        return "La réserve est lue, et plusieurs carrés différents, vraiment faisables, sont prévus. Chacun a son dossier numéroté, le meilleur d’abord, avec plan.json, front.svg, back.svg, cut.svg et guide.pdf. Avec --gift, il y a aussi tied.svg, le cadeau tel qu’on le verra. Ce que vous ne dites pas est choisi pour vous, et dit.";
    }

    @Override
    public String planCsv() {
        return "Texte séparé par des virgules (CSV, UTF-8). La première ligne nomme les colonnes, dans n’importe quel ordre ; ensuite, une ligne par morceau. Il faut : fabric (tissu), width (largeur), length (longueur, le long de la lisière). Au choix : count (nombre), colour (couleur, \"#8a9a5b\" ou \"olive\"), faces (\"same\", pareil des deux côtés, ou \"right\", un seul endroit), nap (sens : \"any\" ou \"lengthwise\"), washed (lavé : \"yes\" ou \"no\"), unit (unité), note.";
    }

    @Override
    public String planCsvOther() {
        return "Rayure voile";
    }

    @Override
    public String planCsvPlain() {
        return "Lin algue";
    }

    @Override
    public String planDone() {
        return "des carrés sont prévus";
    }

    @Override
    public String planExBest() {
        return "ce que la réserve fait de mieux, aussi grand que possible";
    }

    @Override
    public String planExBlocks() {
        return "neuf petits log cabins assemblés";
    }

    @Override
    public String planExCut() {
        return "pièce centrale et bandes telles que coupées ; la taille en découle";
    }

    @Override
    public String planExFree() {
        return "des chutes assemblées telles quelles";
    }

    @Override
    public String planExGift() {
        return "assez grand pour cette boîte";
    }

    @Override
    public String planExIdea() {
        return "la consigne d’un cours, adaptée à votre réserve";
    }

    @Override
    public String planExInput() {
        return "la réserve vient d’un autre programme";
    }

    @Override
    public String planExPairs() {
        return "bandes cousues par paires, deux tissus seulement";
    }

    @Override
    public String planFavourite() {
        return "Avec --guideline : le tissu que vous préférez, pour le milieu si la consigne le demande.";
    }

    @Override
    public String planGuideline() {
        return "Suivre cette consigne au lieu de vos propres souhaits. Vous recevez le carré le plus proche, et les règles qu’il ne suit pas tout à fait.";
    }

    @Override
    public String planHeader() {
        return "Prévoit des carrés avec une réserve : quoi couper dans quel morceau, et comment le coudre.";
    }

    @Override
    public String planLike() {
        return "Une image dont vous aimez les couleurs. Seuls les tissus les plus proches de ses couleurs principales sont pris.";
    }

    @Override
    public String planNet() {
        return "Avec --gift : écrire aussi net.pdf et net.svg, le carré à plat avec tous ses plis, à essayer en papier.";
    }

    @Override
    public String planPng() {
        return "Écrire aussi les images en PNG.";
    }

    @Override
    public String planShort() {
        return "la réserve ne donne pas ce que vous souhaitez ; ce qui manque est dit, et le carré le plus proche est écrit";
    }

    @Override
    public String planSlips() {
        return "Écrire aussi slips.pdf : une étiquette à épingler sur chaque pièce.";
    }

    @Override
    public String readAbout() {
        return "Poser les morceaux à plat et séparés, sur un fond dont ils se détachent. Mettre parmi eux une feuille de papier, une carte bancaire ou un tapis de coupe de taille connue. Prendre une seule photo, d’en haut, avec tout en entier. La feuille donne la mesure de chaque morceau. Les morceaux douteux sont nommés et laissés de côté, sauf si vous voulez les garder.";
    }

    @Override
    public String readDone() {
        return "un fichier de réserve est écrit";
    }

    @Override
    public String readExPicture() {
        return "dessine aussi sur la photo ce qui a été lu";
    }

    @Override
    public String readExPlan() {
        return "prévoit des carrés avec ce qui a été lu";
    }

    @Override
    public String readFile() {
        return "Le fichier a une ligne par tissu et par taille : le plus grand rectangle que le morceau donne à coup sûr, arrondi vers le bas aux marques de votre règle. Les morceaux qui se ressemblent comptent comme un même tissu, nommé d’après sa couleur. Donnez-leur vos propres noms dans le fichier, et dites lesquels ont un endroit.";
    }

    @Override
    public String readHeader() {
        return "Lit des morceaux sur une photo et les écrit dans un fichier de réserve.";
    }

    @Override
    public String readKeepDoubtful() {
        return "Écrire aussi les morceaux douteux.";
    }

    @Override
    public String readOut() {
        return "Le fichier de réserve à écrire.";
    }

    @Override
    public String readPhoto() {
        return "Une image JPEG ou PNG ; \"-\" lit l’entrée standard.";
    }

    @Override
    public String readPicture() {
        return "Dessiner aussi sur la photo ce qui a été lu.";
    }

    @Override
    public String readSheet() {
        return "Ce qui, sur la photo, a une taille connue : \"sheet\" (la feuille de mesure ; \"sheet 19.9 cm\" si sa ligne mesure cela), \"a4\", \"letter\", \"card\" (une carte bancaire), ou une taille comme \"12 x 18 in\".";
    }

    @Override
    public String readShort() {
        return "aucun morceau n’a pu être écrit ; la raison est dite";
    }

    @Override
    public String readUnit() {
        return "Votre règle. Sans cette option : en pouces avec \"letter\", en centimètres avec \"a4\", sinon comme la feuille est écrite.";
    }

    @Override
    public String sheetAbout() {
        return "Une photo avec cette feuille mesure plus sûrement qu’avec du papier ordinaire. Ses marques ne peuvent pas passer pour du tissu, et elles montrent comment la feuille est courbée. L’imprimer à 100 %, sans l’ajuster à la page. Puis poser une règle sur sa ligne fine : elle mesure 20 cm, soit 7 7/8 in.";
    }

    @Override
    public String sheetExRuler() {
        return "si votre règle dit que la ligne imprimée mesure 19,9 cm";
    }

    @Override
    public String sheetHeader() {
        return "Écrit la feuille de mesure, à imprimer et à poser parmi les morceaux.";
    }

    @Override
    public String sheetPaper() {
        return "Le papier de l’imprimante : \"a4\" ou \"letter\" ; d’habitude \"a4\".";
    }

    @Override
    public String sizeAbout() {
        return "Mesurer le cadeau par l’extérieur. Une boîte : longueur x largeur x hauteur ; une bouteille : diamètre x hauteur ; une balle : son diamètre ; des livres : hauteur x largeur x épaisseur d’un des deux ; un rouleau : diamètre x longueur. Pour la base, l’ordre est libre. Les tailles sont celles du carré fini, ourlé.";
    }

    @Override
    public String sizeCloth() {
        return "Un carré fini : \"38 1/2 in\" ou \"90 x 100 cm\".";
    }

    @Override
    public String sizeExCloth() {
        return "ce qu’emballe un carré de cette taille";
    }

    @Override
    public String sizeExSteps() {
        return "avec les étapes du nouage";
    }

    @Override
    public String sizeExTie() {
        return "ce nouage seulement, en centimètres";
    }

    @Override
    public String sizeHeader() {
        return "Dit la taille de carré qu’il faut pour un cadeau, ou ce qu’un carré emballe.";
    }

    @Override
    public String sizeSteps() {
        return "Dire aussi comment nouer, étape par étape ; de préférence avec --tie.";
    }

    @Override
    public String usage() {
        return "Usage :";
    }

    @Override
    public String wishBands() {
        return "Avec --free : des rangées en travers (\"across\") ou en long (\"down\"), ou \"any\" ; d’habitude \"any\".";
    }

    @Override
    public String wishBars() {
        return "Largeurs des bandes, telles que coupées : \"5 in\" pour toutes, \"5 in, 4 in\" tour par tour (la dernière continue) ; avec \"finished\" pour ce qu’on voit. D’habitude \"stash\".";
    }

    @Override
    public String wishBlocks() {
        return "Autant de petits log cabins par rang, et autant de rangs : \"3 x 3\". Alors --rounds et --order sont ceux de chaque bloc.";
    }

    @Override
    public String wishClearance() {
        return "Un raccord reste à cette distance de toute couture qu’il croiserait : \"1 in\" ou \"25 mm\".";
    }

    @Override
    public String wishContrast() {
        return "\"most\" (le plus de contraste possible), \"reads\" (le log cabin se lit), \"easy\" (entre les deux), \"quiet\" (calme) ou \"melts\" (tout se fond en un champ) ; d’habitude \"reads\".";
    }

    @Override
    public String wishCorner() {
        return "Coins de l’ourlet : \"square\" (droits) ou \"mitred\" (à onglet).";
    }

    @Override
    public String wishFabrics() {
        return "Seulement ces tissus, séparés par des virgules ; le premier est pour le milieu.";
    }

    @Override
    public String wishFell() {
        return "La face des rabats et de l’ourlet : \"front\" (recto) ou \"back\" (verso).";
    }

    @Override
    public String wishFree() {
        return "Des chutes assemblées telles quelles, sans pièce centrale ni bandes. Avec --blocks ou --rounds, des chutes autour des log cabins.";
    }

    @Override
    public String wishHearth() {
        return "La pièce du milieu, telle que coupée : \"14 in\", \"12 x 9 in\" ; ou \"12 in finished\" pour ce qu’on voit. D’habitude \"stash\" : la réserve décide.";
    }

    @Override
    public String wishHem() {
        return "Premier + second pli de l’ourlet : \"1/4 + 1/4 in\".";
    }

    @Override
    public String wishLeastPiece() {
        return "Aucune partie d’une bande à raccords ne montre moins que cela : \"2 in\" ou \"5 cm\".";
    }

    @Override
    public String wishLeeway() {
        return "Couper chaque bande plus longue d’autant, puis égaliser après la couture : \"1/2 in\" ou \"12 mm\".";
    }

    @Override
    public String wishMiddle() {
        return "Avec --free : le numéro d’un morceau posé au milieu tel quel, les autres autour.";
    }

    @Override
    public String wishMostJoins() {
        return "Raccords dans une bande, au plus, 0 à 40 ; d’habitude 4.";
    }

    @Override
    public String wishMostTrim() {
        return "Avec --free : ne pas couper plus que cela sur la largeur ou la longueur d’un morceau : \"1/2 in\".";
    }

    @Override
    public String wishOffMiddle() {
        return "Le cadeau écarté du milieu du carré : \"1 in right\" (à droite), \"2 cm left, 3 cm away\" (à gauche, au loin ; ou \"near\", près).";
    }

    @Override
    public String wishOrder() {
        return "\"round\" (chaque bande sur le côté suivant), \"pairs\" (côtés opposés) ou \"two-sides\" (la pièce centrale reste dans un coin).";
    }

    @Override
    public String wishOutside() {
        return "La face visible du cadeau noué : \"front\" (recto) ou \"back\" (verso) ; d’habitude \"front\".";
    }

    @Override
    public String wishProposals() {
        return "Combien de carrés différents proposer, 1 à 12 ; d’habitude 4.";
    }

    @Override
    public String wishRounds() {
        return "Tours de bandes, 1 à 40, ou \"stash\".";
    }

    @Override
    public String wishScheme() {
        return "Comment vont les couleurs : \"two halves\" (deux moitiés), \"spiral\" (spirale), \"turn and turn about\" (tour à tour), \"ring by ring\" (anneau par anneau), \"light to dark\" (du clair au foncé), \"frames\" (cadres), \"one field\" (un seul champ), \"scattered evenly\" (bien répartis), \"one bright scrap\" (une chute vive) ; d’habitude \"stash\". Deux à la fois : \"two halves + one bright scrap\".";
    }

    @Override
    public String wishScraps() {
        return "Avec --free : \"as-they-are\" (aucune chute n’est coupée en deux), \"cut\" (là où cela aide) ou \"either\" (l’un ou l’autre) ; d’habitude \"either\".";
    }

    @Override
    public String wishSeam() {
        return "Marge étroite + marge large d’une couture rabattue, \"1/4 + 1/2 in\", ou le nom d’une couture : \"ssamsol\", \"french\", \"lapped\" …";
    }

    @Override
    public String wishSeed() {
        return "Un autre nombre entier, un autre hasard ; d’habitude 1.";
    }

    @Override
    public String wishSetting() {
        return "Comment se posent les moitiés claires et foncées des blocs : \"straight furrow\" (sillons droits), \"barn raising\" (losanges), \"sunshine and shadow\" (soleil et ombre), \"turned at will\" (tournés au hasard) ou \"all alike\" (tous pareils).";
    }

    @Override
    public String wishShow() {
        return "Mettre ce tissu là où on le voit une fois le cadeau noué.";
    }

    @Override
    public String wishSize() {
        return "La taille du carré fini, au lieu d’un cadeau : \"38 1/2 in\" (un carré exact) ou \"38 x 30 in\".";
    }

    @Override
    public String wishSizes() {
        return "Avec --free : \"mixed\" (grandes et petites pièces), \"even\" (aussi égales que possible) ou \"any\" (n’importe) ; d’habitude \"any\".";
    }

    @Override
    public String wishSlack() {
        return "De combien un carré pour un cadeau dépasse le minimum, pour ce que la couture peut prendre : \"1/2 in\", \"12 mm\" ou \"none\" (rien).";
    }

    @Override
    public String wishTrim() {
        return "Couper chaque bande plus large d’autant, puis égaliser après la couture ; d’habitude \"none\".";
    }

    @Override
    public String wishTurned() {
        return "Quarts de tour du carré sous le cadeau, vers la gauche : 0 à 3 ; d’habitude 0.";
    }

    @Override
    public String wishWith() {
        return "Avec --free : numéros des morceaux qui doivent être dans le carré, séparés par des virgules : \"3, 12-2\".";
    }
}
