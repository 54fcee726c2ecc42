package hearthcloth.photo.heldaside;

import hearthcloth.photo.plane.ReferenceSheet;
import java.util.List;

/** What is really in a photograph. */
public record Truth(Setting setting, ReferenceSheet sheet, List<TruePiece> pieces) {

    /**
     * The scene about the pieces.
     *
     * @param tiltDeg between the camera's axis and upright
     * @param taken the camera in words
     */
    public record Setting(int seed, GroundKind ground, double tiltDeg, double megapixels, String taken) {}

    public Truth {
        pieces = List.copyOf(pieces);
    }
}
