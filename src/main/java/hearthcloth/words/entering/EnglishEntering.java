package hearthcloth.words.entering;

/** The room of entering in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishEntering implements EnteringWords {

    @Override
    public String awayAgain() {
        return "Try the page again";
    }

    @Override
    public String awayAnew() {
        return "Write it anew";
    }

    @Override
    public String awayAnewHow() {
        return "Put the file back where it was, or have all your work, as it was at your last change, written there anew.";
    }

    @Override
    public String awayHeading() {
        return "Your work is out of reach";
    }

    @Override
    public String awaySend() {
        return "Send it again";
    }

    @Override
    public String awayTitle() {
        return "Out of reach";
    }

    @Override
    public String awayWrote() {
        return "What you wrote is kept on this page:";
    }

    @Override
    public String bothAgain() {
        return "Do it all the same";
    }

    @Override
    public String bothLook() {
        return "Look at it and leave it so";
    }

    @Override
    public String bothNow() {
        return "As it is now";
    }

    @Override
    public String bothWrote() {
        return "What you wrote";
    }

    @Override
    public String closeClosed() {
        return "The workroom is closed. Your work is kept; this page can go too.";
    }

    @Override
    public String closeElsewhere() {
        return "The workroom runs on another machine. It is closed there.";
    }

    @Override
    public String closeKept() {
        return "Your work is kept with every change. Closing loses nothing.";
    }

    @Override
    public String closeOpen() {
        return "Open it again as you did today: from the menu, or with the command.";
    }

    @Override
    public String closeOthers() {
        return "Phones and tablets that use this workroom cannot go on until you open it again.";
    }

    @Override
    public String closeTitle() {
        return "Close the workroom";
    }

    @Override
    public String copiesAlone() {
        return "What is yours alone you can take out as one file under Made.";
    }

    @Override
    public String copiesAnew() {
        return "Your work is in its place again, as it was at your last change.";
    }

    @Override
    public String copiesBack() {
        return "Put back";
    }

    @Override
    public String copiesBackAbout(String made) {
        return "Put back the copy of " + made;
    }

    @Override
    public String copiesBackAsk(String made) {
        return "Go back to your work as it was on " + made + "? What you have now is copied first.";
    }

    @Override
    public String copiesIsBack(String made) {
        return "Your work is as it was on " + made + ". What you had before is the newest copy in this list.";
    }

    @Override
    public String copiesIsMade(String size) {
        return "Copied: " + size + ".";
    }

    @Override
    public String copiesKeeper() {
        return "In a studio the whole database is copied by whoever keeps it.";
    }

    @Override
    public String copiesLead() {
        return "Each is your whole work as it was then. Putting one back copies what you have now first, so that nothing is lost by trying.";
    }

    @Override
    public String copiesLie(String folder) {
        return "They lie in " + folder + ". Put that folder on another disk now and then: a copy beside the work does not help when the disk breaks.";
    }

    @Override
    public String copiesMade() {
        return "Made";
    }

    @Override
    public String copiesNone() {
        return "There is none yet. One is made at the first opening of each day.";
    }

    @Override
    public String copiesNow() {
        return "Make a copy now";
    }

    @Override
    public String copiesReason(String reason) {
        return (reason.equals("DAILY") ? "first opening of the day" : reason.equals("UPDATE") ? "before a newer Hearthcloth took the file over" : reason.equals("RESTORE") ? "before an older copy was put back" : "asked for");
    }

    @Override
    public String copiesSize() {
        return "Size";
    }

    @Override
    public String copiesStudio() {
        return "Your work lies in the studio's database. Whoever keeps it copies it as a whole; ask there for an older state.";
    }

    @Override
    public String copiesTime(String day, String month, String time, String year) {
        return day + " " + (month.equals("m1") ? "January" : month.equals("m2") ? "February" : month.equals("m3") ? "March" : month.equals("m4") ? "April" : month.equals("m5") ? "May" : month.equals("m6") ? "June" : month.equals("m7") ? "July" : month.equals("m8") ? "August" : month.equals("m9") ? "September" : month.equals("m10") ? "October" : month.equals("m11") ? "November" : "December") + " " + year + ", " + time;
    }

    @Override
    public String copiesTitle() {
        return "Safety copies";
    }

    @Override
    public String copiesTo() {
        return "To what is made";
    }

    @Override
    public String copiesWhy() {
        return "Why";
    }

    @Override
    public String copiesWrongClock(String made) {
        return made + ", by a clock that was wrong then or is wrong now";
    }

    @Override
    public String devicesAsks(String address, String mark, String name) {
        return "A device with the mark " + mark + " asks to come in: " + name + ", from " + address + ". Say yes only where you see that mark on your own.";
    }

    @Override
    public String devicesAtMachine() {
        return "Devices are let in and signed out at the machine itself.";
    }

    @Override
    public String devicesCode() {
        return "Code:";
    }

    @Override
    public String devicesComes(String yes) {
        return (yes.equals("yes") ? "It comes in within some seconds." : "That device stays out.");
    }

    @Override
    public String devicesHere() {
        return "The workroom answers this machine only.";
    }

    @Override
    public String devicesInside() {
        return "Devices that are in";
    }

    @Override
    public String devicesIsOut() {
        return "That device is out.";
    }

    @Override
    public String devicesKeepOut(String mark) {
        return "Keep " + mark + " out";
    }

    @Override
    public String devicesLet() {
        return "Let it in";
    }

    @Override
    public String devicesLetAbout(String mark) {
        return "Let " + mark + " in";
    }

    @Override
    public String devicesNo() {
        return "No";
    }

    @Override
    public String devicesNone() {
        return "None.";
    }

    @Override
    public String devicesNotShared() {
        return "This workroom is not shared. Start it with --lan to use it from other devices.";
    }

    @Override
    public String devicesOnce() {
        return "It lets one device in, once, within ten minutes. Use this on a network you trust only: what goes over it can be read by others on it.";
    }

    @Override
    public String devicesOut() {
        return "Sign out";
    }

    @Override
    public String devicesOutAbout(String name) {
        return "Sign " + name + " out";
    }

    @Override
    public String devicesPhotograph() {
        return "To photograph scraps";
    }

    @Override
    public String devicesPicture() {
        return "QR code of the address with the code";
    }

    @Override
    public String devicesPoint() {
        return "Point the other device's camera at the picture, or open the address there and type the code.";
    }

    @Override
    public String devicesSew() {
        return "To sew";
    }

    @Override
    public String devicesSince(String name, String since) {
        return name + ", since " + since;
    }

    @Override
    public String devicesStart() {
        return "To use it from a phone or tablet on the same network, close it and start it with this word added:";
    }

    @Override
    public String devicesTitle() {
        return "On another device";
    }

    @Override
    public String devicesTooMany() {
        return "Too many devices ask to come in just now. Try again later.";
    }

    @Override
    public String devicesTrust() {
        return "Do so only on a network you trust: what goes over it can be read by others on it.";
    }

    @Override
    public String devicesWait() {
        return "Too many wrong codes. Wait ten minutes, or ask to come in and say yes at the other screen.";
    }

    @Override
    public String devicesWrongCode() {
        return "That code is not right, or not any more. Look at the other screen for the one now.";
    }

    @Override
    public String doorBefore() {
        return "That is more than is read before somebody is let in.";
    }

    @Override
    public String doorBusy() {
        return "The workroom is busy with other large files. Nothing was changed; send it again.";
    }

    @Override
    public String doorCharset() {
        return "What was sent is not written in letters that are known here.";
    }

    @Override
    public String doorClosing() {
        return "The workroom is being closed.";
    }

    @Override
    public String doorEarlier() {
        return "This page is from an earlier start of the workroom. Load it again.";
    }

    @Override
    public String doorLarge(String most) {
        return "That is more than " + most + " MB; send less at a time.";
    }

    @Override
    public String doorLargePhotograph() {
        return "The photograph is larger than 80 MB; send it as the phone took it, or a smaller one.";
    }

    @Override
    public String doorLetters() {
        return "There is something in it that is no letter; type it anew.";
    }

    @Override
    public String doorNotIn() {
        return "This device is not let in, or not any more. Open /join and type the code.";
    }

    @Override
    public String doorNotOurs() {
        return "This change did not come from a page of the workroom.";
    }

    @Override
    public String doorOwnAddress() {
        return "This workroom answers only under its own address on this machine.";
    }

    @Override
    public String enterAtMachine() {
        return "A studio is begun at the machine its workroom runs on; come in there first.";
    }

    @Override
    public String enterBegin() {
        return "Begin";
    }

    @Override
    public String enterBusy() {
        return "Somebody is just coming in from your machine; try again in some seconds.";
    }

    @Override
    public String enterFirst() {
        return "Nobody belongs to this studio yet. Whoever comes in first is its teacher and brings the others in.";
    }

    @Override
    public String enterForgotten() {
        return "Forgotten the passphrase? A teacher gives you a new one.";
    }

    @Override
    public String enterIn() {
        return "Come in";
    }

    @Override
    public String enterLeft() {
        return "You have left. Nobody sees your work here now.";
    }

    @Override
    public String enterLong() {
        return "At least 12 letters; three or four words that do not belong together do well. Nobody can look it up for you.";
    }

    @Override
    public String enterName() {
        return "Name";
    }

    @Override
    public String enterOwn() {
        return "Your stash and your cloths are yours alone here.";
    }

    @Override
    public String enterPassphrase() {
        return "Passphrase";
    }

    @Override
    public String enterTitle(String first) {
        return (first.equals("yes") ? "Begin a studio" : "Come in");
    }

    @Override
    public String enterWrong() {
        return "Name or passphrase is wrong. Try again.";
    }

    @Override
    public String joinAsk() {
        return "Ask to come in";
    }

    @Override
    public String joinAsks() {
        return "This device asks to come in. Its mark:";
    }

    @Override
    public String joinCode() {
        return "Code on the other screen";
    }

    @Override
    public String joinHeading() {
        return "Come into the workroom";
    }

    @Override
    public String joinLook() {
        return "Look for that mark at the machine, under Settings → On another device, and say yes there. This page goes on by itself.";
    }

    @Override
    public String joinName() {
        return "What you call this device";
    }

    @Override
    public String joinNoCode() {
        return "No code at hand? Ask, and say yes at the machine.";
    }

    @Override
    public String joinTablet() {
        return "my tablet";
    }

    @Override
    public String joinTitle() {
        return "Come in";
    }

    @Override
    public String peopleAs() {
        return "As";
    }

    @Override
    public String peopleBring() {
        return "Bring somebody in";
    }

    @Override
    public String peopleBringIn() {
        return "Bring in";
    }

    @Override
    public String peopleCanCome(String name) {
        return name + " can come in now. Tell them the passphrase; they can change it here.";
    }

    @Override
    public String peopleChange() {
        return "Change it";
    }

    @Override
    public String peopleChanged() {
        return "Your passphrase is changed; on other devices you come in anew.";
    }

    @Override
    public String peopleCurrent() {
        return "Current passphrase";
    }

    @Override
    public String peopleFirstPassphrase() {
        return "First passphrase";
    }

    @Override
    public String peopleGive() {
        return "Give it";
    }

    @Override
    public String peopleHasNew(String name) {
        return name + " has a new passphrase. Tell them; they can change it here.";
    }

    @Override
    public String peopleNew() {
        return "New passphrase";
    }

    @Override
    public String peopleNewFor(String name) {
        return "New passphrase for " + name;
    }

    @Override
    public String peopleNewPassphrase() {
        return "A new passphrase";
    }

    @Override
    public String peopleNobody() {
        return "There is nobody of this number.";
    }

    @Override
    public String peopleNotYours() {
        return "That is not your passphrase. Nothing was changed.";
    }

    @Override
    public String peoplePart(String part) {
        return (part.equals("teacher") ? "teacher" : "maker");
    }

    @Override
    public String peopleTeacherOnly() {
        return "Only a teacher does this.";
    }

    @Override
    public String peopleTitle() {
        return "People of this studio";
    }

    @Override
    public String peopleYours() {
        return "Your passphrase";
    }

    @Override
    public String troubleBack() {
        return "Back to where you were";
    }
}
