package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * Bars of one length that frame members are cut from.
 *
 * @param length length of a bar, in metres
 * @param count how many there are; no limit if left out, if stated
 * @param cost price of one bar, in the money of the site, if stated
 */
public record BarStock(double length, Optional<Integer> count, Optional<Double> cost) {}
