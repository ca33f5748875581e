package io.github.seamstead.api.plan;

import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Hem;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.api.job.Seam;
import io.github.seamstead.api.job.SeamKind;
import io.github.seamstead.api.job.SheetEdge;
import io.github.seamstead.api.job.Stock;
import io.github.seamstead.geometry.pattern.EdgeAllowance;
import io.github.seamstead.geometry.pattern.EdgePlan;
import io.github.seamstead.geometry.pattern.Opening;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PanelMarks;
import io.github.seamstead.geometry.pattern.PanelSpec;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.SpliceRule;
import io.github.seamstead.geometry.plane.Outline;
import io.github.seamstead.shared.check.ArgumentFault;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Draws a panel for each face and gathers the shapes to cut. */
final class CoverPlanner {

  /** Two outlines whose corners differ by less than this are cut by one template, in metres. */
  private static final double SAME_SHAPE = 1e-6;

  private CoverPlanner() {}

  static Optional<CoverPart> plan(
      Run run, List<Outline> faces, List<PanelMarks> marks, Optional<FramePart> frame) {
    Optional<Cover> stated = run.document().cover();
    if (stated.isEmpty()) {
      run.skip(Chapter.PATTERN, "the document has no cover");
      return Optional.empty();
    }
    Cover cover = stated.get();
    if (run.document()
        .stock()
        .filter(
            stock ->
                isTooSmall(run, stock, cover) || PartEstimate.isTooMany(run, stock, cover, faces))
        .isPresent()) {
      return Optional.empty();
    }
    List<Panel> panels = new ArrayList<>();
    for (int face = 1; face <= faces.size(); face++) {
      int number = face;
      Outline outline = faces.get(face - 1);
      PanelMarks mark = marks.get(face - 1);
      String path = path(cover, number);
      run.attempt(path, () -> panel(run, cover, number, faces.size(), outline, mark))
          .ifPresent(panels::add);
    }
    if (panels.size() < faces.size()) {
      return Optional.empty();
    }
    List<PatternPiece> trims = TrimPlanner.pieces(run, cover, frame);
    double area =
        panels.stream().mapToDouble(Panel::clothArea).sum()
            + trims.stream().mapToDouble(t -> t.clothArea() * t.count()).sum();
    return Optional.of(
        new CoverPart(
            panels,
            trims,
            cuts(panels, trims),
            area,
            area * cover.fabric().massPerArea(),
            TrimPlanner.lining(run, cover, frame)));
  }

