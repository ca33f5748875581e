package io.github.seamstead.materials.mix;

import io.github.seamstead.materials.soil.SilicaDust;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.source.Source;
import java.util.List;
import java.util.Optional;

/** What can hurt when earth is mixed. */
public final class MixCautions {

  private MixCautions() {}

  /**
   * Lists the cautions of dry mixing, and of binders if any is added. Binders are outside the
   * library's calculations.
   *
   * @param binder whether lime or cement is added
   * @return one caution or more
   */
  public static List<Caution> of(boolean binder) {
    Caution dust = SilicaDust.CAUTION;
    Caution lime =
        new Caution(
            Hazard.LIME,
            "Lime and cement burn skin and eyes (pH about 12.4) and change how clay shrinks and"
                + " binds; trial results without them no longer hold.",
            "Usual limit 5 mg/m3 of dust in air over 8 hours; gloves, goggles, water at hand.",
            Optional.of(Source.found("NIOSH", "Calcium hydroxide", "", "5 mg/m3")));
    return binder ? List.of(dust, lime) : List.of(dust);
  }
}
