package io.github.seamstead.api.job;

/**
 * The density of a place of the rammed pack, measured with sand.
 *
 * @param poured sand that left the jug, in kilograms
 * @param inCone sand that fills the cone, in kilograms
 * @param sandDensity density of that sand as it is poured, in kilograms per cubic metre
 * @param dug mass of the damp earth that was dug out, in kilograms
 * @param moisture its water over dry mass, as a part of one
 */
public record SandCone(
    double poured, double inCone, double sandDensity, double dug, double moisture) {}
