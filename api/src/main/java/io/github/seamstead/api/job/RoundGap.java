package io.github.seamstead.api.job;

/**
 * A round place without floor, such as a post.
 *
 * @param x from the centre, in metres
 * @param y from the centre, in metres
 * @param diameter its diameter, in metres
 */
public record RoundGap(double x, double y, double diameter) {}
