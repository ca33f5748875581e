package io.github.seamstead.api.job;

/**
 * One taped distance between two nodes.
 *
 * @param from the node where the tape starts: B1 for base corner 1, T1 for the corner of the
 *     opening above it, A for the apex, C for the ground centre
 * @param to the node where it is read
 * @param distance the reading, with its standard uncertainty if known, in metres
 * @param level whether the tape was held level between plumb lines
 */
public record TapedDistance(String from, String to, WrittenQuantity distance, boolean level) {}
