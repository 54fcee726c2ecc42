package hearthcloth.photo.heldaside;

/** What scraps may lie on. */
public enum GroundKind {
    WOOD,
    CARPET,
    TILES,
    CONCRETE,
    TABLE,
    BEDSHEET,
    MAT
}
