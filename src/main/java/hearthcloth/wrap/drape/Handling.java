package hearthcloth.wrap.drape;

/** What is done to a cloth while it comes to rest. */
interface Handling {

    /** How long hands are at work, in seconds. */
    double busy();

    /** Puts every held point where it is at this moment, and says which are held. */
    void hold(double time, Sheet sheet);

    /** Counts on whenever {@link #loosen} changes. */
    int phase(double time);

    /** Says at which points cloth may pass through cloth: what hands hold where they pass one end through another. */
    void loosen(double time, Sheet sheet);

    /**
     * What pulls on a free point beside its weight, in millimetres a second squared.
     *
     * @param pull filled
     */
    void pull(double time, Sheet sheet, int point, double[] pull);
}
