package io.github.seamstead.geometry.pattern;

import io.github.seamstead.shared.check.Args;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.work.Cancellation;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Cuts a face into bands, and bands into parts, that the cloth can yield. */
final class Splicer {

  private static final double FIT = 1e-9;

  /** In widths of the widest allowance: how far splices keep from a corner of the face. */
  private static final double GUARD_WIDTHS = 2;

  /** More parts than anybody would sew into one panel; a unit left out gives thousands. */
  private static final int MOST_PARTS = 1000;

  private final Outline face;
  private final PanelSpec spec;
  private final SpliceRule rule;
  private static final String DOING = "a panel was cut into parts";

  private final String where;
  private final double widest;
  private final double guarding;
  private final Cancellation cancellation;
  private final List<Outline> zones = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  private Splicer(
      Outline face, PanelSpec spec, SpliceRule rule, double guarding, Cancellation cancellation) {
    this.guarding = guarding;
    this.cancellation = cancellation;
    this.face = face;
    this.spec = spec;
    this.rule = rule;
    this.where = "panel " + spec.id();
    this.widest =
        spec.edges().forFace(face).stream()
            .mapToDouble(EdgeAllowance::width)
            .reduce(rule.lap(), Math::max);
    for (Opening opening : spec.openings()) {
      zones.add(Openings.grown(where, opening.outline(), opening.margin()));
    }
  }

  static Panel splice(
      Outline face,
      PatternPiece one,
      Part whole,
      PanelSpec spec,
      SpliceRule rule,
      List<PatternPiece> extras,
      Cancellation cancellation) {
    Bounds bounds = one.cut().bounds();
    if (bounds.height() <= rule.maxHeight() && bounds.width() <= rule.maxWidth()) {
      return new Panel(spec.id(), face, 1, List.of(one), extras, List.of());
    }
    Args.require(
        face.isConvex(), where(spec) + ": given a face with an inward corner, cannot be spliced");
    requireFewParts(one, spec, rule);
    Splicer splicer = divided(face, whole, spec, rule, 1, cancellation);
    List<PatternPiece> pieces = splicer.pieces(one.holes());
    return new Panel(
        spec.id(), face, 1, pieces, extras, SplicePairs.of(pieces, () -> cancellation.goOn(DOING)));
  }

  /** Refuses at once what would take minutes to cut into parts that nobody wants. */
  private static void requireFewParts(PatternPiece one, PanelSpec spec, SpliceRule rule) {
    double parts = one.clothArea() / (rule.maxWidth() * rule.maxHeight());
    Bounds size = one.cut().bounds();
    Args.agree(
        parts <= MOST_PARTS,
        where(spec)
            + ": given "
            + Numbers.significant(size.width(), 4)
            + " m by "
            + Numbers.significant(size.height(), 4)
            + " m to cut from cloth of "
            + Numbers.significant(rule.maxWidth(), 4)
            + " m by "
            + Numbers.significant(rule.maxHeight(), 4)
            + " m, which takes at least "
            + Numbers.fixed(Math.ceil(parts), 0)
            + " parts",
        "must be at most " + MOST_PARTS + ": is a length given without its unit?");
  }

  /** Keeps well off the corners if the cloth allows it, else less, and at last not at all. */
  private static Splicer divided(
      Outline face,
      Part whole,
      PanelSpec spec,
      SpliceRule rule,
      double guarding,
      Cancellation cancellation) {
    Splicer splicer = new Splicer(face, spec, rule, guarding, cancellation);
    try {
      splicer.bands(whole);
      return splicer;
    } catch (IllegalArgumentException e) {
      if (guarding == 0) {
        throw e;
      }
      return divided(face, whole, spec, rule, guarding == 1 ? 0.5 : 0, cancellation);
    }
  }

  private static String where(PanelSpec spec) {
    return "panel " + spec.id();
  }

