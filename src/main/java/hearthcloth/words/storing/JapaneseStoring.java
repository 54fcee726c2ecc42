package hearthcloth.words.storing;

/** The room of storing in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseStoring implements StoringWords {

    @Override
    public String again() {
        return "何も変わっていません。もう一度試してください。";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "この保管ファイルは壊れています。何も取り込んでいません。" : why.equals("LARGE") ? "この保管ファイルには、作業部屋に入りきらないほど入っています。何も取り込んでいません。" : why.equals("NONE") ? "Hearthcloth の保管ファイルではありません。" : why.equals("NEWER") ? "新しい Hearthcloth の保管ファイルです。何も取り込んでいません。" : why.equals("PIECES") ? "この保管ファイルの布は多すぎます。何も取り込んでいません。" : why.equals("CHOOSE") ? "まず保管ファイルを選んでください。" : why.equals("WHOLE") ? "ファイルが全部届きませんでした。もう一度試してください。" : why.equals("BUSY") ? "ほかの保管ファイルを取り込んでいます。少し待ってもう一度試してください。" : why.equals("MEMORY") ? "この保管ファイルはこの機械のメモリには大きすぎます。何も取り込んでいません。" : "保管ファイルを書けませんでした。");
    }

    @Override
    public String archiveIn() {
        return "保管ファイルを取り込み";
    }

    @Override
    public String archiveLacks(String name) {
        return "Hearthcloth の完全な保管ファイルではありません。" + name + " がありません。";
    }

    @Override
    public String archivePass(String most) {
        return "これを入れると布が " + most + " 枚を超えます。何も取り込んでいません。";
    }

    @Override
    public String changed(String name, String what) {
        return (what.equals("CLOTH") ? "その間にこの布が別のウィンドウで変えられました。何も変えていません。もう一度見てください。" : what.equals("PHOTO") ? "その間にこの写真が別のウィンドウで変えられました。何も変えていません。もう一度見てください。" : "その間に " + name + " が変えられたか使われました。何も変えていません。もう一度見てください。");
    }

    @Override
    public String copy(String path, String why) {
        return (why.equals("FOLDER") ? "控えのフォルダー " + path + " が読めません。" : why.equals("MAKE") ? "" + path + " に控えを作れませんでした。" : why.equals("FULL") ? "フォルダーに書けないか、ディスクがいっぱいです。" : why.equals("BACK") ? "控えを戻せませんでした。作業部屋は元のままです。" : why.equals("DAMAGED") ? "控え " + path + " が壊れているか読めません。何も変わっていません。別のものを選んでください。" : "控えを戻せませんでした。" + path + " のフォルダーに書けません。");
    }

    @Override
    public String copyWhole() {
        return "控えが完全ではありませんでした。";
    }

    @Override
    public String example() {
        return "このプログラムには見本が入っていません。Hearthcloth を作り直してください。";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "この布は別のウィンドウで消されました。" : what.equals("PHOTO") ? "この写真は別のウィンドウで消されました。" : "その控えはもうありません。何も変わっていません。");
    }

    @Override
    public String journal() {
        return "行ったことの記録が読めません。";
    }

    @Override
    public String lacking() {
        return "この布には生地が足りません。先に変えてください。";
    }

    @Override
    public String misfit() {
        return "この変更の記録が、保存されているものと合いません。何も変わっていません。";
    }

    @Override
    public String misfitAt(String what) {
        return "「" + what + "」で、行ったことの記録が保存されているものと合いません。直るまでこのファイルは変えません。全部を見るか、保管ファイルとして取り出すか、控えを戻してください。";
    }

    @Override
    public String missing(String name, String path) {
        return path + " に控え" + (name.equals("last") ? "が" : "「" + name + "」が") + "ありません。何も変わっていません。";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "作業部屋はもう開いています" : "作業部屋はもう開いています：" + address);
    }

    @Override
    public String openAt(String address) {
        return "作業部屋を開きました：" + address;
    }

    @Override
    public String openCamera(String address) {
        return "10 分以内にスマートフォンでこれを開くと、すぐカメラになります：" + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "作業部屋はもう開いています。先に閉じてから、もう一度してください。" : "作業部屋はもう開いています（" + address + "）。先に閉じてから、もう一度してください。");
    }

    @Override
    public String openCode(String code) {
        return "そこで入力するコード：" + code;
    }

    @Override
    public String openFolder(String file) {
        return file + " のフォルダーを作れません。--data でほかのファイルを選んでください。";
    }

    @Override
    public String openKept(String file) {
        return "作業は " + file + " に保存されます。閉じるには Ctrl-C を押してください。";
    }

    @Override
    public String openLan(String address) {
        return "このネットワークのほかの機器はここから入ります：" + address;
    }

    @Override
    public String openRestoreStudio() {
        return "工房のデータベースは、管理する人が復元します。方法は docs/studio.md にあります。";
    }

    @Override
    public String openRestored(String made) {
        return "戻した安全コピーの日付：" + made;
    }

    @Override
    public String openStudio(String address) {
        return "工房の作業は " + address + " に保存されます。閉じるには Ctrl-C を押してください。";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return (copy.equals("none") ? "ファイル " + name + " は壊れているので、そのままにします。まだ控えがありません。取り出してある保管ファイルは新しいものに入れられます。" : "ファイル " + name + " は壊れているので、そのままにします。最後の控えは " + copy + " のものです。「--restore last」で始めると、その場所に置かれます。壊れたファイルはそばに残ります。");
    }

    @Override
    public String openedFile(String name, String why) {
        return (why.equals("FOLDER") ? "" + name + " はフォルダーです。そのままにします。--data で別のものを選んでください。" : why.equals("UNREAD") ? "ファイル " + name + " は読めません。そのままにします。--data で別のものを選んでください。" : why.equals("FOREIGN") ? "ファイル " + name + " は別のプログラムのものです。そのままにします。--data で別のものを選んでください。" : why.equals("NEWER") ? "ファイル " + name + " はもっと新しい Hearthcloth が書いたもので、それで開けます。そのままにします。--data で別のものを選んでください。" : "ファイル " + name + " はそのままにします。--data で別のものを選んでください。");
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "作品は " + path + " にありましたが、もうありません。ファイルを戻すか、--new でそこに空の作業室を始めてください。" : "作品は " + path + " にありましたが、もうありません。ファイルを戻すか、「--restore last」で始めて " + copy + " の控えを使うか、--new でそこに空の作業室を始めてください。");
    }

    @Override
    public String openedOlder(String name, String why) {
        return "ファイル " + name + " は前の Hearthcloth のもので、新しくする必要がありますが、できませんでした。" + why + " そのままにします。";
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "たった今だれかがこの工房を始めました。入れてもらってください。" : why.equals("NAME") ? "名前を " + most + " 文字までで書いてください。" : why.equals("PASSPHRASE") ? "合言葉は " + most + " 文字以上で、名前を含まないものにしてください。関わりのない三つか四つの言葉がよいでしょう。" : why.equals("TAKEN") ? "その名前の人がもういます。もう一つ名前を足してください。" : why.equals("WRONG") ? "この名前で合言葉の間違いが多すぎます。一分後にもう一度試してください。" : why.equals("BUSY") ? "今たくさんの人が入っています。数秒後にもう一度試してください。" : "手本を配ったり取り下げたりできるのは、教える人だけです。");
    }

    @Override
    public String photoUnread() {
        return "この写真から読み取ったものが、もう読めません。";
    }

    @Override
    public String photosFull() {
        return "始めた写真で場所がいっぱいです。その布を入れるか一つ片付けて、もう一度送ってください。";
    }

    @Override
    public String piece(String fabric, String piece) {
        return fabric + " の布 " + piece;
    }

    @Override
    public String placeArriving(String path) {
        return path + " に、届いたファイルのフォルダーを作れません。";
    }

    @Override
    public String placeNoPort(String port) {
        return port + " から先に空いているポートがありません。--port で別のものを選んでください。";
    }

    @Override
    public String proxy() {
        return "プロキシのアドレスを読めません。https://studio.example のように書いてください。";
    }

    @Override
    public String record(String what, String why) {
        return (what.equals("none") ? "この変更" : "「" + what + "」") + "の記録が読めません" + (why.equals("none") ? "。" : ": " + why + "。");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "" + address + " の工房を開けません。動いているかを見て、--data を確かめてください。" : why.equals("NEWER") ? "新しい Hearthcloth の工房です。そのままにしてあります。こちらを新しくしてください。" : why.equals("LEFT") ? "工房はそのままにしてあります。" : "工房のアドレスが読めません。postgresql://NAME@HOST/DATABASE と書き、パスワードの @ や / は %40 や %2F と書いてください。");
    }

    @Override
    public String teacher() {
        return "これは教える人だけができます。";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "別のウィンドウが同じ番号で先に済ませました。" : why.equals("SILENT") ? "工房のデータベースが答えません。" : why.equals("HELD") ? "別のプログラムがファイルを長くつかんだままです。" : why.equals("UNWRITABLE") ? "ファイルかそのフォルダーに書けません。" : why.equals("DISK") ? "ディスクが正しく読み書きできませんでした。" : why.equals("DAMAGED") ? "ファイルが壊れています。" : why.equals("FULL") ? "ディスクがいっぱいです。" : why.equals("UNOPENED") ? "ファイルを開くことも作ることもできません。" : why.equals("FOREIGN") ? "Hearthcloth が書いたファイルではありません。" : why.equals("REFUSED") ? "工房のデータベースがこの名前かパスワードを受け付けません。" : why.equals("WORK") ? "別の作業部屋がこの仕事を長くつかんだままです。" : why.equals("NONE") ? "その名前のデータベースはありません。" : why.equals("STUDIO_FULL") ? "工房のデータベースのディスクがいっぱいです。" : why.equals("STUDIO_BUSY") ? "工房のデータベースが混んでいます。" : why.equals("STUDIO_UNWRITABLE") ? "この名前では工房のデータベースに書けません。" : why.equals("STUDIO") ? "工房のデータベースが正しく動きません。" : "ファイルが正しく動きません。");
    }

    @Override
    public String troubleGone(String path) {
        return "作業が元の場所にありません。" + path + " が移されたか消されました。何も変わっていません。";
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "作業部屋を開けません。" : why.equals("PLACE") ? "作業は元の場所にあります。何も変わっていません。" : why.equals("OTHER") ? "今 " + path + " に別のファイルがあります。先に移してください。何も変わっていません。" : "作業を " + path + " に書けませんでした。");
    }
}
