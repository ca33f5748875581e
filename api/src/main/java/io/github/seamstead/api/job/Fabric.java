package io.github.seamstead.api.job;

/**
 * A coated fabric.
 *
 * @param name what it is
 * @param massPerArea mass of the fabric per area, in kilograms per square metre
 * @param thickness thickness of the fabric, in metres
 */
public record Fabric(String name, double massPerArea, double thickness) {}
