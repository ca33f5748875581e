package io.github.seamstead.assembly.merge;

import io.github.seamstead.assembly.ring.Arc;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where the groups of a plan stand in a drawing of its tree. Leaves stand side by side at whole x,
 * in their order seen from outside; a group stands above the middle of its two parts, one higher
 * than the higher of them.
 *
 * @param nodes the groups, leaves first, parts before the whole
 * @param width greatest x, in leaf distances
 * @param height greatest y, in levels
 */
public record TreeLayout(List<Node> nodes, double width, double height) {

  public TreeLayout {
    nodes = List.copyOf(nodes);
  }

  /**
   * A group in the drawing.
   *
   * @param index its place in the list, from 0
   * @param arc its pieces
   * @param label its pieces by first and last number
   * @param x in leaf distances from the leftmost leaf
   * @param y in levels above the leaves
   * @param mass its mass, in kilograms
   * @param step the number of the step that makes it; empty for a leaf
   * @param parent the node it goes into; empty for the whole
   */
  public record Node(
      int index,
      Arc arc,
      String label,
      double x,
      double y,
      double mass,
      Optional<Integer> step,
      Optional<Integer> parent) {}

  /**
   * Lays out the tree of a plan. Costs O(n log n).
   *
   * @param plan the plan
   * @return the drawing's data; the closing joint makes no node
   * @throws IllegalArgumentException if a step uses a group that no step before it made
   */
  public static TreeLayout of(MergePlan plan) {
    int pieces = plan.ring().size();
    List<JoinStep> merges = plan.steps().stream().filter(step -> !step.closing()).toList();
    List<Arc> leaves = leaves(plan, merges);
    Map<Arc, Integer> index = new HashMap<>();
    List<Arc> arcs = new ArrayList<>(leaves);
    List<double[]> places = new ArrayList<>();
    int[] step = new int[leaves.size() + merges.size()];
    int[] parent = new int[step.length];
    for (int i = 0; i < leaves.size(); i++) {
      index.put(leaves.get(i), i);
      places.add(new double[] {i, 0});
    }
    double height = 0;
    for (JoinStep merge : merges) {
      int at = arcs.size();
      int left = at(index, merge.left(), pieces);
      int right = at(index, merge.right(), pieces);
      Arc arc = new Arc(merge.left().first(), merge.left().count() + merge.right().count());
      double[] a = places.get(left);
      double[] b = places.get(right);
      double y = 1 + Math.max(a[1], b[1]);
      height = Math.max(height, y);
      arcs.add(arc);
      index.put(arc, at);
      places.add(new double[] {(a[0] + b[0]) / 2, y});
      step[at] = merge.number();
      parent[left] = at;
      parent[right] = at;
    }
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i < arcs.size(); i++) {
      nodes.add(
          new Node(
              i,
              arcs.get(i),
              arcs.get(i).text(pieces),
              places.get(i)[0],
              places.get(i)[1],
              plan.ring().load(arcs.get(i)).mass(),
              step[i] == 0 ? Optional.empty() : Optional.of(step[i]),
              parent[i] == 0 ? Optional.empty() : Optional.of(parent[i])));
    }
    return new TreeLayout(nodes, leaves.size() - 1.0, height);
  }

  private static int at(Map<Arc, Integer> index, Arc arc, int pieces) {
    Integer at = index.get(arc);
    if (at == null) {
      throw new IllegalArgumentException(
          "plan: given a step with the group " + arc.text(pieces) + ", which no step made before");
    }
    return at;
  }

  /** Lists the groups that no step makes, from the cut on. */
  private static List<Arc> leaves(MergePlan plan, List<JoinStep> merges) {
    int pieces = plan.ring().size();
    Set<Arc> made = new HashSet<>();
    Set<Arc> parts = new HashSet<>();
    int begin = 1;
    for (JoinStep merge : merges) {
      made.add(new Arc(merge.left().first(), merge.left().count() + merge.right().count()));
      parts.add(merge.left());
      parts.add(merge.right());
      begin = merge.left().first();
    }
    if (merges.isEmpty()) {
      int first = plan.closingStep().map(closing -> closing.left().first()).orElse(1);
      return List.of(new Arc(first, pieces));
    }
    for (Arc arc : made) {
      if (!parts.contains(arc)) {
        begin = arc.first();
      }
    }
    int start = begin;
    parts.removeAll(made);
    List<Arc> leaves = new ArrayList<>(parts);
    leaves.sort(
        (a, b) ->
            Integer.compare(
                Math.floorMod(a.first() - start, pieces),
                Math.floorMod(b.first() - start, pieces)));
    return leaves;
  }
}
