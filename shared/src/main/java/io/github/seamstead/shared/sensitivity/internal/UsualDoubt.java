package io.github.seamstead.shared.sensitivity.internal;

import io.github.seamstead.shared.sensitivity.Scatter;
import io.github.seamstead.shared.source.Source;

/**
 * How far a number of the trade is usually off where nobody states how far.
 *
 * @param scatter how it lies about what is stated
 * @param source where that is taken from
 */
public record UsualDoubt(Scatter scatter, Source source) {}
