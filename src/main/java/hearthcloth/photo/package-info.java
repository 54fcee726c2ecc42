/**
 * Reads a photograph of scraps lying beside a sheet of known size: outlines, usable rectangles, colours and doubts.
 *
 * <p>An adapter: decoding and drawing through AWT, image processing through BoofCV, plane geometry through JTS. It does
 * not keep a stash and does not decide what a doubtful reading is good for.
 *
 * <p>Words used throughout. A raw pixel is one of the full picture as the lens drew it. A straightened pixel is a raw
 * one with the lens's distortion taken out. A coarse pixel is one of the picture averaged down to about 1200 pixels on
 * its longer side. "The floor" is the plane that the sheet and the pieces lie on, in millimetres. "Ground" is what
 * shows of it between the pieces. Colour differences are CIE 1976 distances in CIELAB unless a line says CIEDE2000. A
 * deviation is one standard deviation.
 *
 * <p>The values that were tuned are in {@code photo.parameter}. Constants that name no source were set by trial on drawn photographs (docs/reading.md says which, and how well the
 * reader then did); they are not measured facts.
 */
@NullMarked
package hearthcloth.photo;

import org.jspecify.annotations.NullMarked;
