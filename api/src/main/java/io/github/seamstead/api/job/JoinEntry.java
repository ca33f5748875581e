package io.github.seamstead.api.job;

import io.github.seamstead.assembly.ring.Facing;
import java.util.List;
import java.util.Optional;

/**
 * One seam made or undone.
 *
 * @param join the two edges joined, such as 3R and 4L, if stated
 * @param undo the two edges taken apart again, if stated
 * @param facing how the pieces lay; good sides together if left out
 * @param marks the joint names read on the two edges, with their check marks, if stated
 */
record JoinEntry(
    Optional<List<String>> join,
    Optional<List<String>> undo,
    Facing facing,
    Optional<List<String>> marks) {

  public JoinEntry {
    join = join.map(List::copyOf);
    undo = undo.map(List::copyOf);
    marks = marks.map(List::copyOf);
  }
}
