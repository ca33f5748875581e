package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;

/**
 * A door or a vent in a face.
 *
 * @param name the opening's name, such as {@code door}; not blank
 * @param outline its finished edge in the face's own coordinates, in metres
 * @param turnIn cloth folded back round the edge, in metres, 0 or more
 * @param patch width of the reinforcement round the opening, finished, in metres; 0 for none; 0 or
 *     more
 * @param patchFold cloth folded under round the outside of the reinforcement, in metres, 0 or more
 * @param flap by how much a flap overlaps the opening all round, in metres; 0 for no flap; 0 or
 *     more
 * @param flapHem hem round the flap, in metres, 0 or more
 */
public record Opening(
    String name,
    Outline outline,
    double turnIn,
    double patch,
    double patchFold,
    double flap,
    double flapHem) {

  public Opening {
    Args.notBlank("opening name", name);
    Args.notNegative("opening " + name + ": turn-in", turnIn, "m");
    Args.notNegative("opening " + name + ": patch width", patch, "m");
    Args.notNegative("opening " + name + ": patch fold", patchFold, "m");
    Args.notNegative("opening " + name + ": flap overlap", flap, "m");
    Args.notNegative("opening " + name + ": flap hem", flapHem, "m");
  }

  /**
   * Makes a bare opening.
   *
   * @param name the opening's name, not blank
   * @param outline its finished edge in the face's own coordinates, in metres
   * @param turnIn cloth folded back round the edge, in metres, 0 or more
   * @return an opening without patch and flap
   * @throws IllegalArgumentException if the name is blank or the turn-in negative
   */
  public static Opening of(String name, Outline outline, double turnIn) {
    return new Opening(name, outline, turnIn, 0, 0, 0, 0);
  }

  /**
   * Adds a reinforcement.
   *
   * @param width finished width round the opening, in metres, 0 or more
   * @param fold cloth folded under round its outside, in metres, 0 or more
   * @return the opening with the patch
   * @throws IllegalArgumentException if a measure is negative or not finite
   */
  public Opening withPatch(double width, double fold) {
    return new Opening(name, outline, turnIn, width, fold, flap, flapHem);
  }

  /**
   * Adds a flap, sewn on above the opening and hemmed round.
   *
   * @param overlap beyond the opening all round, in metres, 0 or more
   * @param hem round the flap, in metres, 0 or more
   * @return the opening with the flap
   * @throws IllegalArgumentException if a measure is negative or not finite
   */
  public Opening withFlap(double overlap, double hem) {
    return new Opening(name, outline, turnIn, patch, patchFold, overlap, hem);
  }

  /** How far round the opening the face must be free of seams, hems and splices, in metres. */
  double margin() {
    return Math.max(Math.max(patch, flap), turnIn);
  }
}
