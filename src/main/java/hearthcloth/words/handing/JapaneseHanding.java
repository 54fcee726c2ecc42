package hearthcloth.words.handing;

/** The room of handing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "手持ちの布では中心布とストリップが取れません。はぎれをそのまま並べます。";
    }

    @Override
    public String by() {
        return "渡す人（書きたければ）";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "考え：この布のとおり" : choice.equals("open") ? "その日だけ：持っている布しだい" : choice.equals("share") ? "考え：布の幅に対する割合" : choice.equals("square") ? "持っているいちばん大きな正方形" : choice.equals("strips") ? "持っている細長い布の幅で" : choice.equals("any") ? "どの布地でも" : choice.equals("favourite") ? "好きな布地" : choice.equals("lightest") ? "いちばん明るい布地" : "いちばん暗い布地");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + "（" + teacher + "）";
    }

    @Override
    public String classAway() {
        return "取り下げる";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return cloth + " を取り下げる";
    }

    @Override
    public String classAwayAsk(String cloth) {
        return cloth + " を取り下げますか？";
    }

    @Override
    public String classFitAbout(String cloth) {
        return cloth + " を手持ちの布に合わせる";
    }

    @Override
    public String classFits() {
        return "手持ちの布に合います。もうあなたのものです。好きに変えてください。";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + "、" + teacher;
    }

    @Override
    public String classHand() {
        return "みんなに布を配る";
    }

    @Override
    public String classHandOut() {
        return "配る";
    }

    @Override
    public String classHanded(String cloth) {
        return cloth + " をみんなに配りました。";
    }

    @Override
    public String classIsAway() {
        return "取り下げました。これで作った布は、作った人のもとに残ります。";
    }

    @Override
    public String classKeepFirst() {
        return "先に自分の布を保存してください。そうすれば、みんなに配れます。";
    }

    @Override
    public String classLacks() {
        return "布が足りません。何が足りないかは画面にあります。";
    }

    @Override
    public String classLead() {
        return "大きさと順番と仕立て方は先生のもの、布地は自分のものです。";
    }

    @Override
    public String classNone() {
        return "まだ配られた布はありません。";
    }

    @Override
    public String classOne() {
        return "自分の布の一つ";
    }

    @Override
    public String classTitle() {
        return "手本";
    }

    @Override
    public String classWithdrawn() {
        return "この手本は取り下げられました。";
    }

    @Override
    public String empty() {
        return "布の一覧が空です。先に持っている布を入れてください。";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "大きさ" : field.equals("hearth") ? "中心布" : field.equals("bars") ? "ストリップ" : field.equals("rounds") ? "何周か" : field.equals("order") ? "順番" : field.equals("colours") ? "色" : "真ん中");
    }

    @Override
    public String fitsAll() {
        return "手持ちの布に合い、決まりもすべて守っています。もうあなたのものです。好きに変えてください。";
    }

    @Override
    public String inFavourite() {
        return "いちばん好きな布地（考えが求めるとき）";
    }

    @Override
    public String inFile() {
        return "ファイル";
    }

    @Override
    public String inFit() {
        return "手持ちの布に合わせる";
    }

    @Override
    public String inHow() {
        return "だれかから届いた手本ファイルか、布一枚の計画ファイル。手持ちの布に合わせます。決まりを全部守れないときは、いちばん近いものにして、何を曲げたかをお知らせします。";
    }

    @Override
    public String inTitle() {
        return "考えを取り入れる";
    }

    @Override
    public String is() {
        return "これは";
    }

    @Override
    public String lacks() {
        return "この布にはまだ布地が足りません。考えは、作れる布から取り出します。";
    }

    @Override
    public String lead(String cloth) {
        return cloth + " で選んだことごとに、考えの一部か、その日だけのものかを決めてください。縫い方と縁はそのまま付いていきます。";
    }

    @Override
    public String name() {
        return "考えの名前";
    }

    @Override
    public String nearest(String bent, String why) {
        return "手持ちの布でいちばん近いものです。" + bent + " 理由：" + why;
    }

    @Override
    public String noCloth() {
        return "その布はありません。削除されたのかもしれません。";
    }

    @Override
    public String noneFits(String why) {
        return "今の布では、この考えの布はまだ作れません。" + why;
    }

    @Override
    public String outNone() {
        return "中心布とストリップのある布がまだありません。";
    }

    @Override
    public String outTitle() {
        return "自分の布を渡す";
    }

    @Override
    public String own(String example) {
        return "または自分の決まり、例：" + example;
    }

    @Override
    public String refused(String why) {
        return "このファイルはこのままでは使えません。" + why;
    }

    @Override
    public String saveFile() {
        return "手本ファイルとして保存";
    }

    @Override
    public String savePage() {
        return "だれでも開けるページとして保存";
    }

    @Override
    public String scraps() {
        return "はぎれの布はその布地だけのものです。中心布とストリップのある布だけを渡せます。";
    }

    @Override
    public String title() {
        return "考えを渡す";
    }

    @Override
    public String words() {
        return "伝えたいこと";
    }
}
