package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.Load;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The names of edges and joints that go on the panels. */
final class EdgeMarks {

  private EdgeMarks() {}

  /** The names of panels that each go over some neighbouring faces: {@code 3}, {@code 4 to 6}. */
  static List<String> names(List<Integer> spans) {
    List<String> names = new ArrayList<>();
    int face = 1;
    for (int span : spans) {
      names.add(span == 1 ? Integer.toString(face) : face + " to " + (face + span - 1));
      face += span;
    }
    return names;
  }

  /**
   * The marks that go on the panels: edge letters, joint names and names of hips within. They
   * depend on the count of panels alone, so they are known before the panels are drawn.
   *
   * @param spans over how many faces each panel goes, from face 1 on
   */
  static List<PanelMarks> of(List<Outline> faces, List<Integer> spans) {
    List<String> names = names(spans);
    List<Piece> pieces = names.stream().map(name -> Piece.of(name, Load.ofMass(1))).toList();
    PieceRing ring = PieceRing.ring(pieces, Collections.nCopies(spans.size(), 1.0));
    List<PanelMarks> marks = new ArrayList<>();
    int face = 1;
    for (int panel = 1; panel <= spans.size(); panel++) {
      int span = spans.get(panel - 1);
      // Beside its hips a panel has a base and, unless it ends in a point, a top for each face.
      int edges = span * (faces.get(face - 1).size() - 2) + 2;
      Joint right = ring.joint(panel);
      Joint left = ring.joint(panel == 1 ? spans.size() : panel - 1);
      List<String> letters = new ArrayList<>(Collections.nCopies(edges, ""));
      List<String> joints = new ArrayList<>(Collections.nCopies(edges, ""));
      letters.set(span, right.first().label());
      joints.set(span, right.mark().text());
      letters.set(edges - 1, left.second().label());
      joints.set(edges - 1, left.mark().text());
      List<String> folds = new ArrayList<>();
      for (int over = face; over < face + span - 1; over++) {
        folds.add("hip " + over + "|" + (over + 1));
      }
      marks.add(new PanelMarks(names.get(panel - 1), letters, joints, folds));
      face += span;
    }
    return marks;
  }
}
