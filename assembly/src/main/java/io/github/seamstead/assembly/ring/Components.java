package io.github.seamstead.assembly.ring;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which pieces hang together, and what that says about a seam between two wrong edges. */
final class Components {

  private final PieceRing ring;
  private final int[] parent;

  Components(PieceRing ring, List<Seam> seams) {
    this.ring = ring;
    this.parent = new int[ring.size() + 1];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
    }
    for (Seam seam : seams) {
      parent[root(seam.first().piece())] = root(seam.second().piece());
    }
  }

  private int root(int piece) {
    int at = piece;
    while (parent[at] != at) {
      parent[at] = parent[parent[at]];
      at = parent[at];
    }
    return at;
  }

  /** Gives the runs of pieces between the joints that are not made, by first piece. */
  static List<Arc> groups(PieceRing ring, Set<Integer> made) {
    int n = ring.size();
    List<Arc> groups = new ArrayList<>();
    int first = 1;
    while (first <= n && ring.isRing() && made.contains(Math.floorMod(first - 2, n) + 1)) {
      first++;
    }
    if (first > n) {
      return List.of(new Arc(1, n));
    }
    for (int done = 0; done < n; ) {
      int count = 1;
      int piece = first;
      while (done + count < n && made.contains(piece)) {
        piece = ring.after(piece);
        count++;
      }
      groups.add(new Arc(first, count));
      done += count;
      first = ring.after(piece);
    }
    return groups;
  }

  /** Names the fault of a seam whose edges do not belong together. */
  Fault wrongPair(Seam seam) {
    Edge a = seam.first();
    Edge b = seam.second();
    String found =
        a.label() + " was joined to " + b.label() + ", but " + partner(a) + " and " + partner(b);
    if (a.side() != b.side() && a.piece() != b.piece() && (neighbours(a, b) || isRun(a.piece()))) {
      return new Fault(
          Fault.Kind.WRONG_ORDER,
          seam.entry(),
          found + "; the right pieces in the wrong order: undo this seam");
    }
    String turned =
        a.side() == b.side() && a.piece() != b.piece()
            ? "; two " + (a.side() == Side.LEFT ? "left" : "right") + " edges never meet"
            : "";
    return new Fault(Fault.Kind.WRONG_EDGE, seam.entry(), found + turned + ": undo this seam");
  }

  private String partner(Edge edge) {
    return ring.jointAt(edge)
        .map(
            joint ->
                edge.label()
                    + " belongs to "
                    + (joint.first().equals(edge) ? joint.second() : joint.first()).label()
                    + " ("
                    + joint.mark().text()
                    + ")")
        .orElse(edge.label() + " stays free");
  }

  private boolean neighbours(Edge a, Edge b) {
    return ring.after(a.piece()) == b.piece() || ring.after(b.piece()) == a.piece();
  }

  /** Tells whether the pieces that hang together with this one are a run of neighbours. */
  private boolean isRun(int piece) {
    int n = ring.size();
    int members = 0;
    int starts = 0;
    for (int i = 1; i <= n; i++) {
      if (root(i) == root(piece)) {
        members++;
        starts += root(Math.floorMod(i - 2, n) + 1) == root(piece) ? 0 : 1;
      }
    }
    return members > 2 && starts <= 1;
  }
}
