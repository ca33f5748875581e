package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * One layer of the floor.
 *
 * @param kind what the layer is
 * @param name what the crew calls it; its kind if left out, if stated
 * @param thickness compacted thickness, in metres, if stated
 * @param material the aggregate of a levelling layer or capillary break, by its id, if stated
 * @param mix the mix of a dry pack or an earth coat, by its id, if stated
 * @param rollWidth width of the membrane on the roll, in metres, if stated
 * @param rollLength length of the membrane on the roll, in metres, if stated
 * @param lap lap of the membrane, in metres
 * @param upstand height of the membrane at the edge, in metres
 * @param compaction how a dry pack compacts, and how dense it was rammed, if tested
 */
public record FloorLayer(
    LayerKind kind,
    Optional<String> name,
    Optional<Double> thickness,
    Optional<String> material,
    Optional<String> mix,
    Optional<Double> rollWidth,
    Optional<Double> rollLength,
    double lap,
    double upstand,
    Optional<CompactionTest> compaction) {}
