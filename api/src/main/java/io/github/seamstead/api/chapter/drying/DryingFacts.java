package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.drying.CrackChange;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.materials.drying.TileCalibration;
import java.time.LocalDate;

/** Drying, cracks and repair as data. */
final class DryingFacts {

  private DryingFacts() {}

  static Facts<DryingPart> drying() {
    return new Facts<DryingPart>()
        .text("layer", "its name", d -> d.layer().name())
        .number("thickness_m", "its thickness", d -> d.layer().thickness())
        .number(
            "balanceMoisture", "water over dry mass when dry", d -> d.forecast().balanceMoisture())
        .number(
            "start_d", "days after the lowest mixed layer on which it is laid", DryingPart::start)
        .maybeText("laid", "the day on which it is laid", d -> d.laid().map(LocalDate::toString))
        .many("milestones", "days to each state", milestone(), d -> d.forecast().milestones())
        .maybe("tile", "calibration by a weighed test tile", tile(), DryingPart::tile)
        .number("moisture", "water over dry mass as it is laid", DryingPart::moisture)
        .maybe("air", "what its water does to the air under the cover", air(), DryingPart::air)
        .maybe("cracks", "cracks to expect", cracks(), DryingPart::cracking)
        .texts("crackAdvice", "what to do about them", DryingPart::crackAdvice)
        .many(
            "crackChanges",
            "what each change would do to the cracks",
            change(),
            DryingPart::crackChanges)
        .maybe("repair", "slip that fills them", repair(), DryingPart::repair)
        .maybeText(
            "since",
            "the day of laying, year-month-day, from which the days count",
            d -> d.since().map(LocalDate::toString));
  }

  private static Facts<TileCalibration> tile() {
    return new Facts<TileCalibration>()
        .range("diffusivity", "factor on the published diffusivity", TileCalibration::diffusivity)
        .range("exchange", "factor on the evaporation", TileCalibration::exchange)
        .number(
            "misfit_kg", "weighed less computed loss, root mean square", TileCalibration::misfit)
        .flag("plausible", "whether it counts", TileCalibration::plausible);
  }

  private static Facts<CrackChange> change() {
    return new Facts<CrackChange>()
        .text("what", "the change", CrackChange::what)
        .range("widthPerMetre", "crack width over length after it", CrackChange::widthPerMetre)
        .number("slipFactor", "slip for the cracks over that without it", CrackChange::slipFactor);
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
        .maybeNumber("soonest_d", "the soonest, in days", Milestone::soonest)
        .maybeNumber("likely_d", "the likely day", Milestone::likely)
        .maybeNumber("latest_d", "the latest, in days", Milestone::latest);
  }

  private static Facts<Cracking> cracks() {
    return new Facts<Cracking>()
        .range("freeShrinkage", "shrinkage if nothing held it", Cracking::freeShrinkage)
        .range("forecast", "crack width over length by the soil's bar", Cracking::forecast)
        .maybeNumber("measured", "crack width over length of the sample", Cracking::measured)
        .range("widthPerMetre", "crack width over length that counts", Cracking::widthPerMetre);
  }

  private static Facts<SlipRepair> repair() {
    return new Facts<SlipRepair>()
        .range("volume_m3", "slip to mix", SlipRepair::volume)
        .range("cracks_m3", "the part of it for the cracks", SlipRepair::cracks)
        .number("skim_m3", "the part of it for a skim over all", SlipRepair::skim)
        .number("water_kg", "its water", SlipRepair::water);
  }
}
