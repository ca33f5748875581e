package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.materials.floor.EarthQuantity;
import io.github.seamstead.materials.floor.MixPart;
import io.github.seamstead.materials.floor.OrderList;
import io.github.seamstead.materials.mix.Fibre;
import java.util.List;
import java.util.Optional;

/** The straw of all layers together. */
final class FloorStraw {

  private FloorStraw() {}

  /** As much as the order needs before its reserve, so that both say the same. */
  static Optional<Fibre> of(Run run, List<EarthQuantity> earth, OrderList orders) {
    double straw = 0;
    double mineral = 0;
    for (EarthQuantity quantity : earth) {
      double share = quantity.layer().mix().fibreShare();
      if (share > 0) {
        straw += share * quantity.dryMass().likely();
        mineral += (1 - share) * quantity.dryMass().likely();
      }
    }
    if (straw == 0) {
      return Optional.empty();
    }
    double ratio = straw / mineral;
    double need =
        orders.lines().stream()
            .filter(line -> line.material().equals(MixPart.CHOPPED_STRAW))
            .mapToDouble(line -> line.rawNeed().likely())
            .sum();
    double all = need / ratio;
    return Optional.of(
        run.worked(
            "materials.mix.straw", "Straw of the floor", steps -> Fibre.straw(all, ratio, steps)));
  }
}
