package io.github.seamstead.api.job;

/**
 * Wind coefficients of the builder's own, for a shape that the simple ones do not hold for.
 *
 * @param drag sideways force over velocity pressure and greatest silhouette
 * @param uplift upward force over velocity pressure and plan area, pressure from inside included
 * @param source where they stand, such as the code and its clause
 */
public record WindFigures(double drag, double uplift, String source) {}
