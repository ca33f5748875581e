package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceHem;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.api.job.Seam;
import io.github.seamstead.api.job.SeamKind;
import io.github.seamstead.geometry.pattern.CutSize;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Fan;
import io.github.seamstead.geometry.pattern.Notches;
import io.github.seamstead.geometry.pattern.Opening;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Draws the panel of a face with the edges and openings that the document states. */
final class PanelDrawer {

  private static final String PANEL = "panel-";
  private static final String TO = "-to-";

  private final Cover cover;
  private final List<Outline> faces;
  private final List<PanelMarks> marks;
  private final Cancellation cancellation;

  PanelDrawer(Cover cover, List<Outline> faces, Cancellation cancellation) {
    this.cancellation = cancellation;
    this.cover = cover;
    this.faces = List.copyOf(faces);
    this.marks = EdgeMarks.of(faces, Collections.nCopies(faces.size(), 1));
  }

  /** The first face that a panel goes over, also one of an earlier plan: its name says it. */
  static int firstFace(Panel panel) {
    return Integer.parseInt(panel.id().substring(PANEL.length()).split(TO, -1)[0]);
  }

  int faces() {
    return faces.size();
  }

  /** Area of a face, in square metres. */
  double area(int face) {
    return faces.get(face - 1).area();
  }

  /** Whether the lower edge of a face is to be the band of a sheet. */
  boolean isOnBand(int face) {
    return cover.hem().of(face).kind() == HemKind.REINFORCED;
  }

  /** What no panel is larger than in any direction, allowances counted, in metres. */
  double largest() {
    double extent = 0;
    for (Outline face : faces) {
      Bounds box = face.bounds();
      extent = Math.max(extent, StrictMath.hypot(box.width(), box.height()));
    }
    double allowance =
        Math.max(
            cover.seam().allowance(), Math.max(cover.hem().largestAllowance(), cover.topTurnIn()));
    return Math.ceil(2 * extent + 8 * allowance);
  }

  /**
   * Draws the panel of a face, put together of parts that a kind of cloth holds, if one is given.
   */
  Panel panel(int face, Optional<SpliceRule> splices) {
    return panel(face, marks.get(face - 1), splices);
  }

  private Panel panel(int face, PanelMarks texts, Optional<SpliceRule> splices) {
    PanelSpec spec = PanelSpec.of(PANEL + face, edges(face)).withMarks(texts);
    spec = spec.withOpenings(openings(face).stream().map(PanelDrawer::opening).toList());
    if (splices.isPresent()) {
      spec = spec.withSplices(splices.get());
    }
    cancellation.goOn("panels were drawn");
    return Panel.of(faces.get(face - 1), spec, cancellation);
  }

  private List<FaceOpening> openings(int face) {
    List<FaceOpening> openings = new ArrayList<>();
    cover.door().filter(door -> door.face() == face).ifPresent(openings::add);
    cover.vents().stream().filter(vent -> vent.face() == face).forEach(openings::add);
    return openings;
  }

  /**
   * Draws panels each of which goes over some neighbouring faces in one piece.
   *
   * @param spans over how many faces each goes, from face 1 on
   * @return the panels; empty if faces that would stay together do not lie flat beside each other,
   *     have lower edges of different kinds or one that must be straight
   */
  Optional<List<Panel>> together(List<Integer> spans) {
    List<PanelMarks> texts = EdgeMarks.of(faces, spans);
    List<Panel> panels = new ArrayList<>();
    int face = 1;
    for (int i = 0; i < spans.size(); i++) {
      int span = spans.get(i);
      Optional<Panel> panel =
          span == 1
              ? Optional.of(panel(face, texts.get(i), Optional.empty()))
              : fan(face, span, texts.get(i));
      if (panel.isEmpty()) {
        return Optional.empty();
      }
      panels.add(panel.get());
      face += span;
    }
    return Optional.of(panels);
  }

  private Optional<Panel> fan(int first, int span, PanelMarks texts) {
    FaceHem hem = cover.hem().of(first);
    for (int face = first; face < first + span; face++) {
      FaceHem other = cover.hem().of(face);
      if (isOnBand(face) || other.kind() != hem.kind() || other.allowance() != hem.allowance()) {
        return Optional.empty();
      }
    }
    return Fan.of(faces.subList(first - 1, first - 1 + span))
        .map(fan -> fan(fan, first, span, texts));
  }

  /** Openings are cut where their faces lie; patches and flaps are those of the faces alone. */
  private Panel fan(Fan fan, int first, int span, PanelMarks texts) {
    cancellation.goOn("panels were drawn");
    List<Opening> openings = new ArrayList<>();
    List<PatternPiece> extras = new ArrayList<>();
    for (int i = 0; i < span; i++) {
      int face = first + i;
      for (FaceOpening stated : openings(face)) {
        Outline there = fan.place(i, outline(stated), faces.get(face - 1));
        openings.add(
            Opening.of(stated.id(), there, 0)
                .withPatch(stated.patch(), 0)
                .withFlap(stated.flap(), 0));
      }
      if (!openings(face).isEmpty()) {
        extras.addAll(panel(face, Optional.empty()).extras());
      }
    }
    PanelSpec spec =
        PanelSpec.of(PANEL + first + TO + (first + span - 1), edges(first))
            .over(span)
            .withMarks(texts)
            .withOpenings(openings);
    return Panel.of(fan.outline(), spec, cancellation).withExtras(extras);
  }

  /** Works what all panels share, shown on the first face. */
  void work(Run run) {
    Outline face = faces.get(0);
    PanelSpec spec = PanelSpec.of(PANEL + 1, edges(1));
    run.worked(
        "geometry.pattern.notches",
        "Match notches on the seam of panel 1",
        steps -> Notches.count(face.edgeLength(1), spec.notchSpacing(), steps));
    if (face.size() == 3) {
      run.worked(
          "geometry.pattern.mitre",
          "Cloth beyond the tip of panel 1",
          steps -> CutSize.tip(face, spec, steps));
    }
    if (CutSize.holdsFor(face, spec)) {
      run.worked(
          "geometry.pattern.width",
          "Width of panel 1 as cut",
          steps -> CutSize.width(face, spec, steps));
      run.worked(
          "geometry.pattern.height",
          "Height of panel 1 as cut",
          steps -> CutSize.height(face, spec, steps));
    }
  }

  private EdgePlan edges(int face) {
    Seam seam = cover.seam();
    EdgeAllowance base = base(cover.hem().of(face));
    EdgeAllowance top =
        cover.topTurnIn() > 0 ? EdgeAllowance.turnIn(cover.topTurnIn()) : EdgeAllowance.raw();
    if (seam.kind() == SeamKind.LAP) {
      return new EdgePlan(
          base,
          EdgeAllowance.lapOver(seam.allowance()),
          top,
          EdgeAllowance.lapUnder(seam.allowance()));
    }
    return EdgePlan.of(base, EdgeAllowance.finSeam(seam.allowance()), top);
  }

  private static EdgeAllowance base(FaceHem hem) {
    return switch (hem.kind()) {
      case TURNED -> EdgeAllowance.hem(hem.allowance());
      case REINFORCED -> EdgeAllowance.reinforced();
      case RAW -> EdgeAllowance.raw();
    };
  }

  private static Opening opening(FaceOpening stated) {
    return Opening.of(stated.id(), outline(stated), 0)
        .withPatch(stated.patch(), 0)
        .withFlap(stated.flap(), 0);
  }

  static Outline outline(FaceOpening stated) {
    return new Outline(stated.outline().stream().map(p -> Vector2D.of(p.x(), p.y())).toList());
  }
}
