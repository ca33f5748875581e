package io.github.seamstead.assembly.ring;

import java.util.List;

/**
 * What the log says about the cover.
 *
 * @param faults everything found, in the order of the log
 * @param present the seams that are in the cover now, right or wrong
 * @param kept the joints that are made and may stay, in the order in which they were made
 * @param undo the seams to undo, as few as possible, latest first
 * @param proof why no fewer will do
 * @param groups the groups of pieces that hang together once these seams are undone, by first piece
 * @param open the joints still to make, in their order
 * @param readable false if an entry could not be used, so that the state may differ from this
 */
public record LogReport(
    List<Fault> faults,
    List<Seam> present,
    List<Joint> kept,
    List<Seam> undo,
    String proof,
    List<Arc> groups,
    List<Joint> open,
    boolean readable) {

  public LogReport {
    faults = List.copyOf(faults);
    present = List.copyOf(present);
    kept = List.copyOf(kept);
    undo = List.copyOf(undo);
    groups = List.copyOf(groups);
    open = List.copyOf(open);
  }

  /**
   * Tells whether nothing is wrong.
   *
   * @return true if there is no fault
   */
  public boolean isClean() {
    return faults.isEmpty();
  }

  /**
   * Tells whether the cover is whole and right.
   *
   * @return true if no seam is to undo and no joint is open
   */
  public boolean isComplete() {
    return undo.isEmpty() && open.isEmpty() && readable;
  }
}
