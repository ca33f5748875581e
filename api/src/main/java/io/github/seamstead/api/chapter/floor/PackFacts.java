package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.water.CompactionControl;

/** Compaction tests as data. */
final class PackFacts {

  private PackFacts() {}

  static Facts<PackControl> pack() {
    return new Facts<PackControl>()
        .text("layer", "the layer", PackControl::layer)
        .range(
            "optimumMoisture",
            "water over dry mass at which it packs densest",
            p -> p.control().curve().optimumMoisture())
        .range(
            "greatestDryDensity_kgPerM3",
            "dry density at that",
            p -> p.control().curve().maximumDryDensity())
        .number(
            "waterToOptimum",
            "water to add over the damp mass of the mix as it is placed",
            p -> p.control().waterToOptimum())
        .many("places", "what was measured in the laid pack", place(), p -> p.control().places())
        .texts("advice", "what to do", p -> p.control().advice());
  }

  private static Facts<CompactionControl.Place> place() {
    return new Facts<CompactionControl.Place>()
        .number("dryDensity_kgPerM3", "its dry density", CompactionControl.Place::dryDensity)
        .number("relative", "over the greatest dry density", CompactionControl.Place::relative)
        .number("saturation", "share of the pores that is water", p -> p.phases().saturation())
        .number("airContent", "share of the volume that is air", p -> p.phases().airContent())
        .flag("passes", "whether it is dense enough", CompactionControl.Place::passes);
  }
}
