package io.github.seamstead.api.doubt;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.source.Source;

/**
 * One thing that a plan takes for known and that may be otherwise.
 *
 * @param name what it is, in a few words
 * @param spread how far it may be off, for people
 * @param ground whether the job states that, or where it is taken from
 * @param remedy what to do to know it better
 * @param inputs how many numbers of its own it has, 1 or more: one, or one for each reading
 * @param effect what it does to a plan
 */
record Doubt(String name, String spread, Source ground, String remedy, int inputs, Effect effect) {

  Doubt {
    Args.notBlank("name", name);
    Args.notBlank("remedy", remedy);
    Args.within("inputs", inputs, 1, 10_000);
  }

  /** Puts the doubtful numbers into a draw. */
  @FunctionalInterface
  interface Effect {

    /**
     * Puts the numbers into a draw.
     *
     * @param at one number from 0 to 1 for each input: where in its distribution it lies
     * @param width how wide the distribution is, 1 as stated, less if more is known
     * @param draw receives them
     */
    void apply(double[] at, double width, Draw draw);
  }
}
