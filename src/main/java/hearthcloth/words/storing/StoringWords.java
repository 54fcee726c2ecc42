package hearthcloth.words.storing;

/** What is said in the room of storing, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface StoringWords {

    String again();

    String archive(String why);

    String archiveIn();

    String archiveLacks(String name);

    String archivePass(String most);

    String changed(String name, String what);

    String copy(String path, String why);

    String copyWhole();

    String example();

    String gone(String what);

    String journal();

    String lacking();

    String misfit();

    String misfitAt(String what);

    String missing(String name, String path);

    String openAlready(String address);

    String openAt(String address);

    String openCamera(String address);

    String openClose(String address);

    String openCode(String code);

    String openFolder(String file);

    String openKept(String file);

    String openLan(String address);

    String openRestoreStudio();

    String openRestored(String made);

    String openStudio(String address);

    String openedDamaged(String copy, String name);

    String openedFile(String name, String why);

    String openedGone(String copy, String path);

    String openedOlder(String name, String why);

    String person(String most, String why);

    String photoUnread();

    String photosFull();

    String piece(String fabric, String piece);

    String placeArriving(String path);

    String placeNoPort(String port);

    String proxy();

    String record(String what, String why);

    String studio(String address, String why);

    String teacher();

    String trouble(String why);

    String troubleGone(String path);

    String work(String path, String why);
}
