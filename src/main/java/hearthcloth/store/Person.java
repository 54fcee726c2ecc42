package hearthcloth.store;


/**
 * Somebody of a studio.
 *
 * @param name as she is called
 */
public record Person(long id, String name, Part part) {

    /** What somebody may do beside her own work. */
    public enum Part {
        /** Brings people in, hands cloths out as guidelines. */
        TEACHER,
        MAKER
    }

    public boolean isTeacher() {
        return part == Part.TEACHER;
    }

    /** Where her own work lies in the database. */
    public String schema() {
        return "person_" + id;
    }
}
