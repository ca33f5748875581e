package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import java.util.List;

/**
 * The texts that go onto a panel. The names of the joints are the caller's: the mating edges of two
 * panels carry the same name.
 *
 * @param panel the panel's number or name; not blank
 * @param edges one letter or name for each edge of the face, in the order of the edges; an empty
 *     text leaves an edge unmarked; an empty list leaves all edges unmarked
 * @param joints one joint name for each edge, likewise; or one text for each edge of the face
 * @param folds one name for each hip within a panel over several faces, from left to right; an
 *     empty list calls them by their place
 */
public record PanelMarks(
    String panel, List<String> edges, List<String> joints, List<String> folds) {

  public PanelMarks {
    Args.notBlank("panel mark", panel);
    edges = List.copyOf(edges);
    joints = List.copyOf(joints);
    folds = List.copyOf(folds);
  }

  /**
   * Marks a panel whose hips within, if it has any, are called by their place.
   *
   * @param panel the panel's number or name, not blank
   * @param edges one letter or name for each edge, or none
   * @param joints one joint name for each edge, or none
   * @throws IllegalArgumentException if the name is blank
   */
  public PanelMarks(String panel, List<String> edges, List<String> joints) {
    this(panel, edges, joints, List.of());
  }

  /**
   * Marks the panel alone.
   *
   * @param panel the panel's number or name, not blank
   * @return marks without edge letters and joints
   * @throws IllegalArgumentException if the name is blank
   */
  public static PanelMarks of(String panel) {
    return new PanelMarks(panel, List.of(), List.of(), List.of());
  }

  String edge(int index) {
    return edges.isEmpty() ? "" : edges.get(index);
  }

  String joint(int index) {
    return joints.isEmpty() ? "" : joints.get(index);
  }

  /** The name of a hip within the panel, counted from 1. */
  String fold(int ordinal) {
    return folds.isEmpty() ? Fold.byPlace(ordinal) : folds.get(ordinal - 1);
  }

  void requireFor(int faceEdges) {
    requireCount("edge letters", edges, faceEdges);
    requireCount("joint names", joints, faceEdges);
  }

  private void requireCount(String what, List<String> texts, int faceEdges) {
    Args.require(
        texts.isEmpty() || texts.size() == faceEdges,
        "panel " + panel,
        texts.size() + " " + what,
        "must be none or one for each of the " + faceEdges + " edges");
  }
}
