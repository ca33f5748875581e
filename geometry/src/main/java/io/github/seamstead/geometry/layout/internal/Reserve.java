package io.github.seamstead.geometry.layout.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * States of little overlap in which tries at the present length have ended, to begin anew from. The
 * better of two drawn is taken (tournament selection), so that good ones are drawn more often and
 * none is given up while it is kept.
 */
final class Reserve {

  private final int most;

  private final List<Entry> entries = new ArrayList<>();

  private record Entry(Poses poses, double overlap) {}

  Reserve(Tuning tuning) {
    most = tuning.reserve();
  }

  void clear() {
    entries.clear();
  }

  /** Keeps a state, for the worst one where there are many. */
  void keep(Poses poses, double overlap) {
    int worst = 0;
    for (int k = 1; k < entries.size(); k++) {
      worst = entries.get(k).overlap > entries.get(worst).overlap ? k : worst;
    }
    if (entries.size() < most) {
      entries.add(new Entry(poses.copy(), overlap));
    } else if (overlap < entries.get(worst).overlap) {
      entries.set(worst, new Entry(poses.copy(), overlap));
    }
  }

  /** Draws one; at least one must be kept. */
  Poses draw(FastRandom random) {
    Entry a = entries.get(random.below(entries.size()));
    Entry b = entries.get(random.below(entries.size()));
    return a.overlap <= b.overlap ? a.poses : b.poses;
  }
}
