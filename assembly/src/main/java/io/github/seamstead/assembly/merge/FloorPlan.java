package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import io.github.seamstead.assembly.ring.View;
import io.github.seamstead.shared.check.Args;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The groups on the floor, stage by stage: before the first joint, after each wave of joints that
 * can go on side by side, and closed.
 *
 * @param view from which side the cover is seen
 * @param stages the stages in order
 */
public record FloorPlan(View view, List<Stage> stages) {

  /**
   * Copies the stages.
   *
   * @param view from which side
   * @param stages the stages in order
   */
  public FloorPlan {
    stages = List.copyOf(stages);
  }

  /**
   * What lies on the floor at a stage.
   *
   * @param wave the wave just done, 0 before the first
   * @param groups the groups from the reader's left to right
   * @param joined the numbers of the steps of this wave
   * @param closed whether the ring is closed
   */
  public record Stage(int wave, List<Patch> groups, List<Integer> joined, boolean closed) {

    /**
     * Copies the lists.
     *
     * @param wave the wave just done
     * @param groups the groups
     * @param joined the steps of this wave
     * @param closed whether the ring is closed
     */
    public Stage {
      groups = List.copyOf(groups);
      joined = List.copyOf(joined);
    }
  }

  /**
   * A group on the floor.
   *
   * @param arc its pieces
   * @param label its pieces by first and last number, as the reader meets them
   * @param xMetres its left end, in metres from the left of the floor
   * @param widthMetres its width, in metres
   * @param massKg its mass, in kilograms
   */
  public record Patch(Arc arc, String label, double xMetres, double widthMetres, double massKg) {}

  /**
   * Draws up the stages. Costs O(n) for each wave.
   *
   * @param plan the plan
   * @param view from which side; while joining, the cover is seen as it lies
   * @param pieceWidthMetres width of floor for each piece, in metres, greater than 0
   * @param gapMetres gap between groups, in metres, 0 or more
   * @return the stages
   * @throws IllegalArgumentException if a width is out of range
   */
  public static FloorPlan of(MergePlan plan, View view, double pieceWidthMetres, double gapMetres) {
    Args.positive("piece width", pieceWidthMetres, "m");
    Args.notNegative("gap", gapMetres, "m");
    List<TreeLayout.Node> nodes = TreeLayout.of(plan).nodes();
    List<Arc> groups = new ArrayList<>();
    for (TreeLayout.Node node : nodes) {
      if (node.step().isEmpty()) {
        groups.add(node.arc());
      }
    }
    int waves = plan.steps().stream().mapToInt(JoinStep::wave).max().orElse(0);
    List<Stage> stages = new ArrayList<>();
    stages.add(stage(plan, view, 0, groups, List.of(), false, pieceWidthMetres, gapMetres));
    for (int wave = 1; wave <= waves; wave++) {
      List<Integer> joined = new ArrayList<>();
      boolean closed = false;
      for (JoinStep step : plan.steps()) {
        if (step.wave() != wave) {
          continue;
        }
        joined.add(step.number());
        closed |= step.closing();
        if (!step.closing()) {
          int at = groups.indexOf(step.left());
          groups.remove(at + 1);
          groups.set(at, new Arc(step.left().first(), step.left().count() + step.right().count()));
        }
      }
      stages.add(stage(plan, view, wave, groups, joined, closed, pieceWidthMetres, gapMetres));
    }
    return new FloorPlan(view, stages);
  }

  private static Stage stage(
      MergePlan plan,
      View view,
      int wave,
      List<Arc> groups,
      List<Integer> joined,
      boolean closed,
      double width,
      double gap) {
    int pieces = plan.ring().size();
    List<Arc> seen = new ArrayList<>(groups);
    boolean lies = view == View.AS_IT_LIES;
    if (lies) {
      Collections.reverse(seen);
    }
    List<Patch> patches = new ArrayList<>();
    double x = 0;
    for (Arc arc : seen) {
      String label =
          arc.count() == 1 || !lies ? arc.text(pieces) : arc.last(pieces) + "-" + arc.first();
      patches.add(new Patch(arc, label, x, arc.count() * width, plan.ring().load(arc).massKg()));
      x += arc.count() * width + gap;
    }
    return new Stage(wave, patches, joined, closed);
  }
}
