package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.check.Args;
import java.util.List;
import java.util.stream.IntStream;

/** The groups that the builder wishes to be joined first. */
final class FirstGroups {

  private FirstGroups() {}

  /** Refuses groups that do not fit the ring or overlap without one lying inside the other. */
  static void check(PieceRing ring, List<Arc> groups) {
    int n = ring.size();
    for (Arc group : groups) {
      Args.within("first piece of a first group", group.first(), 1, n);
      Args.within("pieces of a first group", group.count(), 1, n);
      Args.require(
          ring.isRing() || group.first() + group.count() - 1 <= n,
          "first group: given " + group.text(n) + ", must not go past the end of the line");
    }
    for (int i = 0; i < groups.size(); i++) {
      for (int j = i + 1; j < groups.size(); j++) {
        int common = common(groups.get(i), groups.get(j), n);
        Args.require(
            common == 0 || common == Math.min(groups.get(i).count(), groups.get(j).count()),
            "first groups: given "
                + groups.get(i).text(n)
                + " and "
                + groups.get(j).text(n)
                + ", must lie apart or one inside the other");
      }
    }
  }

  private static int common(Arc a, Arc b, int n) {
    return (int)
        IntStream.rangeClosed(1, n).filter(p -> a.contains(p, n) && b.contains(p, n)).count();
  }

  /** Leaves out the groups that joints already made have broken. */
  static List<Arc> stillPossible(Groups groups, List<Arc> wished) {
    return wished.stream()
        .filter(
            group ->
                IntStream.range(0, groups.size)
                    .allMatch(i -> groups.within(i, group) || groups.outside(i, group)))
        .toList();
  }
}
