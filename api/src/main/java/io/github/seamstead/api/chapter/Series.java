package io.github.seamstead.api.chapter;

/**
 * The terms of one of many plans of jobs that are alike.
 *
 * @param recall what dear calculations gave in the other plans
 * @param supposed what is supposed of numbers that the document does not state
 * @param brief whether asides that no other chapter builds on are left out: which soil test to make
 *     next, trial samples to make, the air under a cover that is shut
 * @param rough whether dear simulations march roughly, since only their differences are looked at
 */
public record Series(Recall recall, Supposed supposed, boolean brief, boolean rough) {

  /**
   * The terms of a plan by itself.
   *
   * @return nothing recalled, nothing supposed, nothing left out
   */
  public static Series alone() {
    return new Series(Recall.none(), Supposed.NOTHING, false, false);
  }

  /**
   * Tells whether it is a plan by itself: for that one it is also tried what else could be done.
   *
   * @return whether nothing is recalled from other plans and nothing left out
   */
  public boolean isAlone() {
    return recall.keepsNothing() && !brief;
  }

  /**
   * The same terms with other suppositions.
   *
   * @param other what is supposed
   * @return the new terms
   */
  public Series supposing(Supposed other) {
    return new Series(recall, other, brief, rough);
  }
}
