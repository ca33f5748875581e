package io.github.seamstead.api.job;

/**
 * The joint between neighbouring panels.
 *
 * @param kind how the panels are joined
 * @param allowance fabric added along each side edge, in metres
 */
public record Seam(SeamKind kind, double allowance) {}
