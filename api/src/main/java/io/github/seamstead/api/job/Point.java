package io.github.seamstead.api.job;

/**
 * A point in the plane of a face: x along the base from its left corner, y up the face.
 *
 * @param x along the base edge from the left corner seen from outside, in metres
 * @param y up the face from the base edge, in metres
 */
public record Point(double x, double y) {}