  /** Notes a stock of which no piece is larger than the laps that would join it. */
  private static boolean isTooSmall(Run run, Stock stock, Cover cover) {
    double widest =
        Stream.concat(
                    stock.sheets().stream().map(s -> Math.min(s.length(), s.width())),
                    stock.rolls().stream().map(r -> Math.min(r.length(), r.width())))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0)
            - 2 * stock.edgeMargin();
    if (widest > 2 * cover.spliceLap()) {
      return false;
    }
    run.fault(
        "$.stock",
        "no sheet or roll with more than " + Numbers.significant(widest, 4) + " m between margins",
        "must hold part of a panel: more than twice the splice lap of "
            + Numbers.plain(cover.spliceLap())
            + " m");
    return true;
  }

  /** The value that a refused panel most likely comes from. */
  private static String path(Cover cover, int face) {
    if (cover.door().filter(door -> door.face() == face).isPresent()) {
      return "$.cover.door";
    }
    for (int i = 0; i < cover.vents().size(); i++) {
      if (cover.vents().get(i).face() == face) {
        return "$.cover.vents[" + i + "]";
      }
    }
    return "$.cover";
  }

  private static Panel panel(
      Run run, Cover cover, int face, int faces, Outline outline, PanelMarks marks) {
    PanelSpec spec = PanelSpec.of("panel-" + face, edges(cover)).withMarks(marks);
    List<Opening> openings = new ArrayList<>();
    cover.door().filter(door -> door.face() == face).ifPresent(d -> openings.add(opening(d)));
    cover.vents().stream().filter(v -> v.face() == face).forEach(v -> openings.add(opening(v)));
    spec = spec.withOpenings(openings);
    Optional<Stock> stock = run.document().stock();
    if (stock.isPresent()) {
      spec = spec.withSplices(splices(cover, stock.get(), face, faces));
    }
    return Panel.of(outline, spec);
  }

  private static EdgePlan edges(Cover cover) {
    Seam seam = cover.seam();
    EdgeAllowance base = base(cover.hem());
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

  private static EdgeAllowance base(Hem hem) {
    return switch (hem.kind()) {
      case TURNED -> EdgeAllowance.hem(hem.allowance());
      case REINFORCED -> EdgeAllowance.reinforced();
      case RAW -> EdgeAllowance.raw();
    };
  }

  private static Opening opening(FaceOpening stated) {
    List<Vector2D> corners = stated.outline().stream().map(p -> Vector2D.of(p.x(), p.y())).toList();
    return Opening.of(stated.id(), new Outline(corners), 0)
        .withPatch(stated.patch(), 0)
        .withFlap(stated.flap(), 0);
  }

  /**
   * The piece of cloth that parts of a panel must fit: of the kind of stock of which there is most,
   * so that parts find a place on nearly all of it.
   */
  private static SpliceRule splices(Cover cover, Stock stock, int face, int faces) {
    boolean onBand = cover.hem().kind() == HemKind.REINFORCED;
    List<Cloth> cloths = new ArrayList<>();
    stock
        .sheets()
        .forEach(
            s -> cloths.addAll(cloths(s.length(), s.width(), s.count(), s.reinforced(), onBand)));
    stock
        .rolls()
        .forEach(
            r -> cloths.addAll(cloths(r.length(), r.width(), r.count(), r.reinforced(), onBand)));
    Cloth most =
        cloths.stream()
            .max(Comparator.comparingDouble(Cloth::allArea))
            .orElseThrow(
                () ->
                    ArgumentFault.of(
                        "hem: given reinforced, but no stock has a reinforced edge, must be turned"
                            + " or raw"));
    double margin = stock.edgeMargin();
    double height = most.height() - (onBand ? 1 : 2) * margin;
    SpliceRule rule = SpliceRule.of(most.width() - 2 * margin, height, cover.spliceLap());
    return cover.staggerSplices()
        ? rule.staggered(face, faces, Math.min(2 * cover.spliceLap(), height / 8))
        : rule;
  }

  /**
   * A kind of stock as panels stand on it.
   *
   * @param width along the panel's base, in metres
   * @param height up the panel, in metres
   * @param count how many alike
   */
  private record Cloth(double width, double height, int count) {

    double allArea() {
      return width * height * count;
    }
  }

  /** Upright along the longer side; with a hem on a band, upright on the band. */
  private static List<Cloth> cloths(
      double length, double width, int count, List<SheetEdge> bands, boolean onBand) {
    if (!onBand) {
      return List.of(new Cloth(Math.min(length, width), Math.max(length, width), count));
    }
    List<Cloth> cloths = new ArrayList<>();
    if (bands.contains(SheetEdge.BOTTOM) || bands.contains(SheetEdge.TOP)) {
      cloths.add(new Cloth(length, width, count));
    }
    if (bands.contains(SheetEdge.LEFT) || bands.contains(SheetEdge.RIGHT)) {
      cloths.add(new Cloth(width, length, count));
    }
    return cloths;
  }

  private static List<CutShape> cuts(List<Panel> panels, List<PatternPiece> trims) {
    List<List<PatternPiece>> groups = new ArrayList<>();
    Stream.concat(panels.stream().flatMap(panel -> panel.pieces().stream()), trims.stream())
        .forEach(
            piece ->
                groups.stream()
                    .filter(group -> same(group.get(0), piece))
                    .findFirst()
                    .orElseGet(
                        () -> {
                          List<PatternPiece> fresh = new ArrayList<>();
                          groups.add(fresh);
                          return fresh;
                        })
                    .addAll(Collections.nCopies(piece.count(), piece)));
    List<CutShape> cuts = new ArrayList<>();
    for (int i = 0; i < groups.size(); i++) {
      cuts.add(new CutShape("shape-" + (i + 1), groups.get(i)));
    }
    return cuts;
  }

  private static boolean same(PatternPiece a, PatternPiece b) {
    if (a.kind() != b.kind()
        || a.cut().size() != b.cut().size()
        || !a.reinforcedCutEdge().equals(b.reinforcedCutEdge())
        || a.holes().size() != b.holes().size()) {
      return false;
    }
    for (int i = 0; i < a.cut().size(); i++) {
      if (a.cut().vertex(i).distance(b.cut().vertex(i)) > SAME_SHAPE) {
        return false;
      }
    }
    return true;
  }
}
