package io.github.seamstead.assembly.merge;

/** Handled mass alone, for many groups: an optimal alphabetic tree for each cut allowed. */
final class LongLine {

  private LongLine() {}

  static Tree best(Groups groups, PlanOptions options) {
    int k = groups.size;
    LineTree best = null;
    int bestCut = 0;
    for (int cut = 0; cut < groups.cuts(); cut++) {
      if (groups.closed
          && options.closingJoint().isPresent()
          && options.closingJoint().getAsInt() != groups.closingJoint(cut)) {
        continue;
      }
      double[] mass = new double[k];
      for (int i = 0; i < k; i++) {
        mass[i] = groups.mass((cut + i) % k, 1);
      }
      LineTree line = LineTree.optimal(mass);
      if (best == null || line.cost() < best.cost() * (1 - 1e-12)) {
        best = line;
        bestCut = cut;
      }
    }
    Tree tree = new Tree(bestCut, k);
    for (int m = 0; best != null && m < k - 1; m++) {
      tree.merge(best.left(m), best.right(m));
    }
    return tree;
  }
}
