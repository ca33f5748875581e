package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.assembly.fixings.RopeStrength;
import io.github.seamstead.assembly.fixings.Runs;
import java.util.Optional;

/**
 * The rope that the document states, held against what it must carry.
 *
 * @param strength its strength by thumb rule, a knot in the load
 * @param load the greatest pull on one rope while the cover is raised, in newtons
 * @param coils the ropes cut from coils; empty if the document states none, or none is long enough
 */
public record RopePart(RopeStrength strength, double load, Optional<Runs> coils) {

  /**
   * Tells whether the rope may carry the load.
   *
   * @return true if its working load is at least the load
   */
  public boolean holds() {
    return strength.workingLoad() >= load;
  }
}
