package io.github.seamstead.materials.floor;

/**
 * The loads that go into one sector.
 *
 * @param sector the sector
 * @param firstLoad number of the first load that goes into it, wholly or in part
 * @param lastLoad number of the last load that goes into it, wholly or in part
 * @param loads how many loads it takes, with a fraction
 * @param from loads laid before it
 * @param until loads laid when it is full
 */
public record SectorBatches(
    Sector sector, int firstLoad, int lastLoad, double loads, double from, double until) {}
