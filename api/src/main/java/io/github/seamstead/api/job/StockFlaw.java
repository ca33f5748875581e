package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * A part of a sheet or roll that must not be used.
 *
 * @param x left edge of the flaw from the left edge of the piece, in metres
 * @param y lower edge of the flaw from the lower edge of the piece, in metres
 * @param width width of the flaw along x, in metres
 * @param height height of the flaw along y, in metres
 * @param note what is wrong there, if stated
 */
public record StockFlaw(double x, double y, double width, double height, Optional<String> note) {}
