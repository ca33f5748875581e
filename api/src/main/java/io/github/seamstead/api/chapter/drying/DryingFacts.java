package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.TileCalibration;
import java.time.LocalDate;
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
        .number("moisture", "water over dry mass as it is laid", DryingPart::moisture)
        .maybe("air", "what its water does to the air under the cover", air(), DryingPart::air)
        .maybe("cracks", "cracks to expect", cracks(), DryingPart::cracking)
        .texts("crackAdvice", "what to do about them", DryingPart::crackAdvice)
        .maybe("repair", "slip that fills them", repair(), DryingPart::repair)
        .maybeText(
            "since",
            "the day of laying, year-month-day, from which the days count",
            d -> d.since().map(LocalDate::toString))
        .maybe("tile", "what the weighings of a test tile say", tile(), DryingPart::calibration);
  }

  private static Facts<TileCalibration> tile() {
    return new Facts<TileCalibration>()
        .range("diffusivityFactor", "on the diffusivity of earth", TileCalibration::diffusivity)
        .range("exchangeFactor", "on the evaporation", TileCalibration::exchange)
        .number("misfit_kg", "weighed less reckoned loss, mean", TileCalibration::misfit)
        .flag("plausible", "whether the days are reckoned by it", TileCalibration::plausible);
  }

  private static Facts<CoverAir> air() {
    return new Facts<CoverAir>()
        .number("waterFirstDay_kg", "water given in the first day", CoverAir::waterFirstDay)
        .number("roomVolume_m3", "air under the cover", CoverAir::roomVolume)
        .number(
            "leastChangesPerDay",
            "air changes a day that carry it off if the air leaves saturated",
            CoverAir::leastChanges)
        .number(
            "changesPerDayToHold",
            "air changes a day that keep the humidity within ten points of that stated",
            CoverAir::changesToHold)
        .number("shutChangesPerDay", "air changes a day of a shut cover", CoverAir::shutChanges)
        .number("shutHumidity", "humidity over the wet layer then", CoverAir::shutHumidity)
        .many(
            "shutMilestones",
            "days to each state then",
            milestone(),
            air -> air.shut().milestones());
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
        .range("forecast", "crack width over length by the soil's bar", Cracking::forecast)
        .maybeNumber("measured", "crack width over length of the sample", c -> boxed(c.measured()))
        .range("widthPerMetre", "crack width over length that counts", Cracking::widthPerMetre);
  }

  private static Facts<SlipRepair> repair() {
    return new Facts<SlipRepair>()
        .range("volume_m3", "slip to mix", SlipRepair::volume)
        .range("cracks_m3", "the part of it for the cracks", SlipRepair::cracks)
        .number("skim_m3", "the part of it for a skim over all", SlipRepair::skim)
        .number("water_kg", "its water", SlipRepair::water);
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }
}
