package hearthcloth.words.entering;

/** The room of entering in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "画面をもう一度開く";
    }

    @Override
    public String awayAnew() {
        return "書き直す";
    }

    @Override
    public String awayAnewHow() {
        return "ファイルを元の場所に戻すか、最後に変えたときの作品全体をそこに書き直させてください。";
    }

    @Override
    public String awayHeading() {
        return "作品に届きません";
    }

    @Override
    public String awaySend() {
        return "もう一度送る";
    }

    @Override
    public String awayTitle() {
        return "届きません";
    }

    @Override
    public String awayWrote() {
        return "書いたものはこの画面に残っています：";
    }

    @Override
    public String bothAgain() {
        return "それでもそうする";
    }

    @Override
    public String bothLook() {
        return "見て、そのままにする";
    }

    @Override
    public String bothNow() {
        return "今の状態";
    }

    @Override
    public String bothWrote() {
        return "書いたもの";
    }

    @Override
    public String closeClosed() {
        return "作業室を閉じました。作品は保存されています。この画面も閉じてかまいません。";
    }

    @Override
    public String closeElsewhere() {
        return "作業室は別の機器で動いています。そちらで閉じます。";
    }

    @Override
    public String closeKept() {
        return "変えるたびに保存されています。閉じても何も失われません。";
    }

    @Override
    public String closeOpen() {
        return "今日と同じように、メニューかコマンドでまた開いてください。";
    }

    @Override
    public String closeOthers() {
        return "この作業室を使っている電話やタブレットは、また開くまで使えません。";
    }

    @Override
    public String closeTitle() {
        return "作業室を閉じる";
    }

    @Override
    public String copiesAlone() {
        return "自分の分だけは「できた」の画面から一つのファイルで取り出せます。";
    }

    @Override
    public String copiesAnew() {
        return "作品は、最後に変えたときの状態で元の場所に戻りました。";
    }

    @Override
    public String copiesBack() {
        return "戻す";
    }

    @Override
    public String copiesBackAbout(String made) {
        return made + " の控えに戻す";
    }

    @Override
    public String copiesBackAsk(String made) {
        return made + " の状態に戻しますか？ 今の分を先に控えます。";
    }

    @Override
    public String copiesIsBack(String made) {
        return "作品は " + made + " の状態です。その前の分は、この一覧のいちばん新しい控えです。";
    }

    @Override
    public String copiesIsMade(String size) {
        return "控えました：" + size + "。";
    }

    @Override
    public String copiesKeeper() {
        return "工房では、管理する人がデータベース全体を控えます。";
    }

    @Override
    public String copiesLead() {
        return "それぞれが、その時点の作品全体です。戻すときは今の分を先に控えるので、試しても何も失われません。";
    }

    @Override
    public String copiesLie(String folder) {
        return "控えのある場所：" + folder + "。ときどき別のディスクにも写してください。ディスクが壊れると、そばの控えは役に立ちません。";
    }

    @Override
    public String copiesMade() {
        return "作った時";
    }

    @Override
    public String copiesNone() {
        return "まだありません。毎日、最初に開いたときに一つ作ります。";
    }

    @Override
    public String copiesNow() {
        return "今、控えを作る";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "その日最初に開いたとき" : reason.equals("UPDATE") ? "新しい Hearthcloth に移る前" : reason.equals("RESTORE") ? "前の控えに戻す前" : "頼まれて");
    }

    @Override
    public String copiesSize() {
        return "大きさ";
    }

    @Override
    public String copiesStudio() {
        return "作品は工房のデータベースにあります。管理する人が全体を控えます。前の状態はそちらに頼んでください。";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return year + "年" + (month.equals("m1") ? "1" : month.equals("m2") ? "2" : month.equals("m3") ? "3" : month.equals("m4") ? "4" : month.equals("m5") ? "5" : month.equals("m6") ? "6" : month.equals("m7") ? "7" : month.equals("m8") ? "8" : month.equals("m9") ? "9" : month.equals("m10") ? "10" : month.equals("m11") ? "11" : "12") + "月" + day + "日 " + time;
    }

    @Override
    public String copiesTitle() {
        return "控え";
    }

    @Override
    public String copiesTo() {
        return "「できた」へ";
    }

    @Override
    public String copiesWhy() {
        return "理由";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + "（当時か今の時計が合っていません）";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "印 " + mark + " の機器が入ろうとしています：" + name + "、" + address + "。自分の機器にこの印が見えるときだけ許してください。";
    }

    @Override
    public String devicesAtMachine() {
        return "機器の出し入れは、作業室のある機器で行います。";
    }

    @Override
    public String devicesCode() {
        return "コード：";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "数秒で入ります。" : "その機器は入りません。");
    }

    @Override
    public String devicesHere() {
        return "作業室は、この機器でだけ開きます。";
    }

    @Override
    public String devicesInside() {
        return "入っている機器";
    }

    @Override
    public String devicesIsOut() {
        return "その機器を外しました。";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return mark + " を入れない";
    }

    @Override
    public String devicesLet() {
        return "入れる";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return mark + " を入れる";
    }

    @Override
    public String devicesNo() {
        return "いいえ";
    }

    @Override
    public String devicesNone() {
        return "ありません。";
    }

    @Override
    public String devicesNotShared() {
        return "この作業室は共有されていません。ほかの機器で使うには --lan を付けて始めてください。";
    }

    @Override
    public String devicesOnce() {
        return "10 分以内に、1 台を一度だけ入れます。信頼できるネットワークだけで使ってください。やり取りは、ほかの人に読まれることがあります。";
    }

    @Override
    public String devicesOut() {
        return "外す";
    }

    @Override
    public String devicesOutAbout(String name) {
        return name + " を外す";
    }

    @Override
    public String devicesPhotograph() {
        return "はぎれを撮る";
    }

    @Override
    public String devicesPicture() {
        return "アドレスとコードの QR コード";
    }

    @Override
    public String devicesPoint() {
        return "もう一つの機器のカメラを図に向けるか、アドレスを開いてコードを入れてください。";
    }

    @Override
    public String devicesSew() {
        return "縫う";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + "、" + since + " から";
    }

    @Override
    public String devicesStart() {
        return "同じネットワークの電話やタブレットで使うには、閉じて、次の語を付けて始めます：";
    }

    @Override
    public String devicesTitle() {
        return "ほかの機器で";
    }

    @Override
    public String devicesTooMany() {
        return "今、入ろうとする機器が多すぎます。あとでお試しください。";
    }

    @Override
    public String devicesTrust() {
        return "信頼できるネットワークだけで使ってください。やり取りは、同じネットワークの人に読まれることがあります。";
    }

    @Override
    public String devicesWait() {
        return "間違ったコードが多すぎます。10 分待つか、入りたいと頼んで、もう一つの画面で許してください。";
    }

    @Override
    public String devicesWrongCode() {
        return "コードが違うか、もう使えません。もう一つの画面で今のコードを見てください。";
    }

    @Override
    public String doorBefore() {
        return "入る前に読める大きさを超えています。";
    }

    @Override
    public String doorBusy() {
        return "作業室はほかの大きなファイルで混み合っています。何も変わっていません。もう一度送ってください。";
    }

    @Override
    public String doorCharset() {
        return "送られたものの文字が、ここでは読めません。";
    }

    @Override
    public String doorClosing() {
        return "作業室を閉じているところです。";
    }

    @Override
    public String doorEarlier() {
        return "作業室を始め直す前の画面です。読み込み直してください。";
    }

    @Override
    public String doorLarge(String most) {
        return most + " MB を超えています。分けて送ってください。";
    }

    @Override
    public String doorLargePhotograph() {
        return "写真が 80 MB を超えています。電話で撮ったままか、小さいものを送ってください。";
    }

    @Override
    public String doorLetters() {
        return "文字でないものが含まれています。打ち直してください。";
    }

    @Override
    public String doorNotIn() {
        return "この機器は入っていないか、もう外されています。/join を開いてコードを入れてください。";
    }

    @Override
    public String doorNotOurs() {
        return "この変更は、作業室の画面から来たものではありません。";
    }

    @Override
    public String doorOwnAddress() {
        return "この作業室は、この機器の自分のアドレスでだけ開きます。";
    }

    @Override
    public String enterAtMachine() {
        return "工房は、作業室が動いている機器で始めます。先にそこで入ってください。";
    }

    @Override
    public String enterBegin() {
        return "始める";
    }

    @Override
    public String enterBusy() {
        return "この機器からだれかが入っているところです。数秒後にもう一度お試しください。";
    }

    @Override
    public String enterFirst() {
        return "この工房にはまだだれもいません。最初に入った人が先生になり、ほかの人を入れます。";
    }

    @Override
    public String enterForgotten() {
        return "合言葉を忘れましたか？ 先生が新しくしてくれます。";
    }

    @Override
    public String enterIn() {
        return "入る";
    }

    @Override
    public String enterLeft() {
        return "出ました。ここではもうだれにも見えません。";
    }

    @Override
    public String enterLong() {
        return "12 文字以上。つながりのない言葉を三つか四つ並べるのがよいでしょう。あとからだれも調べられません。";
    }

    @Override
    public String enterName() {
        return "名前";
    }

    @Override
    public String enterOwn() {
        return "ここでは、布と作品は自分だけのものです。";
    }

    @Override
    public String enterPassphrase() {
        return "合言葉";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "工房を始める" : "入る");
    }

    @Override
    public String enterWrong() {
        return "名前か合言葉が違います。もう一度お試しください。";
    }

    @Override
    public String joinAsk() {
        return "入りたいと頼む";
    }

    @Override
    public String joinAsks() {
        return "この機器は入りたいと頼みました。印：";
    }

    @Override
    public String joinCode() {
        return "もう一つの画面のコード";
    }

    @Override
    public String joinHeading() {
        return "作業室に入る";
    }

    @Override
    public String joinLook() {
        return "作業室の機器の「引き出し → ほかの機器で」でこの印を探し、許してください。この画面は自動で進みます。";
    }

    @Override
    public String joinName() {
        return "この機器の呼び名";
    }

    @Override
    public String joinNoCode() {
        return "コードが手元にありませんか？ 頼んで、作業室の機器で許してください。";
    }

    @Override
    public String joinTablet() {
        return "私のタブレット";
    }

    @Override
    public String joinTitle() {
        return "入る";
    }

    @Override
    public String peopleAs() {
        return "役割";
    }

    @Override
    public String peopleBring() {
        return "人を入れる";
    }

    @Override
    public String peopleBringIn() {
        return "入れる";
    }

    @Override
    public String peopleCanCome(String name) {
        return name + " さんが入れるようになりました。合言葉を伝えてください。ここで変えられます。";
    }

    @Override
    public String peopleChange() {
        return "変える";
    }

    @Override
    public String peopleChanged() {
        return "合言葉を変えました。ほかの機器では入り直してください。";
    }

    @Override
    public String peopleCurrent() {
        return "今の合言葉";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "最初の合言葉";
    }

    @Override
    public String peopleGive() {
        return "決める";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " さんの合言葉を新しくしました。伝えてください。ここで変えられます。";
    }

    @Override
    public String peopleNew() {
        return "新しい合言葉";
    }

    @Override
    public String peopleNewFor(String name) {
        return name + " の新しい合言葉";
    }

    @Override
    public String peopleNewPassphrase() {
        return "新しい合言葉";
    }

    @Override
    public String peopleNobody() {
        return "この番号の人はいません。";
    }

    @Override
    public String peopleNotYours() {
        return "合言葉が違います。何も変わっていません。";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "先生" : "作り手");
    }

    @Override
    public String peopleTeacherOnly() {
        return "先生だけができます。";
    }

    @Override
    public String peopleTitle() {
        return "この工房の人";
    }

    @Override
    public String peopleYours() {
        return "自分の合言葉";
    }

    @Override
    public String troubleBack() {
        return "元のところに戻る";
    }
}
