package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Holes, patches and flaps of doors and vents. */
final class Openings {

  /** Slack for a zone that touches a seam exactly, in metres. */
  private static final double TOUCH = 1e-9;

  private Openings() {}

  /** Checks all openings against the face and one another, and cuts them. */
  static List<PieceHole> holes(Outline face, List<EdgeAllowance> allowances, PanelSpec spec) {
    List<PieceHole> holes = new ArrayList<>();
    List<Outline> zones = new ArrayList<>();
    for (Opening opening : spec.openings()) {
      String where = "panel " + spec.id() + ", opening " + opening.name();
      Args.agree(
          face.contains(opening.outline()),
          where + ": leaves the face; given " + farthest(face, opening.outline()),
          "must lie inside the face, which is " + size(face));
      Outline zone = grown(where, opening.outline(), opening.margin());
      requireClear(where, face, allowances, zone);
      for (int i = 0; i < zones.size(); i++) {
        Args.agree(
            !zones.get(i).meets(zone),
            where + ": meets opening " + spec.openings().get(i).name(),
            "must lie apart");
      }
      zones.add(zone);
      holes.add(hole(where, opening));
    }
    return holes;
  }

  static List<PatternPiece> extras(PanelSpec spec) {
    List<PatternPiece> extras = new ArrayList<>();
    for (Opening opening : spec.openings()) {
      String name = spec.marks().panel() + " " + opening.name();
      if (opening.patch() > 0) {
        String id = spec.id() + "-" + opening.name() + "-patch";
        Outline stitch = grown(id, opening.outline(), opening.patch());
        extras.add(
            PieceMaker.free(
                id,
                name + " patch",
                PieceKind.PATCH,
                spec.count(),
                stitch,
                Collections.nCopies(stitch.size(), EdgeAllowance.turnIn(opening.patchFold())),
                List.of(hole(id, opening))));
      }
      if (opening.flap() > 0) {
        String id = spec.id() + "-" + opening.name() + "-flap";
        Outline stitch = grown(id, opening.outline(), opening.flap());
        extras.add(
            PieceMaker.free(
                id,
                name + " flap",
                PieceKind.FLAP,
                spec.count(),
                stitch,
                Collections.nCopies(stitch.size(), EdgeAllowance.hem(opening.flapHem())),
                List.of()));
      }
    }
    return extras;
  }

  /** The opening with a margin round it. */
  static Outline grown(String where, Outline outline, double margin) {
    if (margin == 0) {
      return outline;
    }
    List<EdgeAllowance> margins =
        Collections.nCopies(outline.size(), EdgeAllowance.lapOver(margin));
    return CutLine.around(where, outline, margins, Mitre.USUAL_LIMIT).outline();
  }

  private static PieceHole hole(String where, Opening opening) {
    Outline finished = opening.outline();
    if (opening.turnIn() == 0) {
      return new PieceHole(opening.name(), finished, finished);
    }
    return new PieceHole(
        opening.name(), finished, Inset.of(where + ": turn-in", finished, opening.turnIn()));
  }

  /** The corner that lies farthest out, where a person finds it: along the base and up. */
  private static String farthest(Outline face, Outline zone) {
    Optional<Vector2D> out =
        zone.vertices().stream()
            .filter(corner -> !face.contains(corner))
            .max(Comparator.comparingDouble(face::distanceToEdge));
    return out.map(
            corner ->
                "a corner at "
                    + Numbers.fixed(corner.getX(), 3)
                    + " m along the base and "
                    + Numbers.fixed(corner.getY(), 3)
                    + " m up")
        .orElse("an edge that crosses one of the face");
  }

  private static String size(Outline face) {
    return Numbers.fixed(face.bounds().width(), 3)
        + " m wide and "
        + Numbers.fixed(face.bounds().height(), 3)
        + " m high";
  }

  /** The zone must stay inside the face and off each edge by that edge's allowance. */
  private static void requireClear(
      String where, Outline face, List<EdgeAllowance> allowances, Outline zone) {
    Args.agree(
        face.contains(zone),
        where + ": its patch or flap leaves the face at " + farthest(face, zone),
        "move it or make it narrower");
    for (int i = 0; i < face.size(); i++) {
      double needed = allowances.get(i).width();
      double gap = zone.distanceToSegment(face.vertex(i), face.vertex(i + 1));
      Args.agree(
          gap >= needed - TOUCH,
          where
              + ": reaches into the "
              + allowances.get(i).role().label()
              + " of edge "
              + (i + 1)
              + "; given "
              + Numbers.fixed(gap * 1000, 1)
              + " mm from it with patch and flap",
          "must be " + Numbers.fixed(needed * 1000, 1) + " mm or more");
    }
  }
}