  private void bands(Part whole) {
    Bounds stitch = whole.outline().bounds();
    Bounds cut = cutBounds(whole);
    List<double[]> levels = new ArrayList<>();
    zones.forEach(z -> levels.add(new double[] {z.bounds().minY(), z.bounds().maxY()}));
    for (int i = 0; i < whole.corners().size(); i++) {
      double y = whole.corners().get(i).getY();
      guard(levels, y, reach(whole, i), stitch.minY(), stitch.maxY());
    }
    // Beside an upright splice the lap follows the hip up, by the mitre's reach at most.
    double rise =
        cut.width() > rule.maxWidth() ? Math.max(0, spec.mitreLimit() * widest - rule.lap()) : 0;
    double after = cut.maxY() - stitch.maxY();
    double keep = after + 2 * rule.lap();
    double[] leans =
        leans(whole, Vector2D.of(-1, 0), stitch.minY() + rule.lap(), stitch.maxY() - keep);
    Stations stations =
        new Stations(
            stitch.minY(),
            stitch.maxY(),
            stitch.minY() - cut.minY(),
            Math.max(after, rise),
            rule.maxHeight() - rise,
            rule.lap(),
            leans[1],
            -leans[0],
            keep,
            levels);
    Part rest = whole;
    int band = 0;
    for (double y : stations.lines(where, rule.shift(), rule.greatestShift())) {
      String joint = spec.id() + "/H" + (band + 1);
      Vector2D at = Vector2D.of(0, y);
      columns(rest.leftOf(at, Vector2D.of(-1, 0), under(joint)), band);
      rest = rest.leftOf(at, Vector2D.of(1, 0), over(joint));
      band++;
    }
    columns(rest, band);
  }

  private void columns(Part bandPart, int band) {
    Bounds stitch = bandPart.outline().bounds();
    Bounds cut = cutBounds(bandPart);
    List<double[]> spans = new ArrayList<>();
    zones.stream()
        .map(Outline::bounds)
        .filter(z -> z.maxY() > stitch.minY() && z.minY() < stitch.maxY())
        .forEach(z -> spans.add(new double[] {z.minX(), z.maxX()}));
    for (int i = 0; i < bandPart.corners().size(); i++) {
      double x = bandPart.corners().get(i).getX();
      guard(spans, x, reach(bandPart, i), stitch.minX(), stitch.maxX());
    }
    double after = cut.maxX() - stitch.maxX();
    double keep = after + 2 * rule.lap();
    double[] leans =
        leans(bandPart, Vector2D.of(0, 1), stitch.minX() + rule.lap(), stitch.maxX() - keep);
    Stations stations =
        new Stations(
            stitch.minX(),
            stitch.maxX(),
            stitch.minX() - cut.minX(),
            after,
            rule.maxWidth(),
            rule.lap(),
            leans[1],
            -leans[0],
            keep,
            spans);
    // Upright splices of neighbouring bands are kept apart, so that four layers never meet.
    double apart = Math.min(3 * rule.lap(), rule.maxWidth() / 4);
    double shift = band % 2 == 0 || stations.isTight(apart) ? 0 : apart;
    Part rest = bandPart;
    int column = 0;
    for (double x : stations.lines(where, shift, shift)) {
      String joint = spec.id() + "/V" + (band + 1) + "." + (column + 1);
      Vector2D at = Vector2D.of(x, 0);
      keep(rest.leftOf(at, Vector2D.of(0, 1), under(joint)));
      rest = rest.leftOf(at, Vector2D.of(0, -1), over(joint));
      column++;
    }
    keep(rest);
  }

  /** Keeps splices off a corner, where they would cut into its mitre or leave a sliver. */
  private static void guard(
      List<double[]> intervals, double corner, double off, double least, double greatest) {
    if (corner > least + FIT && corner < greatest - FIT) {
      intervals.add(new double[] {corner - off, corner + off});
    }
  }

  /** How far from a corner of the face the ends of its allowances may lie. */
  private double reach(Part part, int corner) {
    Outline outline = part.outline();
    EdgeAllowance before = part.allowances().get((corner + outline.size() - 1) % outline.size());
    EdgeAllowance after = part.allowances().get(corner);
    double off = GUARD_WIDTHS * widest;
    if (before.folds() != after.folds()) {
      Vector2D in = outline.vertex(corner).subtract(outline.vertex(corner - 1)).normalize();
      Vector2D out = outline.vertex(corner + 1).subtract(outline.vertex(corner)).normalize();
      double turn = Math.max(FIT, Math.abs(in.signedArea(out)));
      // A fold ends at the mirrored hip: its width times the cotangent, beside the hip's allowance.
      double fold = before.folds() ? before.width() : after.width();
      double side = before.folds() ? after.width() : before.width();
      off = Math.max(off, (fold * Math.abs(in.dot(out)) + side) / turn);
    }
    return guarding * off;
  }

