package io.github.seamstead.api.job;

/**
 * One cylinder of a compaction test.
 *
 * @param wetMass mass of the compacted earth without the mould, in kilograms
 * @param moisture its water over dry mass, as a part of one
 */
public record CompactionPoint(double wetMass, double moisture) {}
