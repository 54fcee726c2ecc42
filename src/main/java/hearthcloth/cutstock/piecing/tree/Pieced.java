package hearthcloth.cutstock.piecing.tree;

/** A cloth, or a part of one: a patch out of a scrap, or two things of equal edge sewn together. */
public sealed interface Pieced permits ScrapPatch, Joint {}
