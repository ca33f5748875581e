package io.github.seamstead.api.plan;

import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.Place;
import io.github.seamstead.api.diary.PlanChanges.Change;
import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.internal.PlanThen.Piece;
import io.github.seamstead.geometry.pattern.FaceDifference;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Compares the pieces of two plans: state, shape, and place on the cloth. */
final class PieceComparison {

  private static final double SAME_TURN = 1e-3;

  private final JobPlan before;
  private final JobPlan after;
  private final double tolerance;
  private final Function<Kind, List<String>> because;
  private final List<Change> changes = new ArrayList<>();

  PieceComparison(
      JobPlan before, JobPlan after, double tolerance, Function<Kind, List<String>> because) {
    this.before = before;
    this.after = after;
    this.tolerance = tolerance;
    this.because = because;
  }

  List<Change> changes() {
    Map<String, Piece> old = new PlannedBefore(before).pieces();
    Map<String, Piece> now = new PlannedBefore(after).pieces();
    Set<String> names = new LinkedHashSet<>(old.keySet());
    names.addAll(now.keySet());
    for (String name : names) {
      Piece a = old.get(name);
      Piece b = now.get(name);
      String was = state(before.done(), name);
      String is = state(after.done(), name);
      if (a == null || b == null) {
        change(name, a == null ? "none" : was, b == null ? "none" : is);
        continue;
      }
      if (!was.equals(is)) {
        change(name, was, is);
      }
      shape(name, a.drawn().cut(), b.drawn().cut());
      place(name, a.place(), b.place());
    }
    return changes;
  }

  private static String state(Done done, String name) {
    if (done.cut().containsKey(name)) {
      return "cut";
    }
    return done.spoiled().containsKey(name) ? "spoiled, to cut again" : "uncut";
  }

  private void shape(String name, Outline a, Outline b) {
    if (a.size() != b.size()) {
      change(name, a.size() + " corners", b.size() + " corners");
      return;
    }
    FaceDifference difference = FaceDifference.of(a, b);
    if (difference.greatest() > tolerance) {
      change(
          name,
          "as drawn before",
          "drawn anew, up to " + Numbers.fixed(difference.greatest() * 1000, 0) + " mm off");
    }
  }

  private void place(String name, Optional<Place> a, Optional<Place> b) {
    boolean moved =
        a.isPresent() != b.isPresent()
            || (a.isPresent() && b.isPresent() && isElsewhere(a.get(), b.get()));
    if (moved) {
      change(name, words(a), words(b));
    }
  }

  private boolean isElsewhere(Place a, Place b) {
    return !a.stock().equals(b.stock())
        || a.copy() != b.copy()
        || a.mirrored() != b.mirrored()
        || Math.abs(Math.IEEEremainder(a.rotation() - b.rotation(), 2 * Math.PI)) > SAME_TURN
        || a.shift().distance(b.shift()) > tolerance;
  }

  private static String words(Optional<Place> place) {
    return place
        .map(
            p ->
                "on "
                    + p.stock()
                    + " number "
                    + p.copy()
                    + " at "
                    + Numbers.fixed(p.shift().getX(), 3)
                    + " m, "
                    + Numbers.fixed(p.shift().getY(), 3)
                    + " m, turned "
                    + Numbers.fixed(Math.toDegrees(p.rotation()), 0)
                    + " degrees")
        .orElse("without a place");
  }

  private void change(String name, String was, String is) {
    boolean done = after.done().cut().containsKey(name);
    changes.add(new Change(Kind.PIECE, name, was, is, done, because.apply(Kind.PIECE)));
  }
}
