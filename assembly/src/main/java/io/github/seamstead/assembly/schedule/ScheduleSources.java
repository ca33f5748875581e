package io.github.seamstead.assembly.schedule;

import io.github.seamstead.shared.source.Source;

/** The sources of this package. */
final class ScheduleSources {

  static final Source PERT =
      Source.fromMemory(
          "Malcolm, Roseboom, Clark and Fazar",
          "Application of a technique for research and development program evaluation",
          "1959",
          "Operations Research 7");
  static final Source CRITICAL_PATH =
      Source.fromMemory(
          "Kelley and Walker", "Critical-path planning and scheduling", "1959", "forward pass");
  static final Source NORMAL = Source.derived("normal distribution, central limit assumption");

  private ScheduleSources() {}
}
