package io.github.seamstead.materials.mix;

import io.github.seamstead.shared.source.Source;

/** Grounds that several calculations of this package share. */
final class MixSources {

  static final Source MASS_BALANCE = Source.derived("balance of dry mass");

  private MixSources() {}
}
