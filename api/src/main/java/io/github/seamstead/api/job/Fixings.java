package io.github.seamstead.api.job;

import java.util.Optional;

/**
 * What holds seams and hem.
 *
 * @param method what holds a seam
 * @param spacing distance between fixings along a seam, in metres
 * @param rows rows of fixings in a seam
 * @param packSize fixings in a pack
 * @param adhesiveBead diameter of the bead of adhesive along each seam, in metres, if stated
 * @param cartridge volume of adhesive in a cartridge, in cubic metres
 * @param adhesive what the maker of the adhesive states, if stated
 * @param spare spare fixings and adhesive, as a part of one
 * @param through what a fixing goes through, if stated
 */
public record Fixings(
    FixingMethod method,
    double spacing,
    int rows,
    int packSize,
    Optional<Double> adhesiveBead,
    double cartridge,
    Optional<Adhesive> adhesive,
    double spare,
    Optional<SeamLayers> through) {}
