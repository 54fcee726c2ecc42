package hearthcloth.words.making;

/** The room of making in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseMaking implements MakingWords {

    @Override
    public String amissBar(String bar) {
        return "ストリップ " + bar + " が短い：端まで測った長さ";
    }

    @Override
    public String amissBarNoWay(String told) {
        return told + " 今ある布では続ける方法が見つかりませんでした。布を足すか、最後のストリップをほどいて別のものを縫い付けてください。";
    }

    @Override
    public String amissBarPage() {
        return "ストリップが短い";
    }

    @Override
    public String amissBarSewn(String bar) {
        return "ストリップ " + bar + " はもう縫い付けてあります。先にほどいてください。";
    }

    @Override
    public String amissBarTold(String bar, String measured, String planned) {
        return "ストリップ " + bar + " は " + measured + "、計画では " + planned + " でした。";
    }

    @Override
    public String amissRedo() {
        return "この手順をやり直す";
    }

    @Override
    public String amissTitle() {
        return "うまくいかなかった";
    }

    @Override
    public String back() {
        return "戻る";
    }

    @Override
    public String care() {
        return "注意";
    }

    @Override
    public String caution(String topic, String words) {
        return topic + "：" + words;
    }

    @Override
    public String cutAgain() {
        return "布は一覧に戻り、裁断の印も付いたままです。";
    }

    @Override
    public String cutAlready() {
        return "この布はもう裁断してあります。";
    }

    @Override
    public String cutAmiss() {
        return "この計画のままでは裁断できません。理由は下にあります。";
    }

    @Override
    public String cutChanged() {
        return "裁断したあとで何かが変わりました。先に、布の画面の「元に戻す」で戻してください。";
    }

    @Override
    public String cutGone() {
        return "この裁断はもう計画にありません。画面を読み込み直してください。";
    }

    @Override
    public String cutIsCut(int n) {
        return "裁断しました。残り布 " + n + " 枚が布の一覧に戻りました。";
    }

    @Override
    public String cutNone() {
        return "その裁断はありません。";
    }

    @Override
    public String cutPieceGone() {
        return "この布はもう計画にありません。画面を読み込み直してください。";
    }

    @Override
    public String cutTicked(int n) {
        return "裁断 " + n + " か所に印があります。";
    }

    @Override
    public String cutTitle(String cloth) {
        return "裁つ：" + cloth;
    }

    @Override
    public String cutWhich() {
        return "どの布を裁断しますか？";
    }

    @Override
    public String done() {
        return "できた";
    }

    @Override
    public String height() {
        return "高さ";
    }

    @Override
    public String keys() {
        return "スペースキーか Page Down で「できた」、Page Up で「戻る」。フットスイッチもこのキーを送ります。";
    }

    @Override
    public String length() {
        return "長さ";
    }

    @Override
    public String listed(String before, String last) {
        return before + "、" + last;
    }

    @Override
    public String lookAgain() {
        return "もう一度見てください";
    }

    @Override
    public String matAll() {
        return "すべての布";
    }

    @Override
    public String matAllAreCut() {
        return "布はすべて裁断しました。";
    }

    @Override
    public String matAllDone(int n) {
        return (n == 2 ? "2 か所とも切った" : "" + n + " か所すべて切った");
    }

    @Override
    public String matAllIsCut() {
        return "すべて切った";
    }

    @Override
    public String matAsItIs() {
        return "そのまま使います。切るところはありません。";
    }

    @Override
    public String matClothIsCut() {
        return "この布は裁断が済みました。";
    }

    @Override
    public String matCount(String all, String done) {
        return done + "/" + all;
    }

    @Override
    public String matCounted() {
        return "裁断済み";
    }

    @Override
    public String matCutOf(String all, String n) {
        return "裁断 " + n + "/" + all;
    }

    @Override
    public String matDescribed(String fabric, String size) {
        return fabric + "、" + size;
    }

    @Override
    public String matGives(String gives) {
        return "できるもの：" + gives + "。";
    }

    @Override
    public String matLeave() {
        return "使った布は一覧から消え、残り布が戻ります。";
    }

    @Override
    public String matMore() {
        return "うまくいかない？ その他";
    }

    @Override
    public String matNextPiece() {
        return "次の布";
    }

    @Override
    public String matNow(String measure, String n) {
        return "裁断 " + n + "：" + measure + "。";
    }

    @Override
    public String matOff(String side) {
        return (side.equals("left") ? "左" : side.equals("right") ? "右" : side.equals("top") ? "上" : "下") + "を切り落とす";
    }

    @Override
    public String matPicture() {
        return "裁断の図";
    }

    @Override
    public String matPiece(String done, String n, String words) {
        return "布 " + n + "、" + words + (done.equals("yes") ? "、裁断済み" : "");
    }

    @Override
    public String matPieceIsCut() {
        return "この布は裁断が済みました。";
    }

    @Override
    public String matPin() {
        return "札をとめます。";
    }

    @Override
    public String matPrintSlips() {
        return "札をすべて印刷";
    }

    @Override
    public String matProgress(String all, String done, String n) {
        return "布 " + all + " 枚中 " + n + " 枚目、" + done + " 枚済み。";
    }

    @Override
    public String matSew() {
        return "縫う";
    }

    @Override
    public String matShown(String n, String words) {
        return "布 " + n + "：" + words;
    }

    @Override
    public String measureAgain() {
        return "戻って測り直す";
    }

    @Override
    public String measuredBefore() {
        return "前の手順がまだ済んでいません。";
    }

    @Override
    public String measuredCrooked(String by, String trim) {
        return "片方の端がもう片方より " + by + " 長くなっています。先に四角を整え、" + trim + " に切りそろえてから、測り直してください。";
    }

    @Override
    public String measuredFar(String planned, String written) {
        return written + " は、計画の " + planned + " とかなり違います。もう一度測ってください。";
    }

    @Override
    public String measuredFarMeant(String meant, String planned, String written) {
        return written + " は、計画の " + planned + " とかなり違います。" + meant + " ですか？";
    }

    @Override
    public String measuredIsIt(String meant) {
        return meant + " ですか？";
    }

    @Override
    public String measuredIsRight() {
        return "これで合っていますか？";
    }

    @Override
    public String measuredOtherStep() {
        return "ストリップを縫い付けたあとで測ります。これは別の手順です。";
    }

    @Override
    public String measuredScraps() {
        return "はぎれの布には切り直すストリップがありません。糸 1～2 本を超えてずれた縫い目はほどいてください。";
    }

    @Override
    public String measuredSquare() {
        return "先に四角を整える";
    }

    @Override
    public String measuredSwapped() {
        return "縦と横が逆ですか？";
    }

    @Override
    public String measuredSwappedHow(String planned, String size) {
        return size + " は縦と横が逆です。約 " + planned + " のはずです。正面を上にして、幅を先に書きます。";
    }

    @Override
    public String measuredTitle() {
        return "測った大きさ";
    }

    @Override
    public String measuredTold(String across, String both, String height, String size, String up, String width) {
        return "大きさは " + size + " です。計画より、" + (across.equals("less") ? "幅が " + width + " 狭" + (up.equals("same") ? "いです" : "く") : across.equals("more") ? "幅が " + width + " 広" + (up.equals("same") ? "いです" : "く") : "") + (both.equals("yes") ? "、" : "") + (up.equals("less") ? "高さが " + height + " 低いです" : up.equals("more") ? "高さが " + height + " 高いです" : "") + "。";
    }

    @Override
    public String measuredTooMany(String written) {
        return "「" + written + "」は寸法が三つ以上あります。一つか、両端の二つを書いてください。";
    }

    @Override
    public String more() {
        return "その他";
    }

    @Override
    public String printGuide() {
        return "印刷用の手引き全体";
    }

    @Override
    public String printPage() {
        return "この画面を印刷";
    }

    @Override
    public String sewAsPlanned() {
        return "計画どおりです。続けて縫ってください。";
    }

    @Override
    public String sewAsleep() {
        return "途中で画面が消えることがあります。消えないように設定してください。";
    }

    @Override
    public String sewBackToCut() {
        return "裁断に戻る";
    }

    @Override
    public String sewDiffers() {
        return "私のは違う";
    }

    @Override
    public String sewFinish() {
        return "縫い上がり：写真と札";
    }

    @Override
    public String sewFollows() {
        return "どうなるか見る";
    }

    @Override
    public String sewHours(String hours, String minutes) {
        return hours + " 時間 " + minutes + " 分";
    }

    @Override
    public String sewHow() {
        return "やり方は？";
    }

    @Override
    public String sewHowLabel() {
        return "やり方";
    }

    @Override
    public String sewLookOnly() {
        return "すべて切るまでは、見るだけです。";
    }

    @Override
    public String sewMeasureHow(String unit) {
        return "縫ったあとで測ります。数は一つで十分です。裁ち端まで全部測ります。両端で違うときは、" + (unit.equals("in") ? "12 1/8 ; 12 3/8" : "31.2 ; 31.7") + " のように両方書きます。";
    }

    @Override
    public String sewMeasures() {
        return "今の大きさは";
    }

    @Override
    public String sewMeasuresHow() {
        return "幅 × 高さ、正面が上";
    }

    @Override
    public String sewMinutes(String minutes) {
        return minutes + " 分";
    }

    @Override
    public String sewNext() {
        return "次へ";
    }

    @Override
    public String sewNoStep() {
        return "その手順はありません。画面を読み込み直してください。";
    }

    @Override
    public String sewNotCut() {
        return "この布はまだ裁断が終わっていません。先に裁断に印を付け、「すべて切った」を押してください。";
    }

    @Override
    public String sewPace(String time) {
        return "これまでの速さで、あと約" + time + "です。";
    }

    @Override
    public String sewPlanned() {
        return "計画し直しました。続けて縫ってください。";
    }

    @Override
    public String sewPlannedCut() {
        return "計画し直しました。先にこれを切ってから、続けて縫ってください。";
    }

    @Override
    public String sewProgress(String all, String done, String n) {
        return "手順 " + n + "/" + all + (done.equals("yes") ? "、済み" : "");
    }

    @Override
    public String sewRead() {
        return "読み上げる";
    }

    @Override
    public String sewSaid(String progress, String title) {
        return progress + "。" + title;
    }

    @Override
    public String sewThick(String where) {
        return where + "。そこはゆっくり縫います。";
    }

    @Override
    public String sewTitle(String cloth) {
        return "縫う：" + cloth;
    }

    @Override
    public String sewToCut() {
        return "裁断へ";
    }

    @Override
    public String sewToNow() {
        return "今の手順へ";
    }

    @Override
    public String sewWhich() {
        return "どの布を縫いますか？";
    }

    @Override
    public String sewWhole(String all, String done) {
        return "布全体：" + all + " 手順のうち " + done + " 手順が済みました";
    }

    @Override
    public String sewYes() {
        return "はい、そのとおり";
    }

    @Override
    public String showWays() {
        return "続け方を見る";
    }

    @Override
    public String sideAlike() {
        return "この布は両面が同じに見えます。続けて縫ってください。";
    }

    @Override
    public String sideCannot() {
        return "それはできません。切ってある残りのストリップが本体に合わなくなります。";
    }

    @Override
    public String sideFrayed() {
        return "ほどくと端がほつれて少し減ります。縫ったあとで測り直してください。";
    }

    @Override
    public String sideGoBack() {
        return "ほどいて戻る";
    }

    @Override
    public String sideLead(String bar, String wrong) {
        return "ストリップ " + bar + " は" + (wrong.equals("face") ? "裏が上になっています" : "本体の反対側に付いています") + "。どうしますか？";
    }

    @Override
    public String sideLeave() {
        return "そのままにする";
    }

    @Override
    public String sideLeft() {
        return "これからは図もそのように描きます。";
    }

    @Override
    public String sideLooks() {
        return "正面はこうなります。切ったりほどいたりするものはありません。";
    }

    @Override
    public String sideNoBar() {
        return "この手順ではストリップを縫い付けません。ストリップの手順を選んでください。";
    }

    @Override
    public String sideNoFit() {
        return "そのままでは残りのストリップが合いません。ほどいてください。";
    }

    @Override
    public String sideNotSewn() {
        return "この手順はまだ縫っていません。";
    }

    @Override
    public String sidePage() {
        return "縫い間違い";
    }

    @Override
    public String sidePicture(String bar, String wrong) {
        return "正面、ストリップ " + bar + " は" + (wrong.equals("face") ? "反対の面が上" : "本体の反対側");
    }

    @Override
    public String sideRight() {
        return "戻る（合っていた）";
    }

    @Override
    public String sideSteps(int n) {
        return "そのストリップまで、最後から順に " + n + " 手順をほどいて、やり直します。";
    }

    @Override
    public String sideUnpick() {
        return "ほどく";
    }

    @Override
    public String sideWrong(String bar, String wrong) {
        return "ストリップ " + bar + "：" + (wrong.equals("face") ? "裏が上になっている" : "本体の反対側に付けた");
    }

    @Override
    public String smallAcross() {
        return "横";
    }

    @Override
    public String smallAllCut() {
        return "この布のピースはすべて裁断済みです。間違えた裁断の印を外してください。";
    }

    @Override
    public String smallDown() {
        return "上から下まで";
    }

    @Override
    public String smallHow() {
        return "この布で、正しく切れたところに印を付けてください。図に置かれた向きで、次のピースは何センチ（インチ）ですか？";
    }

    @Override
    public String smallLarger() {
        return "残りが元の布より大きくなることはありません。両方の寸法を確かめてください。";
    }

    @Override
    public String smallNoWay() {
        return "今ある布では、続ける方法が見つかりませんでした。";
    }

    @Override
    public String smallPage() {
        return "小さく切れました";
    }

    @Override
    public String smallTitle() {
        return "ピースが小さく切れた";
    }

    @Override
    public String smallWrite() {
        return "今のピースの横と縦の寸法を書いてください。";
    }

    @Override
    public String waysAfterCut(String way) {
        return (way.equals("WIDER_NEIGHBOURS") ? "そのまま使い、隣のストリップを広く切る" : way.equals("ANOTHER_PIECE") ? "切り直す" : way.equals("JOINED_STRIP") ? "細長い布を足す" : "そのまま使い、布を小さくする");
    }

    @Override
    public String waysCut(String told) {
        return told + " 切ったものはそのままです。どう続けますか？";
    }

    @Override
    public String waysGone() {
        return "その方法はありません。測り直してください。";
    }

    @Override
    public String waysLacking() {
        return "残りの布が足りません。";
    }

    @Override
    public String waysMeasured(String way) {
        return (way.equals("accept") ? "そのまま縫い続ける" : way.equals("keep") ? "大きさを守る：これからのストリップを切り直す" : "細い一周を足す");
    }

    @Override
    public String waysNoCut() {
        return "切ってあるストリップはどれも長さが足ります。切るものはなく、切りそろえる量が少し変わるだけです。";
    }

    @Override
    public String waysPicture(String size) {
        return "そのときの布、" + size;
    }

    @Override
    public String waysSewn(String told) {
        return told + " 縫ったものはそのままです。どう続けますか？";
    }

    @Override
    public String waysShortBar(String way) {
        return (way.equals("JOINED_STRIP") ? "細長い布を足す" : way.equals("ANEW") ? "ストリップを作り直す" : way.equals("PIECED") ? "ストリップをつないで作り直す" : "そのまま使い、本体をそれに合わせて切る");
    }

    @Override
    public String waysSize(String size) {
        return "布は " + size + " になります。";
    }

    @Override
    public String waysSizeLabel() {
        return "布の大きさ";
    }

    @Override
    public String waysThis() {
        return "この方法にする";
    }

    @Override
    public String waysTies(String gift, String tie) {
        return tie + "で包めるもの：" + gift + "。";
    }

    @Override
    public String waysToCut(String bars, int n, int pieces) {
        return "今切るもの：" + "ストリップ" + " " + bars + "、布 " + "" + pieces + " 枚" + "から。";
    }

    @Override
    public String width() {
        return "幅";
    }

    @Override
    public String wrongAllUsed() {
        return "切ってあるピースはすべてそのまま使います。";
    }

    @Override
    public String wrongChange() {
        return "ストリップか幅を変えてください。";
    }

    @Override
    public String wrongFewerJoins(int n) {
        return "つなぎが " + "" + n + " か所" + "減ります。";
    }

    @Override
    public String wrongHow() {
        return "だめになったところの印を外してください。印のあるピースはそのままで、残りを計画し直します。この布でまだ切れる、いちばん大きな部分の寸法は？ 何も残っていなければ、どちらも空けておきます。";
    }

    @Override
    public String wrongLateLacking(String why) {
        return "これから切る分の布が足りません。" + why + " 布を足してから、もう一度知らせてください。";
    }

    @Override
    public String wrongLatePlanned() {
        return "残りの布で計画し直しました。縫ったものと切ったものはそのままです。";
    }

    @Override
    public String wrongMoreJoins(int n) {
        return "つなぎが " + "" + n + " か所" + "増えます。";
    }

    @Override
    public String wrongPlan() {
        return "残りを計画し直す";
    }

    @Override
    public String wrongPlanned() {
        return "残りの布で計画し直しました。";
    }

    @Override
    public String wrongSameJoins() {
        return "つなぎの数は前と同じです。";
    }

    @Override
    public String wrongScraps() {
        return "はぎれの布は、間違えたあとで計画し直しません。裁断寸法以上の別のはぎれからピースを切るか、残った布で新しい案を探してください。";
    }

    @Override
    public String wrongSomeUsed(int n, int used) {
        return "切ってあるピース " + "" + n + " 枚" + "のうち、" + "" + used + " 枚" + "をそのまま使います。";
    }

    @Override
    public String wrongTitle() {
        return "切り間違えた";
    }
}
