package io.github.seamstead.geometry.pattern;

/**
 * A splice between two parts of a panel.
 *
 * @param joint its name, as marked on both parts
 * @param under id of the part that lies under: the lower or the left one
 * @param over id of the part that lies over: the upper or the right one
 * @param length along the splice line, in metres
 * @param lap cloth of the lower layer beyond the splice line, in metres
 * @param upright true if it runs up the face, false if it runs level
 */
public record Splice(
    String joint, String under, String over, double length, double lap, boolean upright) {}
