package io.github.seamstead.api.diary;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A part of a layer of the floor that is laid.
 *
 * @param date the day
 * @param layer the layer
 * @param sector the sector by its place in the order of laying; empty for the whole layer
 * @param loads how many loads went into the sector; empty for the whole sector
 */
public record LaidWork(
    LocalDate date, String layer, Optional<Integer> sector, Optional<Double> loads) {}
