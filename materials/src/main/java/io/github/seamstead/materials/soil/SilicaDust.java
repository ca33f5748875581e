package io.github.seamstead.materials.soil;

import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.source.Source;

/** The one caution of dry soil and sand, for tests, mixes and floors alike. */
public final class SilicaDust {

  private static final Source SILICA =
      Source.found("OSHA", "29 CFR 1926.1153 Respirable crystalline silica", "2016", "");

  /** What dry soil and sand do to the lungs, with the usual limit. */
  public static final Caution CAUTION =
      Caution.of(
          Hazard.SILICA_DUST,
          "Dry soil, sand and sanding of the finished floor raise silica dust that scars the"
              + " lungs; action is due from half the usual limit.",
          "Keep it damp, do not sweep dry, work outdoors, wear a fitted P3 or N100 mask: usual"
              + " limit 0.05 mg of respirable crystalline silica per m3 over 8 h.",
          SILICA);

  private SilicaDust() {}
}
