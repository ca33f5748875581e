package io.github.seamstead.api.job;

import java.util.List;

/**
 * How a pack compacts, and how dense it was rammed.
 *
 * @param mould volume of the mould, in cubic metres
 * @param points cylinders at different moistures
 * @param particleDensity density of the grains, in kilograms per cubic metre
 * @param cones places of the laid pack
 */
public record CompactionTest(
    double mould, List<CompactionPoint> points, double particleDensity, List<SandCone> cones) {

  /**
   * Copies the lists.
   *
   * @param mould volume of the mould, in cubic metres
   * @param points cylinders at different moistures
   * @param particleDensity density of the grains, in kilograms per cubic metre
   * @param cones places of the laid pack
   */
  public CompactionTest {
    points = List.copyOf(points);
    cones = List.copyOf(cones);
  }
}