  /**
   * Tells how far the allowances of the edges that splices meet reach beyond a splice's own lap.
   * The splices run along a unit vector u, with the lap to its right, between {@code first} and
   * {@code last}. A fold of width w along e ends as the mirror image of the splice, which leans by
   * {@code 2 w (e · u)}; an allowance too blunt for a mitre ends square, {@code w (e · u)} beside
   * the corner.
   *
   * @return the furthest reach back over the splice, 0 or less, and ahead of the lap, 0 or more
   */
  private double[] leans(Part part, Vector2D u, double first, double last) {
    double back = 0;
    double ahead = 0;
    Outline outline = part.outline();
    for (int i = 0; i < outline.size(); i++) {
      double from = outline.vertex(i).signedArea(u);
      double to = outline.vertex(i + 1).signedArea(u);
      if (Math.min(from, to) >= last || Math.max(from, to) <= first) {
        continue;
      }
      EdgeAllowance allowance = part.allowances().get(i);
      Vector2D edge = outline.vertex(i + 1).subtract(outline.vertex(i)).normalize();
      double width = allowance.width();
      double lean = width * edge.dot(u);
      if (allowance.folds()) {
        back = Math.min(back, 2 * lean);
        ahead = Math.max(ahead, 2 * lean);
      } else {
        double turn = Math.abs(edge.signedArea(u));
        double under = Math.PI - StrictMath.atan2(turn, edge.dot(u));
        double over = Math.PI - StrictMath.atan2(turn, -edge.dot(u));
        if (CutLine.endsSquare(under, width, rule.lap(), spec.mitreLimit())) {
          ahead = Math.max(ahead, lean - rule.lap());
        }
        if (CutLine.endsSquare(over, width, 0, spec.mitreLimit())) {
          back = Math.min(back, lean);
        }
      }
    }
    return new double[] {back, ahead};
  }

  private void keep(Part part) {
    cancellation.goOn(DOING);
    Bounds cut = cutBounds(part);
    Args.require(
        cut.width() <= rule.maxWidth() + FIT && cut.height() <= rule.maxHeight() + FIT,
        where
            + ": a spliced part needs "
            + Numbers.fixed(cut.width(), 3)
            + " m by "
            + Numbers.fixed(cut.height(), 3)
            + " m, more than the cloth of "
            + Numbers.significant(rule.maxWidth(), 4)
            + " m by "
            + Numbers.significant(rule.maxHeight(), 4)
            + " m");
    parts.add(part);
  }

  private Bounds cutBounds(Part part) {
    return CutLine.around(where, part.outline(), part.allowances(), spec.mitreLimit())
        .outline()
        .bounds();
  }

  private Part.Side under(String joint) {
    return new Part.Side(-1, "", joint, EdgeAllowance.lapUnder(rule.lap()));
  }

  private static Part.Side over(String joint) {
    return new Part.Side(-1, "", joint, EdgeAllowance.lapOver(0));
  }

  private List<PatternPiece> pieces(List<PieceHole> holes) {
    List<PatternPiece> pieces = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      cancellation.goOn(DOING);
      Part part = parts.get(i);
      Outline outline = part.outline();
      List<PieceHole> inside = holes.stream().filter(h -> outline.contains(h.finished())).toList();
      String suffix = parts.size() == 1 ? "" : "-" + (i + 1);
      pieces.add(
          PieceMaker.ofPart(
              spec.id() + suffix,
              spec.marks().panel() + suffix,
              spec.kind() == PieceKind.PANEL ? PieceKind.PANEL_PART : spec.kind(),
              face,
              part,
              spec,
              inside));
    }
    return pieces;
  }
}
