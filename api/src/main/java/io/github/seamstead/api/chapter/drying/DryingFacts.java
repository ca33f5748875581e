package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.DryingForecast;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.Optional;
import java.util.OptionalDouble;

/** Drying, cracks and repair as data. */
final class DryingFacts {

  private DryingFacts() {}

  static Facts<DryingPart> drying() {
    return new Facts<DryingPart>()
        .text("layer", "its name", d -> d.layer().name())
        .number("thickness_m", "its thickness", d -> d.layer().thickness())
        .number(
            "balanceMoisture", "water over dry mass when dry", d -> d.forecast().balanceMoisture())
        .many("milestones", "days to each state", milestone(), d -> d.forecast().milestones())
        .maybe(
            "aired",
            "the same with " + Numbers.plain(DryingPart.AIRED) + " times the air speed",
            aired(),
            DryingPart::aired)
        .maybe("cracks", "cracks to expect", cracks(), DryingPart::cracking)
        .maybe("repair", "slip that fills them", repair(), DryingPart::repair);
  }

  private static Facts<DryingForecast.Comparison> aired() {
    return new Facts<DryingForecast.Comparison>()
        .many("milestones", "days to each state", milestone(), c -> c.changed().milestones());
  }

  private static Facts<Milestone> milestone() {
    return new Facts<Milestone>()
        .text("name", "the state", Milestone::name)
        .number("moisture", "water over dry mass at which it is reached", Milestone::moisture)
        .maybeNumber("soonest_d", "the soonest, in days", m -> boxed(m.soonest()))
        .maybeNumber("likely_d", "the likely day", m -> boxed(m.likely()))
        .maybeNumber("latest_d", "the latest, in days", m -> boxed(m.latest()));
  }

  private static Facts<Cracking> cracks() {
    return new Facts<Cracking>()
        .range("freeShrinkage", "shrinkage if nothing held it", Cracking::freeShrinkage)
        .range("widthPerMetre", "crack width over length", Cracking::widthPerMetre);
  }

  private static Facts<SlipRepair> repair() {
    return new Facts<SlipRepair>()
        .range("volume_m3", "slip to mix", SlipRepair::volume)
        .number("water_kg", "its water", SlipRepair::water);
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
