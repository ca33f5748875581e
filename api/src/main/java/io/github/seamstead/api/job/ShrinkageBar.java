package io.github.seamstead.api.job;

/**
 * A bar of wet soil dried in a mould.
 *
 * @param mould length of the mould, in metres
 * @param gap gap when the pieces of the dry bar are pushed together, in metres
 */
public record ShrinkageBar(double mould, double gap) {}
