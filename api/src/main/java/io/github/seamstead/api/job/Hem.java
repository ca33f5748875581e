package io.github.seamstead.api.job;

/**
 * The lower edge.
 *
 * @param kind turned, reinforced or raw
 * @param allowance fabric added along the lower edge, in metres
 */
public record Hem(HemKind kind, double allowance) {}
