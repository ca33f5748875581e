package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.source.Source;

/** Where the defaults and rules of this package stand. */
final class MixSources {

  static final Source MASS_BALANCE = Source.derived("balance of dry mass");
  static final Source ABSOLUTE_VOLUME =
      Source.found("ACI", "211.1, absolute volume method", "", "volumes of solids add");

  private MixSources() {}
}
