package io.github.seamstead.api.chapter.floor;

/**
 * The barrow trips for one earth layer: from the mixer, or from the heap.
 *
 * @param layer the layer's name
 * @param trips for the likely volume
 */
public record BarrowTrips(String layer, int trips) {}
