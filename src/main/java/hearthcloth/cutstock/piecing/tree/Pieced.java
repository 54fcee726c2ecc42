package hearthcloth.cutstock.piecing.tree;

import java.util.stream.Stream;

/** A cloth, or a part of one: a patch out of a scrap, or two things of equal edge sewn together. */
public sealed interface Pieced permits ScrapPatch, Joint {

    /** Its patches, in the order of the tree. */
    default Stream<ScrapPatch> patches() {
        return this instanceof Joint joint
                ? Stream.concat(joint.first().patches(), joint.second().patches())
                : Stream.of((ScrapPatch) this);
    }
}
