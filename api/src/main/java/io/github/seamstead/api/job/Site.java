package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.UnitSystem;
import java.time.LocalDate;
import java.util.Optional;

/**
 * The site and who works there.
 *
 * @param name what the job is called
 * @param note a remark for the first page, if stated
 * @param units the units that the book shows first
 * @param crew the people who do the work, if stated
 * @param basicWind the basic wind speed of a code that prints means, if stated; never beside a gust
 * @param designWind gust speed at the height of the cover by the local code, in metres per second,
 *     if stated
 * @param windFigures wind coefficients of the builder's own, if stated
 * @param pegs pegs tested by pulling them, if stated
 * @param rope the rope that raises the cover, if stated
 * @param start the day on which joining starts, if stated
 */
public record Site(
    String name,
    Optional<String> note,
    UnitSystem units,
    Optional<Crew> crew,
    Optional<BasicWind> basicWind,
    Optional<Double> designWind,
    Optional<WindFigures> windFigures,
    Optional<PegPulls> pegs,
    Optional<SiteRope> rope,
    Optional<LocalDate> start) {}
