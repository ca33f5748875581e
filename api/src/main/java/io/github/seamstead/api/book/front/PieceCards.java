package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.markout.BaselineRow;
import io.github.seamstead.geometry.markout.CheckLength;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.pattern.EdgeRole;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceEdge;
import io.github.seamstead.geometry.pattern.PieceHole;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A card for each shape: how it is marked out, and what is written on each copy. */
final class PieceCards {

  private PieceCards() {}

  static void write(Desk desk) {
    if (desk.plan().cover().isEmpty()) {
      return;
    }
    List<CutShape> shapes = desk.plan().cover().get().cuts();
    double scale = PieceSketch.scale(shapes);
    Map<String, List<CutPlaces.Place>> places = CutPlaces.of(desk);
    for (CutShape shape : shapes) {
      List<CutPlaces.Place> where = places.getOrDefault(shape.id(), List.of());
      desk.add(title(shape), "Piece card", Sheet.Kind.CARD, card(desk, shape, scale, where));
    }
  }

  static String title(CutShape shape) {
    return "Piece " + shape.name();
  }

  private static Markup card(Desk desk, CutShape shape, double scale, List<CutPlaces.Place> where) {
    Markup m = new Markup();
    m.open("div", "class", "three");
    desk.figure(m, PieceSketch.of(shape, scale, desk.sizes()), false);
    m.open("div").open("div", "class", "wrap").open("div");
    names(m, shape, where);
    m.close().open("div");
    BaseLine base = BaseLine.of(shape.pattern());
    if (base.isCurved()) {
      curved(desk, m, base);
    } else {
      straight(desk, m, base);
    }
    m.close().closeLine();
    check(desk, m, base);
    folds(desk, m, base, shape);
    openings(desk, m, base, shape.pattern());
    edges(desk, m, shape.pattern());
    m.close().closeLine();
    return m;
  }

  private static void names(Markup m, CutShape shape, List<CutPlaces.Place> where) {
    List<PatternPiece> pieces = shape.pieces();
    boolean named = pieces.get(0).edges().stream().anyMatch(e -> !e.letter().isEmpty());
    if (!named) {
      m.open("p", "class", "copies").text(pieces.size() == 1 ? "One to cut: " : "Cut ");
      if (pieces.size() > 1) {
        m.text(pieces.size() + ": ");
      }
      for (int i = 0; i < pieces.size(); i++) {
        Ticks.bare(m, key(shape, i), pieces.get(i).label() + ", copy " + (i + 1) + " cut");
      }
      m.text(" Write on each: ").element("b", pieces.get(0).label()).closeLine();
      copies(m, where);
      return;
    }
    List<String> columns = new ArrayList<>(List.of("name", "right", "left"));
    if (!where.isEmpty()) {
      columns.add("cut card: no.");
    }
    columns.add("cut");
    Ticks.table(m, "Names of each copy", columns.toArray(String[]::new));
    for (int i = 0; i < pieces.size(); i++) {
      PatternPiece piece = pieces.get(i);
      m.open("tr").open("td").element("b", piece.label()).close();
      Ticks.cells(m, name(piece, "R"), name(piece, "L"));
      if (!where.isEmpty()) {
        int copy = i + 1;
        Ticks.cells(
            m,
            where.stream()
                .filter(p -> p.copy() == copy)
                .map(p -> p.sheet() + ": " + p.number())
                .collect(Collectors.joining()));
      }
      m.open("td");
      Ticks.bare(m, key(shape, i), "piece " + piece.label() + " named and cut");
      m.close().closeLine();
    }
    Ticks.endTable(m);
  }

