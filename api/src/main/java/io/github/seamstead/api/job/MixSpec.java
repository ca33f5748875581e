package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * A mix of a soil with sand.
 *
 * @param id its name, by which layers call it
 * @param soil the soil, by its id
 * @param sand the sand, by its id
 * @param use what the mix is for
 * @param leastClay least share of clay aimed at; instead of the usual one for the use, as a part of
 *     one, if stated
 * @param greatestClay greatest share of clay aimed at, as a part of one, if stated
 * @param sandParts parts of sand to one part of soil by the bucket, as a part of one, if fixed by
 *     hand
 * @param placingMoisture water over dry mass as the mix goes into the floor, as a part of one
 * @param largestGrain largest grain after screening, in metres
 * @param fibre whether chopped straw is mixed in
 * @param straw chopped straw over dry mass, as a part of one, if stated
 * @param plasticLimit plastic limit of the mix, as a part of one, if stated
 * @param design a mix with other aggregates as well, if asked for
 * @param density dry mass over compacted volume, in kilograms per cubic metre
 * @param densitySpread half width of the range of that density, as a part of one
 */
public record MixSpec(
    String id,
    String soil,
    String sand,
    MixUse use,
    Optional<Double> leastClay,
    Optional<Double> greatestClay,
    Optional<Double> sandParts,
    double placingMoisture,
    double largestGrain,
    boolean fibre,
    Optional<Double> straw,
    Optional<Double> plasticLimit,
    Optional<MixDesignSpec> design,
    double density,
    double densitySpread) {}
