package hearthcloth.words.storing;

/** The room of storing in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishStoring implements StoringWords {

    @Override
    public String again() {
        return "Nothing was changed; try again.";
    }

    @Override
    public String archive(String why) {
        return (why.equals("DAMAGED") ? "This archive is damaged; nothing was taken from it." : why.equals("LARGE") ? "This archive holds more than a workroom can; nothing was taken from it." : why.equals("NONE") ? "This file is no archive of Hearthcloth." : why.equals("NEWER") ? "This archive is of a newer Hearthcloth; nothing was taken from it." : why.equals("PIECES") ? "This archive holds more pieces than a stash can; nothing was taken from it." : why.equals("CHOOSE") ? "Choose an archive first." : why.equals("WHOLE") ? "The file did not arrive whole; try again." : why.equals("BUSY") ? "Another archive is being brought in; try again in a moment." : why.equals("MEMORY") ? "This archive is too large for the memory of this machine; nothing was taken from it." : "The archive could not be written.");
    }

    @Override
    public String archiveIn() {
        return "archive brought in";
    }

    @Override
    public String archiveLacks(String name) {
        return "This file is no whole archive of Hearthcloth: it lacks " + name + ".";
    }

    @Override
    public String archivePass(String most) {
        return "With these the stash would pass " + most + " pieces. Nothing was taken from the archive.";
    }

    @Override
    public String changed(String name, String what) {
        return (what.equals("CLOTH") ? "This cloth has meanwhile been changed in another window. Nothing was changed; look again." : what.equals("PHOTO") ? "This photograph has meanwhile been changed in another window. Nothing was changed; look again." : "" + name + " has meanwhile been changed or used. Nothing was changed; look again.");
    }

    @Override
    public String copy(String path, String why) {
        return (why.equals("FOLDER") ? "The folder of safety copies, " + path + ", cannot be read." : why.equals("MAKE") ? "No safety copy could be made in " + path + "." : why.equals("FULL") ? "The folder cannot be written, or its disk is full." : why.equals("BACK") ? "The copy could not be put back; the workroom is as it was." : why.equals("DAMAGED") ? "The copy " + path + " is damaged or cannot be read. Nothing was changed; choose another one." : "The copy could not be put back: the folder of " + path + " cannot be written.");
    }

    @Override
    public String copyWhole() {
        return "The copy was not whole.";
    }

    @Override
    public String example() {
        return "The example is missing from this build; build Hearthcloth again.";
    }

    @Override
    public String gone(String what) {
        return (what.equals("CLOTH") ? "This cloth has been removed in another window." : what.equals("PHOTO") ? "This photograph has been deleted in another window." : "There is no such copy any more. Nothing was changed.");
    }

    @Override
    public String journal() {
        return "The record of what was done cannot be read.";
    }

    @Override
    public String lacking() {
        return "You don't have enough fabric for this cloth; change it first.";
    }

    @Override
    public String misfit() {
        return "The record of this change does not fit what is kept. Nothing was changed.";
    }

    @Override
    public String misfitAt(String what) {
        return "The record of what was done does not fit what is kept, at \"" + what + "\". Nothing is changed in this file until that is mended: look at everything, take it out as an archive, or put a safety copy back.";
    }

    @Override
    public String missing(String name, String path) {
        return "There is no safety copy " + (name.equals("last") ? "" : "\"" + name + "\" ") + "in " + path + ". Nothing was changed.";
    }

    @Override
    public String openAlready(String address) {
        return (address.equals("none") ? "The workroom is open already" : "The workroom is open already at " + address);
    }

    @Override
    public String openAt(String address) {
        return "The workroom is open at " + address;
    }

    @Override
    public String openCamera(String address) {
        return "A phone that opens this within ten minutes is at its camera: " + address;
    }

    @Override
    public String openClose(String address) {
        return (address.equals("none") ? "The workroom is open already; close it first, then do this again." : "The workroom is open already at " + address + "; close it first, then do this again.");
    }

    @Override
    public String openCode(String code) {
        return "The code to type there: " + code;
    }

    @Override
    public String openFolder(String file) {
        return "The folder of " + file + " cannot be made; choose another file with --data.";
    }

    @Override
    public String openKept(String file) {
        return "Your work is kept in " + file + ". Press Ctrl-C to close.";
    }

    @Override
    public String openLan(String address) {
        return "Other devices on this network come in by " + address;
    }

    @Override
    public String openRestoreStudio() {
        return "A studio's database is restored by whoever keeps it; docs/studio.md says how.";
    }

    @Override
    public String openRestored(String made) {
        return "Put back: the safety copy dated " + made;
    }

    @Override
    public String openStudio(String address) {
        return "The studio's work is kept in " + address + ". Press Ctrl-C to close.";
    }

    @Override
    public String openedDamaged(String copy, String name) {
        return (copy.equals("none") ? "The file " + name + " is damaged and is left as it is. There is no safety copy of it yet; an archive you took out can be brought into a new one." : "The file " + name + " is damaged and is left as it is. The last safety copy is dated " + copy + "; start with \"--restore last\" to put it in its place. The damaged file is kept beside it.");
    }

    @Override
    public String openedFile(String name, String why) {
        return (why.equals("FOLDER") ? "The file " + name + " is a folder. It is left as it is; choose another with --data." : why.equals("UNREAD") ? "The file " + name + " cannot be read. It is left as it is; choose another with --data." : why.equals("FOREIGN") ? "The file " + name + " belongs to another program. It is left as it is; choose another with --data." : why.equals("NEWER") ? "The file " + name + " was written by a newer Hearthcloth, which opens it. It is left as it is; choose another with --data." : "The file " + name + " is left as it is; choose another with --data.");
    }

    @Override
    public String openedGone(String copy, String path) {
        return (copy.equals("none") ? "Your work used to lie in " + path + " and is not there any more. Put the file back, or begin an empty workroom there with --new." : "Your work used to lie in " + path + " and is not there any more. Put the file back, or start with \"--restore last\" to take the safety copy dated " + copy + ", or begin an empty workroom there with --new.");
    }

    @Override
    public String openedOlder(String name, String why) {
        return "The file " + name + " is of an older Hearthcloth and has to be brought up to date, but that could not be done. " + why + " It is left as it is.";
    }

    @Override
    public String person(String most, String why) {
        return (why.equals("BEGUN") ? "Somebody has just begun this studio; ask them to bring you in." : why.equals("NAME") ? "Write a name of up to " + most + " letters." : why.equals("PASSPHRASE") ? "A passphrase has at least " + most + " letters and not the name in it; three or four words that do not belong together do well." : why.equals("TAKEN") ? "There is somebody of this name already; add a second name." : why.equals("WRONG") ? "Too many wrong passphrases for this name; try again in a minute." : why.equals("BUSY") ? "Many come in at this moment; try again in some seconds." : "Only a teacher hands out guidelines and takes them back.");
    }

    @Override
    public String photoUnread() {
        return "What was read off this photograph cannot be read any more.";
    }

    @Override
    public String photosFull() {
        return "The photographs you have begun fill the room there is for them. Take their pieces in, or put one away, then send this one again.";
    }

    @Override
    public String piece(String fabric, String piece) {
        return "Piece " + piece + " of " + fabric;
    }

    @Override
    public String placeArriving(String path) {
        return "No folder for files that arrive can be made in " + path + ".";
    }

    @Override
    public String placeNoPort(String port) {
        return "No port is free from " + port + " on; choose another with --port.";
    }

    @Override
    public String proxy() {
        return "The address of the proxy cannot be read; write it as https://studio.example.";
    }

    @Override
    public String record(String what, String why) {
        return "The record of " + (what.equals("none") ? "this change" : "\"" + what + "\"") + " cannot be read" + (why.equals("none") ? "." : ": " + why + ".");
    }

    @Override
    public String studio(String address, String why) {
        return (why.equals("OPEN") ? "The studio at " + address + " cannot be opened; see that it runs, and check --data." : why.equals("NEWER") ? "This studio is of a newer Hearthcloth. It is left as it is; bring this one up to date." : why.equals("LEFT") ? "The studio is left as it is." : "The studio's address cannot be read; write it as postgresql://NAME@HOST/DATABASE, with letters such as @ or / in a password written as %40 or %2F.");
    }

    @Override
    public String teacher() {
        return "Only a teacher does this.";
    }

    @Override
    public String trouble(String why) {
        return (why.equals("QUICKER") ? "Another window was quicker with something under the same number." : why.equals("SILENT") ? "The studio's database does not answer." : why.equals("HELD") ? "Another program has been holding the file for too long." : why.equals("UNWRITABLE") ? "The file, or the folder it lies in, cannot be written." : why.equals("DISK") ? "The disk did not read or write as it should." : why.equals("DAMAGED") ? "The file is damaged." : why.equals("FULL") ? "The disk is full." : why.equals("UNOPENED") ? "The file cannot be opened or made in its folder." : why.equals("FOREIGN") ? "The file was not written by Hearthcloth." : why.equals("REFUSED") ? "The studio's database refuses this name or password." : why.equals("WORK") ? "Another workroom has been holding this work for too long." : why.equals("NONE") ? "There is no database of this name." : why.equals("STUDIO_FULL") ? "The disk of the studio's database is full." : why.equals("STUDIO_BUSY") ? "The studio's database is busy." : why.equals("STUDIO_UNWRITABLE") ? "The studio's database may not be written under this name." : why.equals("STUDIO") ? "The studio's database does not do what it should." : "The file does not do what it should.");
    }

    @Override
    public String troubleGone(String path) {
        return "Your work is not in its place any more: " + path + " was moved or deleted. Nothing was changed.";
    }

    @Override
    public String work(String path, String why) {
        return (why.equals("OPEN") ? "The workroom cannot be opened." : why.equals("PLACE") ? "Your work lies in its place. Nothing was changed." : why.equals("OTHER") ? "Another file lies at " + path + " now. Move it away first; nothing was changed." : "Your work could not be written to " + path + ".");
    }
}
