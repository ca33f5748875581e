package io.github.seamstead.api.job;

/**
 * Shares of clay, silt and sand from a laboratory.
 *
 * @param clay share of clay in dry mass, as a part of one
 * @param silt share of silt in dry mass, as a part of one
 * @param sand share of sand in dry mass, as a part of one
 * @param limits the limits between clay, silt and sand
 * @param uncertainty standard uncertainty of each share, as a part of one
 */
public record LaboratorySheet(
    double clay, double silt, double sand, SizeSystem limits, double uncertainty) {}
