package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.shared.check.Args;
import java.util.Arrays;
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
          "first group",
          group.text(n),
          "must not go past the end of the line");
    }
    for (int i = 0; i < groups.size(); i++) {
      for (int j = i + 1; j < groups.size(); j++) {
        int common = common(groups.get(i), groups.get(j), n);
        Args.require(
            common == 0 || common == Math.min(groups.get(i).count(), groups.get(j).count()),
            "first groups",
            groups.get(i).text(n) + " and " + groups.get(j).text(n),
            "must lie apart or one inside the other");
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

  /**
   * Tells which spans may be groups, by first group and count: none that holds some but not all of
   * a first group and something else too.
   */
  static boolean[][] allowed(Groups groups, List<Arc> wished) {
    int k = groups.size;
    boolean[][] allowed = new boolean[k][k + 1];
    for (boolean[] row : allowed) {
      Arrays.fill(row, true);
    }
    for (Arc group : stillPossible(groups, wished)) {
      int members = 0;
      boolean[] in = new boolean[k];
      for (int i = 0; i < k; i++) {
        in[i] = groups.within(i, group);
        members += in[i] ? 1 : 0;
      }
      for (int first = 0; first < k; first++) {
        int inside = 0;
        for (int count = 1; count <= k; count++) {
          inside += in[(first + count - 1) % k] ? 1 : 0;
          allowed[first][count] &= inside == 0 || inside == count || inside == members;
        }
      }
    }
    return allowed;
  }
}
