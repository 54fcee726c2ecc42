package hearthcloth.words.helping;

/** The room of helping in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishHelping implements HelpingWords {

    @Override
    public String command() {
        return "[orden]";
    }

    @Override
    public String completionHeader() {
        return "Escribe los completados para bash, zsh o fish, o la página del manual.";
    }

    @Override
    public String completionKind() {
        return "Qué se escribe.";
    }

    @Override
    public String guidelineAbout() {
        return "De cada elección del paño, diga qué es: la idea misma (\"kept\"), su parte del ancho del paño (\"share\"), solo como salió aquel día (\"open\"), o una regla propia. La costura y el dobladillo son los del paño.";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\", \"share\", \"open\", \"strips\" (del ancho de sus tiras), \"2 to 3 in\" o \"8 to 12 %\"; por lo general \"open\".";
    }

    @Override
    public String guidelineBy() {
        return "Quién la comparte.";
    }

    @Override
    public String guidelineCloth() {
        return "El paño: el plan.json de su carpeta, \"-\" para la entrada estándar, o su nombre entre los paños hechos.";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\", \"open\" o maneras como \"two halves or frames\" (dos mitades o marcos); por lo general \"kept\".";
    }

    @Override
    public String guidelineExFollow() {
        return "un paño de sus propias telas según esa pauta";
    }

    @Override
    public String guidelineExPage() {
        return "una página que cualquiera puede abrir para planear";
    }

    @Override
    public String guidelineHeader() {
        return "Saca de un paño terminado una pauta para compartir.";
    }

    @Override
    public String guidelineHearth() {
        return "La pieza central: \"kept\", \"share\", \"open\", \"largest square\" (el mayor cuadrado), \"30 to 40 %\" o \"14 in cut\"; por lo general \"share\".";
    }

    @Override
    public String guidelineMiddle() {
        return "Qué va en el centro: \"any\" (cualquiera), \"favourite\" (la preferida), \"lightest\" (la más clara), \"darkest\" (la más oscura) o el nombre de una tela; por lo general \"any\".";
    }

    @Override
    public String guidelineMostJoins() {
        return "Uniones en una tira, como mucho, de 0 a 40; sin esta opción, como en el paño.";
    }

    @Override
    public String guidelineName() {
        return "Cómo se llama la idea; sin esta opción, el título del plan.";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" u \"open\"; por lo general \"kept\".";
    }

    @Override
    public String guidelinePicture() {
        return "Una imagen suya, PNG o JPEG.";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\", \"open\", \"3\" o \"2 to 4\"; por lo general \"kept\".";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\", \"open\", \"16 in\", \"16 to 20 in\" o \"for box 30 x 20 x 8 cm\"; por lo general \"open\".";
    }

    @Override
    public String guidelineUnit() {
        return "La regla de quienes la sigan; sin esta opción, como se cortó el paño.";
    }

    @Override
    public String guidelineWords() {
        return "Lo que quiera decir de ella.";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "Órdenes:" : of.equals("wishes") ? "Deseos:" : of.equals("examples") ? "Ejemplos:" : of.equals("stash") ? "El archivo de telas" : of.equals("list") ? "La lista" : of.equals("idea") ? "Qué es la idea:" : of.equals("ends") ? "Termina con:" : of.equals("try") ? "Para probar con el ejemplo incluido:" : "Opciones:");
    }

    @Override
    public String helpAbout() {
        return "Sin una orden, explica el programa.";
    }

    @Override
    public String helpHeader() {
        return "Explica una orden, con todas sus opciones.";
    }

    @Override
    public String helpWhich() {
        return "La orden que se explica.";
    }

    @Override
    public String ideaAbout() {
        return "La página es un solo archivo. Se abre en cualquier teléfono o equipo, sin red, y planea para cada persona un paño con los trozos que escriba. Envíela o póngala en su sitio web.";
    }

    @Override
    public String ideaExFrom() {
        return "su ejemplo se planea con sus retales";
    }

    @Override
    public String ideaFile() {
        return "El archivo de la pauta; \"-\" lee la entrada estándar.";
    }

    @Override
    public String ideaFrom() {
        return "Trozos para el ejemplo de la página; sin esta opción, inventados.";
    }

    @Override
    public String ideaHeader() {
        return "Escribe una pauta como una sola página que cualquiera puede abrir, y que sabe planear.";
    }

    @Override
    public String kitsAbout() {
        return "Se planea un paño por cada línea de una lista, o uno por alumna, y ningún trozo se promete dos veces. El reparto es justo: nadie tiene más uniones de las necesarias, las piezas centrales son distintas, todas tienen claros y oscuros. Cada paño tiene su carpeta numerada, como con plan. Además hay kits.pdf (una hoja para la maestra, la lista de la compra, una etiqueta para cada bolsa y cada pieza) y kits.json. Lo que se desea aquí vale para todos; la lista puede decir otra cosa.";
    }

    @Override
    public String kitsCsv() {
        return "Texto separado por comas (CSV, UTF-8), una línea por paño. La primera línea nombra las columnas: name (nombre), y gift (regalo) o size (tamaño). Si quiere, cualquier deseo de plan sin sus guiones, como tie, hearth, bars, rounds, fabrics, free.";
    }

    @Override
    public String kitsDone() {
        return "cada paño es como lo desea";
    }

    @Override
    public String kitsExList() {
        return "una lista de regalos";
    }

    @Override
    public String kitsExStudents() {
        return "doce bolsas para una clase, un tamaño para todas";
    }

    @Override
    public String kitsFirst() {
        return "Ana";
    }

    @Override
    public String kitsHeader() {
        return "Planea muchos paños con las mismas telas, para una clase o los regalos de una temporada.";
    }

    @Override
    public String kitsSecond() {
        return "Abuela";
    }

    @Override
    public String kitsShort() {
        return "a algunos les falta algo; se dice qué y se dibuja lo más parecido";
    }

    @Override
    public String kitsStudents() {
        return "Tantos paños iguales en lugar de una lista: de 1 a 99.";
    }

    @Override
    public String kitsWishes() {
        return "La lista de paños.";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "ARCHIVO" : of.equals("COPY") ? "COPIA" : of.equals("FOLDER") ? "CARPETA" : of.equals("LIST") ? "LISTA" : of.equals("STASH") ? "TELAS" : of.equals("IDEA") ? "IDEA" : of.equals("PLAN") ? "PLAN" : of.equals("CLOTH") ? "PAÑO" : of.equals("PAGE") ? "PÁGINA" : of.equals("PICTURE") ? "IMAGEN" : of.equals("PHOTO") ? "FOTO" : of.equals("SHEET") ? "HOJA" : of.equals("FABRIC") ? "TELA" : of.equals("NAMES") ? "NOMBRES" : of.equals("NAME") ? "NOMBRE" : of.equals("WORDS") ? "PALABRAS" : of.equals("GIFT") ? "REGALO" : of.equals("TIE") ? "ATADO" : of.equals("LENGTH") ? "MEDIDA" : of.equals("SIZE") ? "TAMAÑO" : of.equals("SIZES") ? "TAMAÑOS" : of.equals("WIDTHS") ? "ANCHOS" : of.equals("FACE") ? "CARA" : of.equals("WAY") ? "MODO" : of.equals("ORDER") ? "ORDEN" : of.equals("SETTING") ? "POSICIÓN" : of.equals("RULE") ? "REGLA" : of.equals("PIECE") ? "TROZO" : of.equals("PIECES") ? "TROZOS" : of.equals("SEAM") ? "COSTURA" : of.equals("HEM") ? "DOBLADILLO" : of.equals("CORNER") ? "ESQUINA" : of.equals("COLOURS") ? "COLORES" : of.equals("HOW") ? "MODO" : of.equals("TIME") ? "TIEMPO" : of.equals("LANGUAGE") ? "IDIOMA" : of.equals("COMMAND") ? "ORDEN" : "");
    }

    @Override
    public String mainAbout() {
        return "Sin una orden, abre el taller en su navegador.";
    }

    @Override
    public String mainAddress() {
        return "Dónde se llega a un taller compartido a través de un proxy de este equipo: https://studio.example.";
    }

    @Override
    public String mainCode() {
        return "Pedir un código también en este equipo, cuando otras personas tienen en él su sesión.";
    }

    @Override
    public String mainData() {
        return "El archivo que guarda su trabajo; sin esta opción, el lugar de siempre. O la base de datos de un taller compartido: postgresql://HOST/NAME.";
    }

    @Override
    public String mainDone() {
        return "hecho";
    }

    @Override
    public String mainHeader() {
        return "Planea paños de envolver de retales, reversibles y de una sola capa, con las telas que usted tiene.";
    }

    @Override
    public String mainLan() {
        return "Dejar entrar a teléfonos y tabletas de esta red, cada uno con un código que muestra el taller.";
    }

    @Override
    public String mainLanguage() {
        return "Idioma de esta ayuda y de lo que se dice aquí: \"en\", \"ko\", \"ja\", \"fr\", \"de\" o \"es\". El taller habla el de su navegador.";
    }

    @Override
    public String mainMore(String command) {
        return "Todos los deseos, con ejemplos: " + command;
    }

    @Override
    public String mainNew() {
        return "Empezar un taller vacío donde estaba su archivo y ya no está.";
    }

    @Override
    public String mainNoBrowser() {
        return "Decir solo la dirección del taller, sin abrir el navegador.";
    }

    @Override
    public String mainPort(String usual) {
        return "El puerto del taller, por lo general " + usual + ". Si está ocupado, se toma el siguiente libre.";
    }

    @Override
    public String mainRestore() {
        return "Poner antes una copia de seguridad en lugar del archivo: \"last\" (la última) o el nombre de la copia.";
    }

    @Override
    public String mainShort() {
        return "sus telas no dan lo que desea; se dice qué falta";
    }

    @Override
    public String mainWrong() {
        return "algo escrito aquí, o en un archivo, no sirve; se dice dónde";
    }

    @Override
    public String manualFiles() {
        return "Su trabajo. Al lado, en workroom.db.copies, están sus copias de seguridad.";
    }

    @Override
    public String manualSame() {
        return "Lo que vale cuando no se escribe la opción de ese nombre.";
    }

    @Override
    public String manualSettings() {
        return "Un archivo con líneas como HEARTHCLOTH_PORT=4732, que vale cuando faltan las dos.";
    }

    @Override
    public String optionBudget(String usual) {
        return "Cuánto tiempo buscar algo mejor: \"500ms\", \"2s\", \"1min\"; por lo general \"" + usual + "\".";
    }

    @Override
    public String optionFile() {
        return "El archivo que se escribe.";
    }

    @Override
    public String optionFolder() {
        return "La carpeta que se escribe: nueva o ya planeada antes.";
    }

    @Override
    public String optionGift() {
        return "Qué envuelve: \"box 30 x 20 x 8 cm\" (caja), \"bottle 8 x 30 cm\" (botella), \"two bottles 8 x 30 cm\", \"ball 22 cm\" (bola), \"books 21 x 15 x 2 cm\" (libros), \"roll 6 x 40 cm\" (rollo).";
    }

    @Override
    public String optionGuide(String usual) {
        return "Cuánto cuenta cada guide.pdf: \"full\" para coser en casa, \"class\" en cuatro a seis páginas para dar clase; por lo general \"" + usual + "\".";
    }

    @Override
    public String optionHelp() {
        return "Mostrar esta ayuda.";
    }

    @Override
    public String optionJson() {
        return "Decirlo en JSON, para programas; medidas en nanómetros.";
    }

    @Override
    public String optionLanguage() {
        return "Idioma de lo que se dice y se imprime: \"en\", \"ko\", \"ja\", \"fr\", \"de\", \"es\" o su nombre. Sin esta opción, el de su terminal.";
    }

    @Override
    public String optionPaper() {
        return "El papel en que se imprime: \"a4\" o \"letter\". Sin esta opción, carta con pulgadas y, si no, A4.";
    }

    @Override
    public String optionReplace() {
        return "Escribir encima de un archivo que ya existe.";
    }

    @Override
    public String optionStash() {
        return "El archivo de telas; \"-\" lee la entrada estándar.";
    }

    @Override
    public String optionTie() {
        return "Cómo se ata, por ejemplo \"errand wrap\" (envoltorio de un nudo). Sin esta opción, los planes toman el atado habitual y size los dice todos.";
    }

    @Override
    public String optionUnit() {
        return "Su regla, y la unidad de los números solos: \"in\" (pulgadas) o \"cm\". Sin esta opción, como esté escrito lo que se lee.";
    }

    @Override
    public String optionVersion() {
        return "Decir la versión y de qué estado se construyó.";
    }

    @Override
    public String optional() {
        return "[opciones]";
    }

    @Override
    public String planAbout() {
        return "Se leen las telas y se planean varios paños distintos que de verdad se pueden hacer con ellas. Cada uno tiene su carpeta numerada, el mejor primero, con plan.json, front.svg, back.svg, cut.svg y guide.pdf. Con --gift hay además tied.svg, el regalo como se verá. Lo que usted no diga se elige por usted, y se dice.";
    }

    @Override
    public String planCsv() {
        return "Texto separado por comas (CSV, UTF-8). La primera línea nombra las columnas, en cualquier orden; después, una línea por trozo. Hace falta: fabric (tela), width (ancho), length (largo, por el orillo). Si quiere: count (cuántos), colour (color, \"#8a9a5b\" u \"olive\"), faces (\"same\", igual por las dos caras, o \"right\", un solo derecho), nap (sentido: \"any\" o \"lengthwise\"), washed (lavada: \"yes\" o \"no\"), unit (unidad), note (nota).";
    }

    @Override
    public String planCsvOther() {
        return "Raya vela";
    }

    @Override
    public String planCsvPlain() {
        return "Lino alga";
    }

    @Override
    public String planDone() {
        return "hay paños planeados";
    }

    @Override
    public String planExBest() {
        return "lo mejor que dan las telas, tan grande como se pueda";
    }

    @Override
    public String planExBlocks() {
        return "nueve log cabin pequeños, unidos";
    }

    @Override
    public String planExCut() {
        return "pieza central y tiras como se cortan; el tamaño sale de ellas";
    }

    @Override
    public String planExFree() {
        return "retales unidos tal como son";
    }

    @Override
    public String planExGift() {
        return "bastante grande para atar esa caja";
    }

    @Override
    public String planExIdea() {
        return "la pauta de una maestra, ajustada a sus telas";
    }

    @Override
    public String planExInput() {
        return "las telas vienen de otro programa";
    }

    @Override
    public String planExPairs() {
        return "tiras cosidas por pares, solo dos telas";
    }

    @Override
    public String planFavourite() {
        return "Con --guideline: la tela que más le gusta, para el centro si la pauta la pide.";
    }

    @Override
    public String planGuideline() {
        return "Seguir esta pauta en lugar de deseos propios. Recibirá el paño más parecido y sabrá qué reglas no cumple del todo.";
    }

    @Override
    public String planHeader() {
        return "Planea paños con sus telas: qué cortar de cada trozo y cómo coserlo.";
    }

    @Override
    public String planLike() {
        return "Una imagen cuyos colores le encantan. Solo se usan las telas más cercanas a sus colores principales.";
    }

    @Override
    public String planNet() {
        return "Con --gift: escribir también net.pdf y net.svg, el paño plano con todos sus dobleces, para probar en papel.";
    }

    @Override
    public String planPng() {
        return "Escribir también las imágenes en PNG.";
    }

    @Override
    public String planShort() {
        return "sus telas no dan lo que desea; se dice qué falta y se escribe el paño más parecido";
    }

    @Override
    public String planSlips() {
        return "Escribir también slips.pdf: una etiqueta para prender en cada pieza.";
    }

    @Override
    public String readAbout() {
        return "Poner los trozos planos y separados, sobre un fondo del que se distingan. Poner entre ellos una hoja de papel, una tarjeta de banco o una base de corte de tamaño conocido. Tomar una sola foto desde arriba, con todo entero. La hoja da la medida de cada trozo. Los trozos dudosos se nombran y se dejan fuera, salvo que usted los quiera.";
    }

    @Override
    public String readDone() {
        return "hay un archivo de telas escrito";
    }

    @Override
    public String readExPicture() {
        return "además dibuja en la foto lo que se leyó";
    }

    @Override
    public String readExPlan() {
        return "planea paños con lo que se leyó";
    }

    @Override
    public String readFile() {
        return "El archivo tiene una línea por tela y tamaño: el mayor rectángulo que seguro se puede cortar del trozo, redondeado hacia abajo a las marcas de su regla. Los trozos que se parecen cuentan como una sola tela, con el nombre de su color. Póngales sus propios nombres en el archivo y diga cuáles tienen derecho.";
    }

    @Override
    public String readHeader() {
        return "Lee trozos de una fotografía y los escribe como archivo de telas.";
    }

    @Override
    public String readKeepDoubtful() {
        return "Escribir también los trozos dudosos.";
    }

    @Override
    public String readOut() {
        return "El archivo de telas que se escribe.";
    }

    @Override
    public String readPhoto() {
        return "Una imagen JPEG o PNG; \"-\" lee la entrada estándar.";
    }

    @Override
    public String readPicture() {
        return "Dibujar también en la foto lo que se leyó.";
    }

    @Override
    public String readSheet() {
        return "Qué hay en la foto de tamaño conocido: \"sheet\" (la hoja de medir; \"sheet 19.9 cm\" si su línea mide eso), \"a4\", \"letter\", \"card\" (una tarjeta de banco) o un tamaño como \"12 x 18 in\".";
    }

    @Override
    public String readShort() {
        return "no se pudo escribir ningún trozo; se dice por qué";
    }

    @Override
    public String readUnit() {
        return "Su regla. Sin esta opción: pulgadas con \"letter\", centímetros con \"a4\" y, si no, como esté escrita la hoja.";
    }

    @Override
    public String sheetAbout() {
        return "Una foto con esta hoja mide con más seguridad que con papel corriente. Sus marcas no pueden confundirse con tela, y muestran cómo está curvada la hoja. Imprimirla al 100 %, sin ajustarla a la página. Después poner una regla en su línea fina: mide 20 cm, o 7 7/8 in.";
    }

    @Override
    public String sheetExRuler() {
        return "si su regla dice que la línea impresa mide 19,9 cm";
    }

    @Override
    public String sheetHeader() {
        return "Escribe la hoja de medir, para imprimir y poner entre los trozos.";
    }

    @Override
    public String sheetPaper() {
        return "El papel de la impresora: \"a4\" o \"letter\"; por lo general \"a4\".";
    }

    @Override
    public String sizeAbout() {
        return "Medir el regalo por fuera. Una caja: largo x ancho x alto; una botella: diámetro x alto; una bola: su diámetro; libros: alto x ancho x grueso de uno de los dos; un rollo: diámetro x largo. En la base, el orden da igual. Los tamaños son los del paño terminado, con dobladillo.";
    }

    @Override
    public String sizeCloth() {
        return "Un paño terminado: \"38 1/2 in\" o \"90 x 100 cm\".";
    }

    @Override
    public String sizeExCloth() {
        return "qué envuelve un paño cuadrado";
    }

    @Override
    public String sizeExSteps() {
        return "con los pasos del atado";
    }

    @Override
    public String sizeExTie() {
        return "solo este atado, en centímetros";
    }

    @Override
    public String sizeHeader() {
        return "Dice qué tamaño de paño necesita un regalo, o qué envuelve un paño.";
    }

    @Override
    public String sizeSteps() {
        return "Decir también cómo se ata, paso a paso; mejor con --tie.";
    }

    @Override
    public String usage() {
        return "Uso:";
    }

    @Override
    public String wishBands() {
        return "Con --free: franjas a lo ancho (\"across\") o a lo largo (\"down\"), o \"any\"; por lo general \"any\".";
    }

    @Override
    public String wishBars() {
        return "Anchos de las tiras, como se cortan: \"5 in\" para todas, \"5 in, 4 in\" vuelta por vuelta (el último sigue); con \"finished\" para lo que se ve. Por lo general \"stash\".";
    }

    @Override
    public String wishBlocks() {
        return "Tantos log cabin pequeños por fila, y tantas filas: \"3 x 3\". Entonces --rounds y --order son los de cada bloque.";
    }

    @Override
    public String wishClearance() {
        return "Una unión queda a esta distancia de toda costura que cruzaría: \"1 in\" o \"25 mm\".";
    }

    @Override
    public String wishContrast() {
        return "\"most\" (todo el contraste posible), \"reads\" (se distingue el log cabin), \"easy\" (entre los dos), \"quiet\" (suave) o \"melts\" (todo se funde en un campo); por lo general \"reads\".";
    }

    @Override
    public String wishCorner() {
        return "Esquinas del dobladillo: \"square\" (rectas) o \"mitred\" (en inglete).";
    }

    @Override
    public String wishFabrics() {
        return "Solo estas telas, separadas por comas; la primera es para el centro.";
    }

    @Override
    public String wishFell() {
        return "La cara de las solapas y del dobladillo: \"front\" (anverso) o \"back\" (reverso).";
    }

    @Override
    public String wishFree() {
        return "Retales unidos tal como son, sin pieza central ni tiras. Con --blocks o --rounds, retales alrededor de los log cabin.";
    }

    @Override
    public String wishHearth() {
        return "La pieza del centro, como se corta: \"14 in\", \"12 x 9 in\"; o \"12 in finished\" para lo que se ve. Por lo general \"stash\": deciden sus telas.";
    }

    @Override
    public String wishHem() {
        return "Primer + segundo doblez del dobladillo: \"1/4 + 1/4 in\".";
    }

    @Override
    public String wishLeastPiece() {
        return "Ninguna parte de una tira con uniones muestra menos que esto: \"2 in\" o \"5 cm\".";
    }

    @Override
    public String wishLeeway() {
        return "Cortar cada tira tanto más larga y recortarla después de coser: \"1/2 in\" o \"12 mm\".";
    }

    @Override
    public String wishMiddle() {
        return "Con --free: el número de un trozo que va en el centro tal como es, con los demás alrededor.";
    }

    @Override
    public String wishMostJoins() {
        return "Uniones en una tira, como mucho, de 0 a 40; por lo general 4.";
    }

    @Override
    public String wishMostTrim() {
        return "Con --free: no recortar más que esto del ancho o del largo de un trozo: \"1/2 in\".";
    }

    @Override
    public String wishOffMiddle() {
        return "El regalo apartado del centro del paño: \"1 in right\" (a la derecha), \"2 cm left, 3 cm away\" (a la izquierda, hacia fuera; o \"near\", hacia usted).";
    }

    @Override
    public String wishOrder() {
        return "\"round\" (cada tira en el lado siguiente), \"pairs\" (lados opuestos) o \"two-sides\" (la pieza central queda en una esquina).";
    }

    @Override
    public String wishOutside() {
        return "La cara que se ve en el regalo atado: \"front\" (anverso) o \"back\" (reverso); por lo general \"front\".";
    }

    @Override
    public String wishProposals() {
        return "Cuántos paños distintos proponer, de 1 a 12; por lo general 4.";
    }

    @Override
    public String wishRounds() {
        return "Vueltas de tiras, de 1 a 40, o \"stash\".";
    }

    @Override
    public String wishScheme() {
        return "Cómo van los colores: \"two halves\" (dos mitades), \"spiral\" (espiral), \"turn and turn about\" (por turnos), \"ring by ring\" (anillo por anillo), \"light to dark\" (de claro a oscuro), \"frames\" (marcos), \"one field\" (un solo campo), \"scattered evenly\" (bien repartidas), \"one bright scrap\" (un retal vivo); por lo general \"stash\". Dos a la vez: \"two halves + one bright scrap\".";
    }

    @Override
    public String wishScraps() {
        return "Con --free: \"as-they-are\" (ningún retal se corta en dos), \"cut\" (donde ayude) o \"either\" (lo que sea); por lo general \"either\".";
    }

    @Override
    public String wishSeam() {
        return "Margen estrecho + ancho de una costura sobrecargada, \"1/4 + 1/2 in\", o el nombre de una costura: \"ssamsol\", \"french\", \"lapped\" …";
    }

    @Override
    public String wishSeed() {
        return "Otro número entero, otra suerte; por lo general 1.";
    }

    @Override
    public String wishSetting() {
        return "Cómo quedan las mitades claras y oscuras de los bloques: \"straight furrow\" (surco recto), \"barn raising\" (rombos), \"sunshine and shadow\" (sol y sombra), \"turned at will\" (girados al azar) o \"all alike\" (todos iguales).";
    }

    @Override
    public String wishShow() {
        return "Poner esta tela donde se vea una vez atado el regalo.";
    }

    @Override
    public String wishSize() {
        return "El tamaño del paño terminado, en lugar de un regalo: \"38 1/2 in\" (un cuadrado) o \"38 x 30 in\".";
    }

    @Override
    public String wishSizes() {
        return "Con --free: \"mixed\" (piezas grandes y pequeñas), \"even\" (lo más iguales posible) o \"any\" (como sea); por lo general \"any\".";
    }

    @Override
    public String wishSlack() {
        return "Cuánto mayor que lo mínimo se planea un paño para un regalo, por lo que tome la costura: \"1/2 in\", \"12 mm\" o \"none\" (nada).";
    }

    @Override
    public String wishTrim() {
        return "Cortar cada tira tanto más ancha y recortarla después de coser; por lo general \"none\".";
    }

    @Override
    public String wishTurned() {
        return "Cuartos de vuelta del paño bajo el regalo, a la izquierda: de 0 a 3; por lo general 0.";
    }

    @Override
    public String wishWith() {
        return "Con --free: números de los trozos que tienen que estar en el paño, separados por comas: \"3, 12-2\".";
    }
}
