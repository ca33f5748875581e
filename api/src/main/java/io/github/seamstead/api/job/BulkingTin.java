package io.github.seamstead.api.job;

/**
 * A tin of damp sand that is flooded, to tell how much the sand is bulked.
 *
 * @param damp height of the damp sand, in metres
 * @param flooded height when flooded and stirred, in metres
 */
public record BulkingTin(double damp, double flooded) {}
