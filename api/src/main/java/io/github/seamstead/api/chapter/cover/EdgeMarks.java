package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.PieceRing;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.geometry.plane.Outline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The names of edges and joints that go on the panels. */
final class EdgeMarks {

  private EdgeMarks() {}

  /**
   * The marks that go on the panels: edge letters and joint names. They depend on the count of
   * faces alone, so they are known before the panels are drawn.
   */
  static List<PanelMarks> of(List<Outline> faces) {
    PieceRing ring = PieceRing.ofEqualPieces(faces.size(), 1, 1);
    List<PanelMarks> marks = new ArrayList<>();
    for (int face = 1; face <= faces.size(); face++) {
      int corners = faces.get(face - 1).size();
      Joint right = ring.joint(face);
      Joint left = ring.joint(face == 1 ? faces.size() : face - 1);
      List<String> edges = new ArrayList<>(Collections.nCopies(corners, ""));
      List<String> joints = new ArrayList<>(Collections.nCopies(corners, ""));
      edges.set(1, right.first().label());
      joints.set(1, right.mark().text());
      edges.set(corners - 1, left.second().label());
      joints.set(corners - 1, left.mark().text());
      marks.add(new PanelMarks(Integer.toString(face), edges, joints));
    }
    return marks;
  }
}