  /** On which cut cards the copies of a piece lie, that need not be told apart. */
  private static void copies(Markup m, List<CutPlaces.Place> where) {
    if (where.isEmpty()) {
      return;
    }
    Map<String, String> numbers = new LinkedHashMap<>();
    where.forEach(
        p -> numbers.merge(p.sheet(), Integer.toString(p.number()), (a, b) -> a + ", " + b));
    m.open("p").text("Cut card: ");
    m.text(
        numbers.entrySet().stream()
            .map(e -> e.getKey() + ", no. " + e.getValue())
            .collect(Collectors.joining("; ")));
    m.text(".").closeLine();
  }

  private static String key(CutShape shape, int copy) {
    return shape.id() + "c" + (copy + 1);
  }

  private static String name(PatternPiece piece, String side) {
    return piece.edges().stream()
        .filter(e -> e.letter().endsWith(side))
        .map(e -> e.letter() + " " + e.joint())
        .collect(Collectors.joining(", "));
  }

  private static void straight(Desk desk, Markup m, BaseLine base) {
    Sizes w = desk.sizes();
    MarkOut tables = base.markOut(w.words().isImperial());
    Ticks.table(m, "Corners from the base line", "", "#from a", "#square up");
    for (int letter = 0; letter < base.size(); letter++) {
      int index = base.index(letter);
      BaselineRow row =
          tables.baseline().stream().filter(r -> r.corner() == index).findFirst().orElseThrow();
      m.open("tr").open("td").element("b", BaseLine.letter(letter)).close();
      Ticks.cells(
          m, "#" + w.length(row.markedStation()), "#" + w.length(Math.max(0, row.markedOffset())));
      m.closeLine();
    }
    Ticks.endTable(m);
  }

  private static void check(Desk desk, Markup m, BaseLine base) {
    Sizes w = desk.sizes();
    if (base.isCurved()) {
      int[] arc = base.arc();
      Vector2D first = base.local(base.corner(arc[0]));
      Vector2D last = base.local(base.corner(arc[2]));
      m.open("p", "class", "check").text("Check: across the ends of the curve ");
      m.element("b", w.length(first.distance(last))).closeLine();
      return;
    }
    List<CheckLength> checks =
        base.markOut(w.words().isImperial()).checks().stream()
            .filter(c -> !c.side())
            .sorted(Comparator.comparingDouble(CheckLength::marked).reversed())
            .limit(2)
            .toList();
    if (!checks.isEmpty()) {
      m.open("p", "class", "check").text("Check before cutting: ");
      m.element(
          "b",
          checks.stream()
              .map(c -> pair(base, c.from(), c.to()) + " " + w.length(c.marked()))
              .collect(Collectors.joining(", ")));
      m.text(", each within " + w.words().small(MarkOut.HAND_TOLERANCE) + ".").closeLine();
    }
  }

  private static String pair(BaseLine base, int from, int to) {
    int a = Math.floorMod(from - base.edge(), base.size());
    int b = Math.floorMod(to - base.edge(), base.size());
    return BaseLine.letter(Math.min(a, b)) + "–" + BaseLine.letter(Math.max(a, b));
  }

  private static void curved(Desk desk, Markup m, BaseLine base) {
    Sizes w = desk.sizes();
    int[] arc = base.arc();
    Vector2D first = base.local(base.corner(arc[0]));
    Vector2D middle = base.local(base.corner(arc[1]));
    Vector2D last = base.local(base.corner(arc[2]));
    Vector2D centre = BaseLine.centre(first, middle, last);
    m.element(
        "p",
        "The curve: radius "
            + w.length(centre.distance(middle))
            + " about a nail "
            + place(w, centre)
            + ". It starts and ends at the two corners that it joins.");
    Ticks.table(m, "Corners from the base line", "", "#from a", "#square up");
    int letter = 0;
    for (int corner : base.corners()) {
      Vector2D p = base.local(base.corner(corner));
      m.open("tr").open("td").element("b", BaseLine.letter(letter++)).close();
      Ticks.cells(m, "#" + w.length(p.getX()), "#" + w.length(p.getY()));
      m.closeLine();
    }
    Ticks.endTable(m);
  }

