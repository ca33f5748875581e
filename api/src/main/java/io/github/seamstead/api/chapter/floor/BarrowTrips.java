package io.github.seamstead.api.chapter.floor;

/**
 * The barrow trips from mixer to floor for one layer.
 *
 * @param layer the layer's name
 * @param trips for the likely number of loads
 */
public record BarrowTrips(String layer, int trips) {}
