package io.github.seamstead.assembly.merge;

import io.github.seamstead.shared.source.Source;

/** The sources of this package. */
final class MergeSources {

  static final Source TEAM_UK =
      Source.found(
          "Health and Safety Executive, as quoted by Network Rail",
          "Lifting and handling in teams",
          "",
          "two thirds of the sum for two, half for three");
  static final Source TEAM_EN =
      Source.found("CEN", "EN 1005-2 Manual handling of machinery", "", "two persons: 0.85");
  static final Source HANDLED =
      Source.derived("sum over the merges of the mass in hand, which is mass times depth");

  static final Source REFERENCE_MASS =
      Source.fromMemory(
          "ISO", "11228-1 Ergonomics, manual handling", "2003", "reference mass 25 kg");

  private MergeSources() {}
}
