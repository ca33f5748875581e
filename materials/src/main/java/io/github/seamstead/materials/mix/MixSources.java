package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.source.Source;

/** Where the defaults and rules of this package stand. */
final class MixSources {

  static final Source BULK_DENSITY =
      Source.found("", "Engineering tables, dirt and mud densities", "", "loose bulk densities");
  static final Source SPECIFIC_GRAVITY =
      Source.found("Venkatramaiah", "Geotechnical Engineering", "", "table 3.1");
  static final Source COMPACTED =
      Source.commonPractice("hand-compacted dry density of soil, sand and gravel");
  static final Source MASS_BALANCE = Source.derived("balance of dry mass");
  static final Source ABSOLUTE_VOLUME =
      Source.found("ACI", "211.1, absolute volume method", "", "volumes of solids add");

  private MixSources() {}
}
