package io.github.seamstead.api.job;

/**
 * A corner of a floor in plan.
 *
 * @param x in metres, from any one point
 * @param y in metres, from the same point, at right angles to x
 */
public record OutlineCorner(double x, double y) {}
