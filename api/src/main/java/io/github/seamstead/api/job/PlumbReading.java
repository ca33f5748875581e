package io.github.seamstead.api.job;

/**
 * Where a plumb line hung from one node falls.
 *
 * @param hung the node that the line hangs from
 * @param mark the node on the ground that it is measured from
 * @param towards the node that the offset is measured towards
 * @param offset distance from the mark along that direction, with its standard uncertainty if
 *     known, in metres
 */
public record PlumbReading(String hung, String mark, String towards, WrittenQuantity offset) {}
