package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * The wind that the cover is screened for. At most one of gust and mean is stated.
 *
 * @param gust gust speed at the height of the cover by the local code, in metres per second, if
 *     stated
 * @param basic the basic wind speed of a code that prints means, if stated
 * @param figures wind coefficients of the builder's own, if stated
 */
public record SiteWind(
    Optional<Double> gust, Optional<BasicWind> basic, Optional<WindFigures> figures) {}