  private static String place(Sizes w, Vector2D p) {
    return signed(w, p.getX())
        + " along and "
        + w.length(Math.abs(p.getY()))
        + (p.getY() < -5e-4 ? " below the line" : " up");
  }

  private static String signed(Sizes w, double along) {
    return along < -5e-4 ? w.length(-along) + " back from a" : w.length(Math.abs(along));
  }

  private static void edges(Desk desk, Markup m, PatternPiece piece) {
    Set<String> roles = new LinkedHashSet<>();
    for (PieceEdge edge : piece.edges()) {
      String allowance =
          edge.allowance().width() > 0
              ? " " + desk.sizes().words().small(edge.allowance().width())
              : "";
      if (!edge.allowance().role().equals(EdgeRole.RAW) || allowance.isEmpty()) {
        roles.add(edge.allowance().role().label() + allowance);
      }
    }
    m.element(
        "p",
        (piece.goodSide() ? "Drawn good side up" : "Drawn plain side up")
            + "; arrow: warp. Edges, allowance included: "
            + String.join("; ", roles)
            + ".",
        "class",
        "small");
  }

  private static void folds(Desk desk, Markup m, BaseLine base, CutShape shape) {
    Sizes w = desk.sizes();
    List<Fold> folds = shape.pattern().folds();
    if (folds.isEmpty()) {
      return;
    }
    Ticks.table(m, "Hips within the piece: mark, do not cut", "", "foot", "top", "#length");
    for (Fold fold : folds) {
      m.open("tr").open("td").element("b", shape.name(fold)).close();
      Ticks.cells(
          m,
          place(w, base.local(fold.lower())),
          place(w, base.local(fold.upper())),
          "#" + w.length(fold.length()));
      m.closeLine();
    }
    Ticks.endTable(m);
    if (shape.pieces().size() > 1) {
      m.element(
          "p",
          "Folds are counted from the left, good side up: fold 1 lies between the first two faces"
              + " of the panel.",
          "class",
          "small");
    }
  }

  private static void openings(Desk desk, Markup m, BaseLine base, PatternPiece piece) {
    Sizes w = desk.sizes();
    for (PieceHole hole : piece.holes()) {
      List<Vector2D> points = base.local(hole.cut().vertices());
      String text =
          points.size() > BaseLine.MOST_CORNERS
              ? round(w, points)
              : points.stream()
                  .map(p -> w.length(p.getX()) + " / " + w.length(p.getY()))
                  .collect(Collectors.joining(" · "));
      m.open("p").element("b", "Hole “" + hole.name() + "”, along / up: ").text(text + ".");
      m.closeLine();
    }
    if (!piece.notches().isEmpty()) {
      m.open("p")
          .element("b", "Notches on both seam edges, along the cut from the lower corner: ")
          .text(notches(w, base, piece) + ".")
          .closeLine();
    }
  }

  private static String round(Sizes w, List<Vector2D> points) {
    Bounds b = new Outline(points).bounds();
    return "round, "
        + w.length(b.width())
        + " across, middle at "
        + w.length((b.minX() + b.maxX()) / 2)
        + " / "
        + w.length((b.minY() + b.maxY()) / 2);
  }

  /** Both edges carry the same notches, so those of one are enough. */
  private static String notches(Sizes w, BaseLine base, PatternPiece piece) {
    int edge = piece.notches().get(0).edge();
    int cutEdge = piece.cutEdgeOwners().indexOf(edge);
    Vector2D p = piece.cut().vertex(cutEdge);
    Vector2D q = piece.cut().vertex(cutEdge + 1);
    Vector2D low = base.local(p).getY() <= base.local(q).getY() ? p : q;
    List<String> texts = new ArrayList<>();
    for (Notch n : piece.notchesOn(edge)) {
      texts.add(
          w.length(n.onCut().distance(low))
              + (n.doubled() ? " (double, the lowest of the panel)" : ""));
    }
    return String.join(", ", texts);
  }
}
