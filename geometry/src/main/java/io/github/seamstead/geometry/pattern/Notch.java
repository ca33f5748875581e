package io.github.seamstead.geometry.pattern;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A match notch: a short cut from the edge of the cloth towards the stitch line.
 *
 * @param edge the edge of the piece's stitch outline
 * @param ordinal 1 for the one nearest the base, then rising
 * @param fromBase the distance from the base corner along the whole seam, in metres
 * @param onStitch where it points to, on the stitch line, in metres
 * @param onCut where it starts, on the cut line, in metres
 * @param doubled true for a pair of cuts side by side: the first notch above the base, so that a
 *     panel held upside down shows it
 */
public record Notch(
    int edge, int ordinal, double fromBase, Vector2D onStitch, Vector2D onCut, boolean doubled) {}
