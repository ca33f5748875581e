package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.PieceRing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Tries every order of joining, knowing nothing of trees: a state is a list of groups, and any two
 * neighbours may be next. In the order of the starts of a shortest schedule each merge can start as
 * soon as its parts and a team are free, so this finds the least elapsed time too.
 */
final class BruteForce {

  private final PieceRing ring;
  private final PlanOptions options;
  double handled = Double.POSITIVE_INFINITY;
  double work = Double.POSITIVE_INFINITY;
  double elapsed = Double.POSITIVE_INFINITY;
  double carried = Double.POSITIVE_INFINITY;

  private record Group(Arc arc, Load load, double free) {}

  BruteForce(PieceRing ring, PlanOptions options) {
    this.ring = ring;
    this.options = options;
    List<Group> groups = new ArrayList<>();
    for (int i = 1; i <= ring.size(); i++) {
      groups.add(new Group(new Arc(i, 1), ring.piece(i).load(), 0));
    }
    run(groups, new double[options.teams()], 0, 0, 0, 0);
  }

  private void run(
      List<Group> groups, double[] teams, double handled, double work, double carried, double end) {
    int n = groups.size();
    if (n == 1) {
      finish(groups.get(0), handled, work, carried, end);
      return;
    }
    for (int i = 0; i < (ring.isRing() ? n : n - 1); i++) {
      Group a = groups.get(i);
      Group b = groups.get((i + 1) % n);
      int joint = a.arc().last(ring.size());
      Load sum = a.load().plus(b.load());
      Arc arc = new Arc(a.arc().first(), a.arc().count() + b.arc().count());
      if (options.closingJoint().orElse(-1) == joint || breaksAFirstGroup(arc)) {
        continue;
      }
      double carry =
          options.limits().rule() == CarryRule.BOTH_ARE_LIFTED
              ? sum.mass()
              : Math.min(a.load().mass(), b.load().mass());
      double bulk =
          options.limits().rule() == CarryRule.BOTH_ARE_LIFTED
              ? sum.bulkVolume()
              : Math.min(a.load().bulkVolume(), b.load().bulkVolume());
      if (over(carry, bulk, Math.min(a.load().bunch(), b.load().bunch()), sum)) {
        continue;
      }
      double seconds =
          options.times().setUpTime()
              + options.times().timePerLength() * ring.joint(joint).length()
              + options.times().timePerMass() * sum.mass();
      double[] after = teams.clone();
      Arrays.sort(after);
      double start = Math.max(after[0], Math.max(a.free(), b.free()));
      after[0] = start + seconds;
      List<Group> next = new ArrayList<>(groups);
      next.set(i, new Group(arc, sum, after[0]));
      next.remove((i + 1) % n);
      run(
          next,
          after,
          handled + sum.mass(),
          work + seconds,
          Math.max(carried, carry),
          Math.max(end, after[0]));
    }
  }

  private boolean over(double carry, double bulk, double bunch, Load sum) {
    Limits limits = options.limits();
    return carry > limits.carriedMass().orElse(1e300)
        || bulk > limits.carriedBulk().orElse(1e300)
        || bunch > limits.reach().orElse(1e300)
        || sum.laidArea() > limits.floorArea().orElse(1e300);
  }

  private boolean breaksAFirstGroup(Arc arc) {
    int n = ring.size();
    for (Arc group : options.firstGroups()) {
      int common = 0;
      for (int p = 1; p <= n; p++) {
        common += arc.contains(p, n) && group.contains(p, n) ? 1 : 0;
      }
      if (common > 0 && common < group.count() && common < arc.count()) {
        return true;
      }
    }
    return false;
  }

  private void finish(Group whole, double mass, double time, double carry, double end) {
    double closing = 0;
    double closingCarry = 0;
    if (ring.isRing()) {
      double all = whole.load().mass();
      int joint = whole.arc().last(ring.size());
      boolean both = options.limits().rule() == CarryRule.BOTH_ARE_LIFTED;
      closingCarry = both ? all : all / 2;
      double bulk = whole.load().bulkVolume();
      if (over(closingCarry, both ? bulk : bulk / 2, whole.load().bunch() / 2, whole.load())) {
        return;
      }
      closing =
          options.times().setUpTime()
              + options.times().timePerLength() * ring.joint(joint).length()
              + options.times().timePerMass() * all;
      mass += all;
    }
    handled = Math.min(handled, mass);
    work = Math.min(work, time + closing);
    elapsed = Math.min(elapsed, end + closing);
    carried = Math.min(carried, Math.max(carry, closingCarry));
  }
}
