package hearthcloth.words.helping;

/** The room of helping in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseHelping implements HelpingWords {

    @Override
    public String command() {
        return "[コマンド]";
    }

    @Override
    public String completionHeader() {
        return "bash、zsh、fish の補完、またはマニュアルページを書きます。";
    }

    @Override
    public String completionKind() {
        return "何を書くか。";
    }

    @Override
    public String guidelineAbout() {
        return "布の決め方の一つ一つについて書きます：手本そのもの（\"kept\"）、布の幅に対する割合（\"share\"）、その日たまたまのこと（\"open\"）、または自分の決まり。縫い目と縁は、その布のとおりです。";
    }

    @Override
    public String guidelineBars() {
        return "\"kept\"、\"share\"、\"open\"、\"strips\"（手持ちのストリップの幅）、\"2 to 3 in\"、\"8 to 12 %\"。ふつうは \"open\"。";
    }

    @Override
    public String guidelineBy() {
        return "渡す人の名前。";
    }

    @Override
    public String guidelineCloth() {
        return "布：フォルダーの plan.json、標準入力なら \"-\"、または作った布の名前。";
    }

    @Override
    public String guidelineColours() {
        return "\"kept\"、\"open\"、または \"two halves or frames\"（二つの半分か枠）のような配色。ふつうは \"kept\"。";
    }

    @Override
    public String guidelineExFollow() {
        return "その手本に従い、手持ちの布から";
    }

    @Override
    public String guidelineExPage() {
        return "だれでも開いて計画できるページ";
    }

    @Override
    public String guidelineHeader() {
        return "仕上がった布から、人に渡す手本を作ります。";
    }

    @Override
    public String guidelineHearth() {
        return "中心布：\"kept\"、\"share\"、\"open\"、\"largest square\"（いちばん大きな正方形）、\"30 to 40 %\"、\"14 in cut\"（裁ち）。ふつうは \"share\"。";
    }

    @Override
    public String guidelineMiddle() {
        return "真ん中の布：\"any\"（どれでも）、\"favourite\"（好きな布）、\"lightest\"（いちばん明るい）、\"darkest\"（いちばん暗い）、または布の名前。ふつうは \"any\"。";
    }

    @Override
    public String guidelineMostJoins() {
        return "ストリップ 1 本のつなぎは多くて、0～40。省くとその布のとおり。";
    }

    @Override
    public String guidelineName() {
        return "手本の名前。省くと計画の題名。";
    }

    @Override
    public String guidelineOrder() {
        return "\"kept\" か \"open\"。ふつうは \"kept\"。";
    }

    @Override
    public String guidelinePicture() {
        return "自分の画像、PNG か JPEG。";
    }

    @Override
    public String guidelineRounds() {
        return "\"kept\"、\"open\"、\"3\"、\"2 to 4\"。ふつうは \"kept\"。";
    }

    @Override
    public String guidelineSize() {
        return "\"kept\"、\"open\"、\"16 in\"、\"16 to 20 in\"、\"for box 30 x 20 x 8 cm\"。ふつうは \"open\"。";
    }

    @Override
    public String guidelineUnit() {
        return "手本に従う人の定規。省くとその布を裁ったとおり。";
    }

    @Override
    public String guidelineWords() {
        return "手本に添えることば。";
    }

    @Override
    public String heading(String of) {
        return (of.equals("commands") ? "コマンド：" : of.equals("wishes") ? "希望：" : of.equals("examples") ? "例：" : of.equals("stash") ? "布の一覧ファイル" : of.equals("list") ? "リスト" : of.equals("idea") ? "何を手本にするか：" : of.equals("ends") ? "終わりの番号：" : of.equals("try") ? "付属の見本で試すには：" : "オプション：");
    }

    @Override
    public String helpAbout() {
        return "コマンドなしでは、プログラムを説明します。";
    }

    @Override
    public String helpHeader() {
        return "コマンドと、そのすべてのオプションを説明します。";
    }

    @Override
    public String helpWhich() {
        return "説明するコマンド。";
    }

    @Override
    public String ideaAbout() {
        return "ページは一つのファイルです。どの電話やコンピューターでもネットワークなしに開き、読む人が入れた布から、その人の包み布を計画します。送るか、自分のサイトに置いてください。";
    }

    @Override
    public String ideaExFrom() {
        return "ページの見本は、あなたのはぎれから計画されます";
    }

    @Override
    public String ideaFile() {
        return "手本のファイル。\"-\" は標準入力を読みます。";
    }

    @Override
    public String ideaFrom() {
        return "ページの見本に使う布。省くと作りものの布。";
    }

    @Override
    public String ideaHeader() {
        return "手本を、だれでも開いて計画できる一枚のページに書きます。";
    }

    @Override
    public String kitsAbout() {
        return "リストの 1 行ごと、または生徒一人ごとに計画し、同じ布を二度使うことはありません。公平に分けます。つなぎは必要なだけ、中心布はそれぞれ違い、だれにも明るい布と暗い布があります。plan と同じく、それぞれに番号のフォルダーができます。ほかに kits.pdf（先生用の一枚、買い物リスト、袋とピースごとの札）と kits.json。ここでの希望はみなに当てはまり、リストで変えられます。";
    }

    @Override
    public String kitsCsv() {
        return "カンマ区切りのテキスト（CSV、UTF-8）、1 枚に 1 行。1 行目に列の名前：name（名前）と、gift（贈り物）か size（大きさ）。ほかに plan のどの希望でも、線なしで書けます。例：tie、hearth、bars、rounds、fabrics、free。";
    }

    @Override
    public String kitsDone() {
        return "どれも希望どおりです";
    }

    @Override
    public String kitsExList() {
        return "贈り物のリスト";
    }

    @Override
    public String kitsExStudents() {
        return "教室のための 12 袋、大きさはみな同じ";
    }

    @Override
    public String kitsFirst() {
        return "あんな";
    }

    @Override
    public String kitsHeader() {
        return "一つの布の一覧から、教室や季節の贈り物のために、たくさんの包み布を計画します。";
    }

    @Override
    public String kitsSecond() {
        return "おばあさん";
    }

    @Override
    public String kitsShort() {
        return "足りないものがあります。何かを言い、いちばん近いものを描きます";
    }

    @Override
    public String kitsStudents() {
        return "リストの代わりに、同じものをこの数だけ：1～99。";
    }

    @Override
    public String kitsWishes() {
        return "包み布のリスト。";
    }

    @Override
    public String label(String of) {
        return (of.equals("URL") ? "URL" : of.equals("FILE") ? "ファイル" : of.equals("COPY") ? "控え" : of.equals("FOLDER") ? "フォルダー" : of.equals("LIST") ? "リスト" : of.equals("STASH") ? "布の一覧" : of.equals("IDEA") ? "手本" : of.equals("PLAN") ? "plan" : of.equals("CLOTH") ? "布" : of.equals("PAGE") ? "ページ" : of.equals("PICTURE") ? "画像" : of.equals("PHOTO") ? "写真" : of.equals("SHEET") ? "用紙" : of.equals("FABRIC") ? "布" : of.equals("NAMES") ? "名前" : of.equals("NAME") ? "名前" : of.equals("WORDS") ? "ことば" : of.equals("GIFT") ? "贈り物" : of.equals("TIE") ? "包み方" : of.equals("LENGTH") ? "長さ" : of.equals("SIZE") ? "大きさ" : of.equals("SIZES") ? "大きさ" : of.equals("WIDTHS") ? "幅" : of.equals("FACE") ? "面" : of.equals("WAY") ? "向き" : of.equals("ORDER") ? "順序" : of.equals("SETTING") ? "並べ方" : of.equals("RULE") ? "決まり" : of.equals("PIECE") ? "番号" : of.equals("PIECES") ? "番号" : of.equals("SEAM") ? "縫い目" : of.equals("HEM") ? "縁" : of.equals("CORNER") ? "角" : of.equals("COLOURS") ? "配色" : of.equals("HOW") ? "強さ" : of.equals("TIME") ? "時間" : of.equals("LANGUAGE") ? "言語" : of.equals("COMMAND") ? "コマンド" : "");
    }

    @Override
    public String mainAbout() {
        return "コマンドなしでは、作業部屋をブラウザーで開きます。";
    }

    @Override
    public String mainAddress() {
        return "このコンピューターのプロキシを通して教室に入るためのアドレス：https://studio.example";
    }

    @Override
    public String mainCode() {
        return "ほかの人もログインしているこのコンピューターでも、番号をたずねます。";
    }

    @Override
    public String mainData() {
        return "作業を保存するファイル。省くと決まった場所。または教室のデータベース：postgresql://HOST/NAME";
    }

    @Override
    public String mainDone() {
        return "できました";
    }

    @Override
    public String mainHeader() {
        return "手持ちの布から、表裏どちらも使える一枚仕立てのパッチワークの包み布を計画します。";
    }

    @Override
    public String mainLan() {
        return "このネットワークの電話やタブレットを入れます。それぞれ、作業部屋に出る番号が要ります。";
    }

    @Override
    public String mainLanguage() {
        return "このヘルプと、ここで言うことの言語：\"en\"、\"ko\"、\"ja\"、\"fr\"、\"de\"、\"es\"。作業部屋はブラウザーの言語で話します。";
    }

    @Override
    public String mainMore(String command) {
        return "すべての希望と例：" + command;
    }

    @Override
    public String mainNew() {
        return "ファイルがなくなった場所に、空の作業部屋を始めます。";
    }

    @Override
    public String mainNoBrowser() {
        return "作業部屋のアドレスを言うだけで、ブラウザーは開きません。";
    }

    @Override
    public String mainPort(String usual) {
        return "作業部屋のポート。ふつうは " + usual + "。使われているときは、次の空きを使います。";
    }

    @Override
    public String mainRestore() {
        return "先に控えをファイルの場所に戻します：\"last\"（最後のもの）または控えの名前。";
    }

    @Override
    public String mainShort() {
        return "手持ちの布では希望のものが作れません。何が足りないかを言います";
    }

    @Override
    public String mainWrong() {
        return "入力したこと、またはファイルの中身が使えません。どこかを言います";
    }

    @Override
    public String manualFiles() {
        return "あなたの作業。そばの workroom.db.copies に控えがあります。";
    }

    @Override
    public String manualSame() {
        return "同じ名のオプションを書かないときに使うもの。";
    }

    @Override
    public String manualSettings() {
        return "HEARTHCLOTH_PORT=4732 のような行のファイル。どちらもないときに使います。";
    }

    @Override
    public String optionBudget(String usual) {
        return "よりよいものを探す時間：\"500ms\"、\"2s\"、\"1min\"。ふつうは \"" + usual + "\"。";
    }

    @Override
    public String optionFile() {
        return "書き込むファイル。";
    }

    @Override
    public String optionFolder() {
        return "書き込むフォルダー：新しいもの、または前に計画したもの。";
    }

    @Override
    public String optionGift() {
        return "包むもの：\"box 30 x 20 x 8 cm\"（箱）、\"bottle 8 x 30 cm\"（瓶）、\"two bottles 8 x 30 cm\"（瓶 2 本）、\"ball 22 cm\"（ボール）、\"books 21 x 15 x 2 cm\"（本）、\"roll 6 x 40 cm\"（筒）。";
    }

    @Override
    public String optionGuide(String usual) {
        return "guide.pdf の詳しさ：\"full\" は一人で縫う人に、\"class\" は教えるための 4～6 ページ。ふつうは \"" + usual + "\"。";
    }

    @Override
    public String optionHelp() {
        return "このヘルプを出します。";
    }

    @Override
    public String optionJson() {
        return "プログラムのために JSON で言います。長さはナノメートル。";
    }

    @Override
    public String optionLanguage() {
        return "言うことと印刷するものの言語：\"en\"、\"ko\"、\"ja\"、\"fr\"、\"de\"、\"es\"、またはその名前。省くと、シェルの言語。";
    }

    @Override
    public String optionPaper() {
        return "印刷する紙：\"a4\" か \"letter\"。省くと、インチなら letter、ほかは A4。";
    }

    @Override
    public String optionReplace() {
        return "すでにあるファイルに上書きします。";
    }

    @Override
    public String optionStash() {
        return "布の一覧ファイル。\"-\" は標準入力を読みます。";
    }

    @Override
    public String optionTie() {
        return "包み方。例：\"errand wrap\"（お使い包み）。省くと、計画はふつうの包み方、size はすべてを言います。";
    }

    @Override
    public String optionUnit() {
        return "使う定規と、数だけのときの単位：\"in\"（インチ）か \"cm\"。省くと、読んだものの書き方のとおり。";
    }

    @Override
    public String optionVersion() {
        return "版と、そのもとになったコミットを言います。";
    }

    @Override
    public String optional() {
        return "[オプション]";
    }

    @Override
    public String planAbout() {
        return "布の一覧を読み、本当に作れるものをいくつか、違う形で計画します。それぞれに番号のフォルダーができ、よいものから順に plan.json、front.svg、back.svg、cut.svg、guide.pdf が入ります。--gift があれば、包んだ姿の tied.svg も入ります。省いたことは代わりに選び、何を選んだかを言います。";
    }

    @Override
    public String planCsv() {
        return "カンマ区切りのテキスト（CSV、UTF-8）。1 行目に列の名前（順序は自由）、そのあとは布 1 枚に 1 行です。必要：fabric（布）、width（幅）、length（長さ、耳にそって）。あれば：count（枚数）、colour（色、\"#8a9a5b\" や \"olive\"）、faces（\"same\" は両面同じ、\"right\" は表だけ）、nap（毛並み：\"any\" か \"lengthwise\"）、washed（水通し：\"yes\" か \"no\"）、unit（単位）、note（メモ）。";
    }

    @Override
    public String planCsvOther() {
        return "帆のしま";
    }

    @Override
    public String planCsvPlain() {
        return "昆布色の麻";
    }

    @Override
    public String planDone() {
        return "計画ができました";
    }

    @Override
    public String planExBest() {
        return "手持ちの布でいちばんよくできるもの、できるだけ大きく";
    }

    @Override
    public String planExBlocks() {
        return "小さなログキャビンを 9 つ並べて";
    }

    @Override
    public String planExCut() {
        return "中心布とストリップは裁ち寸法。大きさはそれで決まります";
    }

    @Override
    public String planExFree() {
        return "はぎれをそのまま縫い合わせて";
    }

    @Override
    public String planExGift() {
        return "その箱を包める大きさ";
    }

    @Override
    public String planExIdea() {
        return "先生の手本を手持ちの布に合わせて";
    }

    @Override
    public String planExInput() {
        return "布の一覧は別のプログラムから";
    }

    @Override
    public String planExPairs() {
        return "ストリップを向かい合わせに縫い、布は 2 種類だけ";
    }

    @Override
    public String planFavourite() {
        return "--guideline とともに：いちばん好きな布。手本がそれを求めるとき、真ん中に使います。";
    }

    @Override
    public String planGuideline() {
        return "自分の希望の代わりに、この手本に従います。いちばん近いものと、守れなかった決まりがわかります。";
    }

    @Override
    public String planHeader() {
        return "布の一覧から包み布を計画します。どの布から何を裁ち、どう縫うか。";
    }

    @Override
    public String planLike() {
        return "色の好きな画像。そのおもな色にいちばん近い布だけを使います。";
    }

    @Override
    public String planNet() {
        return "--gift とともに：net.pdf と net.svg も書きます。折り目をすべて入れた平らな布で、紙で試せます。";
    }

    @Override
    public String planPng() {
        return "絵を PNG でも書きます。";
    }

    @Override
    public String planShort() {
        return "手持ちの布では希望のものが作れません。何が足りないかを言い、いちばん近いものを書きます";
    }

    @Override
    public String planSlips() {
        return "slips.pdf も書きます。ピースごとに留める札です。";
    }

    @Override
    public String readAbout() {
        return "布を平らに、間をあけて、見分けのつく台に置きます。大きさのわかる紙、銀行のカード、またはカッティングマットをいっしょに置きます。真上から、全部が入るように一枚撮ります。布の大きさは、その紙から測ります。はっきりしない布は名を挙げて除きます。入れることもできます。";
    }

    @Override
    public String readDone() {
        return "布の一覧ファイルを書きました";
    }

    @Override
    public String readExPicture() {
        return "読み取ったものを写真にも描きます";
    }

    @Override
    public String readExPlan() {
        return "読み取ったものから計画します";
    }

    @Override
    public String readFile() {
        return "ファイルは布と大きさごとに 1 行です。その布から確実に裁てるいちばん大きな長方形を、定規の目盛りに切り下げて書きます。似た布は一種類とみなし、色の名で呼びます。ファイルで自分の名前に直し、表のある布を書いてください。";
    }

    @Override
    public String readHeader() {
        return "写真から布を読み取り、布の一覧ファイルに書きます。";
    }

    @Override
    public String readKeepDoubtful() {
        return "はっきりしない布も書きます。";
    }

    @Override
    public String readOut() {
        return "書き込む布の一覧ファイル。";
    }

    @Override
    public String readPhoto() {
        return "JPEG か PNG。\"-\" は標準入力を読みます。";
    }

    @Override
    public String readPicture() {
        return "読み取ったものを写真にも描きます。";
    }

    @Override
    public String readSheet() {
        return "写真の中の、大きさのわかるもの：\"sheet\"（測り用紙。線の長さが違うときは \"sheet 19.9 cm\"）、\"a4\"、\"letter\"、\"card\"（銀行のカード）、または \"12 x 18 in\" のような大きさ。";
    }

    @Override
    public String readShort() {
        return "書ける布がありません。わけを言います";
    }

    @Override
    public String readUnit() {
        return "使う定規。省くと、\"letter\" ならインチ、\"a4\" ならセンチ、ほかは用紙の書き方のとおり。";
    }

    @Override
    public String sheetAbout() {
        return "この用紙を入れた写真は、白い紙よりも確かに測れます。印は布とまちがわれず、紙の曲がりもわかります。100 % で、用紙に合わせずに印刷します。それから細い線に定規を当ててください。20 cm（7 7/8 in）です。";
    }

    @Override
    public String sheetExRuler() {
        return "定規で測ると、印刷した線が 19.9 cm のとき";
    }

    @Override
    public String sheetHeader() {
        return "布の間に置く測り用紙を、印刷用に書きます。";
    }

    @Override
    public String sheetPaper() {
        return "プリンターの紙：\"a4\" か \"letter\"。ふつうは \"a4\"。";
    }

    @Override
    public String sizeAbout() {
        return "贈り物は外側を測ります。箱は長さ x 幅 x 高さ、瓶は直径 x 高さ、ボールは直径、本は一冊の高さ x 幅 x 厚さ、筒は直径 x 長さ。底の二辺はどちらが先でもかまいません。大きさはすべて、縁まで仕上げた布のものです。";
    }

    @Override
    public String sizeCloth() {
        return "仕上がった布：\"38 1/2 in\" または \"90 x 100 cm\"。";
    }

    @Override
    public String sizeExCloth() {
        return "その正方形の布で包めるもの";
    }

    @Override
    public String sizeExSteps() {
        return "包み方の手順つき";
    }

    @Override
    public String sizeExTie() {
        return "この包み方だけを、センチで";
    }

    @Override
    public String sizeHeader() {
        return "贈り物に要る布の大きさ、または布で包めるものを言います。";
    }

    @Override
    public String sizeSteps() {
        return "包み方も順に言います。--tie とともに使うのがよいでしょう。";
    }

    @Override
    public String usage() {
        return "使い方:";
    }

    @Override
    public String wishBands() {
        return "--free とともに：横に並ぶ帯（\"across\"）、縦に並ぶ帯（\"down\"）、または \"any\"。ふつうは \"any\"。";
    }

    @Override
    public String wishBars() {
        return "ストリップの裁ち幅：\"5 in\" ならみな同じ、\"5 in, 4 in\" なら周ごと（最後が続く）。見える幅なら \"finished\" を付けます。ふつうは \"stash\"。";
    }

    @Override
    public String wishBlocks() {
        return "小さなログキャビンの横の数と縦の数：\"3 x 3\"。--rounds と --order は、ブロックごとのものになります。";
    }

    @Override
    public String wishClearance() {
        return "つなぎは、交わる縫い目からこれだけ離します：\"1 in\" または \"25 mm\"。";
    }

    @Override
    public String wishContrast() {
        return "\"most\"（できるだけ強く）、\"reads\"（ログキャビンが見分けられる）、\"easy\"（その間）、\"quiet\"（静かに）、\"melts\"（一つの地にとける）。ふつうは \"reads\"。";
    }

    @Override
    public String wishCorner() {
        return "縁の角：\"square\"（四角い角）か \"mitred\"（額縁の角）。";
    }

    @Override
    public String wishFabrics() {
        return "この布だけを使います。カンマ区切りで、最初が真ん中。";
    }

    @Override
    public String wishFell() {
        return "倒した縫い代と縁のある面：\"front\"（正面）か \"back\"（背面）。";
    }

    @Override
    public String wishFree() {
        return "中心布もストリップもなしに、はぎれをそのまま縫い合わせます。--blocks か --rounds とともに使うと、ログキャビンの周りにはぎれ。";
    }

    @Override
    public String wishHearth() {
        return "真ん中の布の裁ち寸法：\"14 in\"、\"12 x 9 in\"。見える大きさなら \"12 in finished\"。ふつうは \"stash\"（手持ちの布にまかせる）。";
    }

    @Override
    public String wishHem() {
        return "縁の 1 つ目 + 2 つ目の折り：\"1/4 + 1/4 in\"。";
    }

    @Override
    public String wishLeastPiece() {
        return "つないだストリップのどの部分も、これより短くは見えません：\"2 in\" または \"5 cm\"。";
    }

    @Override
    public String wishLeeway() {
        return "ストリップをこれだけ長く裁ち、縫ってから切りそろえます：\"1/2 in\" または \"12 mm\"。";
    }

    @Override
    public String wishMiddle() {
        return "--free とともに：真ん中にそのまま置く布の番号。ほかはその周りに。";
    }

    @Override
    public String wishMostJoins() {
        return "ストリップ 1 本のつなぎは多くて、0～40。ふつうは 4。";
    }

    @Override
    public String wishMostTrim() {
        return "--free とともに：布の幅からも長さからも、これより多くは切り落としません：\"1/2 in\"。";
    }

    @Override
    public String wishOffMiddle() {
        return "贈り物を布の中央からずらす：\"1 in right\"（右へ）、\"2 cm left, 3 cm away\"（左へ、向こうへ。手前は \"near\"）。";
    }

    @Override
    public String wishOrder() {
        return "\"round\"（1 本ずつ次の辺に）、\"pairs\"（向かい合う辺に）、\"two-sides\"（中心布は角に残る）。";
    }

    @Override
    public String wishOutside() {
        return "包んだとき見える面：\"front\"（正面）か \"back\"（背面）。ふつうは \"front\"。";
    }

    @Override
    public String wishProposals() {
        return "違うものをいくつ出すか、1～12。ふつうは 4。";
    }

    @Override
    public String wishRounds() {
        return "ストリップの周の数、1～40、または \"stash\"。";
    }

    @Override
    public String wishScheme() {
        return "配色：\"two halves\"（二つの半分）、\"spiral\"（うずまき）、\"turn and turn about\"（かわるがわる）、\"ring by ring\"（周ごとに）、\"light to dark\"（明から暗へ）、\"frames\"（枠）、\"one field\"（一つの地）、\"scattered evenly\"（まんべんなく）、\"one bright scrap\"（明るいはぎれ一つ）。ふつうは \"stash\"。二つ一度に：\"two halves + one bright scrap\"。";
    }

    @Override
    public String wishScraps() {
        return "--free とともに：\"as-they-are\"（はぎれを二つに切らない）、\"cut\"（役に立てば切る）、\"either\"（どちらでも）。ふつうは \"either\"。";
    }

    @Override
    public String wishSeam() {
        return "折り伏せ縫いの狭い縫い代 + 広い縫い代、\"1/4 + 1/2 in\"。または縫い方の名前：\"ssamsol\"、\"french\"、\"lapped\" など。";
    }

    @Override
    public String wishSeed() {
        return "別の整数なら、別の偶然。ふつうは 1。";
    }

    @Override
    public String wishSetting() {
        return "ブロックの明るい半分と暗い半分の並べ方：\"straight furrow\"（ストレートファロー）、\"barn raising\"（バーンレイジング）、\"sunshine and shadow\"（サンシャイン・アンド・シャドー）、\"turned at will\"（向きは自由）、\"all alike\"（みな同じ向き）。";
    }

    @Override
    public String wishShow() {
        return "この布を、包んだとき見えるところに置きます。";
    }

    @Override
    public String wishSize() {
        return "贈り物の代わりに、仕上がりの大きさ：\"38 1/2 in\"（正方形）または \"38 x 30 in\"。";
    }

    @Override
    public String wishSizes() {
        return "--free とともに：\"mixed\"（大小まぜて）、\"even\"（できるだけそろえて）、\"any\"（どちらでも）。ふつうは \"any\"。";
    }

    @Override
    public String wishSlack() {
        return "贈り物のための布を、縫い縮みに備えて最小よりどれだけ大きくするか：\"1/2 in\"、\"12 mm\"、または \"none\"（最小のまま）。";
    }

    @Override
    public String wishTrim() {
        return "ストリップをこれだけ広く裁ち、縫ってから切りそろえます。ふつうは \"none\"（なし）。";
    }

    @Override
    public String wishTurned() {
        return "贈り物の下で布を左へ 4 分の 1 ずつ回す数：0～3。ふつうは 0。";
    }

    @Override
    public String wishWith() {
        return "--free とともに：必ず使う布の番号、カンマ区切り：\"3, 12-2\"。";
    }
}
