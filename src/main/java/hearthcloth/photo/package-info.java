/**
 * Reads a photograph of scraps lying beside a sheet of known size: outlines, usable rectangles, colours and doubts.
 *
 * <p>An adapter: decoding and drawing through AWT, image processing through BoofCV, plane geometry through JTS. It does
 * not keep a stash and does not decide what a doubtful reading is good for.
 */
@NullMarked
package hearthcloth.photo;

import org.jspecify.annotations.NullMarked;
