package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.caution.Caution;
import java.util.List;

/**
 * Whether the day suits the adhesive, as far as its maker's limits tell.
 *
 * @param within true if no stated limit is broken
 * @param reasons each limit that is broken, in words; empty if none
 * @param caution the caution that goes with every answer
 */
public record CureVerdict(boolean within, List<String> reasons, Caution caution) {

  public CureVerdict {
    reasons = List.copyOf(reasons);
  }
}
