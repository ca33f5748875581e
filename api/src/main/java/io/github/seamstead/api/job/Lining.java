package io.github.seamstead.api.job;

/**
 * The lining inside the frame.
 *
 * @param fabric what the lining is made of
 * @param airGap clear gap between cover and lining, in metres
 * @param allowance fabric added along each side edge, in metres
 */
public record Lining(Fabric fabric, double airGap, double allowance) {}
