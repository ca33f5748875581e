package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceHole;
import io.github.seamstead.shared.plane.Bounds;
import io.github.seamstead.shared.plane.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A piece with its dimensions, at the printed scale that all pieces of the job share. */
final class PieceSketch {

  private static final double RIGHT = 7;
  private static final double LEFT = 16;

  /** Room for a piece itself, so that three cards have room on a page, in millimetres. */
  private static final double WIDEST = 58;

  private static final double TALLEST = 48;

  /** From one line of words to the next, half an arrow, and how finely room is looked for. */
  private static final Vector2D BELOW_IT = Vector2D.of(0, 4.2);

  private static final double ARROW = 4;
  private static final double STEP = 2;
  private static final double ABOVE = 10.5;
  private static final double BELOW = 13;
  private static final double[] SCALES = {1, 2, 2.5, 4, 5, 8, 10, 15, 20, 25, 30, 40, 50, 75, 100};

  private PieceSketch() {}

  /** The least reduction at which every piece of the job has room on half a sheet. */
  static double scale(List<CutShape> shapes) {
    for (double s : SCALES) {
      double perMetre = 1000 / s;
      boolean fits =
          shapes.stream()
              .map(CutShape::pattern)
              .map(PieceSketch::box)
              .allMatch(b -> b.width() * perMetre <= WIDEST && b.height() * perMetre <= TALLEST);
      if (fits) {
        return s;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  private static Bounds box(PatternPiece piece) {
    return new Outline(BaseLine.of(piece).local(piece.cut().vertices())).bounds();
  }

  static Drawing of(CutShape shape, double scale, Sizes w) {
    PatternPiece piece = shape.pattern();
    BaseLine base = BaseLine.of(piece);
    Bounds b = box(piece);
    double perMetre = 1000 / scale;
    double height = b.height() * perMetre + ABOVE + BELOW;
    Sketch s = new Sketch(Math.max(50, LEFT + b.width() * perMetre + RIGHT), height + 4);
    s.map(LEFT - b.minX() * perMetre, ABOVE + b.maxY() * perMetre, perMetre);
    s.shape(s.at(base.local(piece.cut().vertices())), Sketch.HEAVY, "", Sketch.PALE);
    s.shape(s.at(base.local(piece.stitch().vertices())), Sketch.THIN, Sketch.DASHED, "none");
    for (PieceHole hole : piece.holes()) {
      s.shape(s.at(base.local(hole.cut().vertices())), Sketch.HEAVY, "", "#fff");
    }
    piece.reinforcedCutEdge().ifPresent(edge -> kept(s, base, piece, edge));
    piece.notches().forEach(n -> notch(s, base, n));
    piece.folds().forEach(fold -> fold(s, base, fold));
    dimensions(s, base, b, w);
    letters(s, base);
    words(s, base, piece, b);
    piece.folds().forEach(fold -> foldName(s, base, shape, fold));
    double unit = w.words().isImperial() ? 0.3048 : 0.5;
    double bar = perMetre >= 200 ? unit / 10 : perMetre >= 60 ? unit / 2 : unit;
    s.bar(4, height + 2.5, bar, w.length(bar) + ", 1:" + Sizes.number(scale));
    return s.drawing(
        "card-" + Markup.anchor(piece.id()),
        "Piece " + shape.name(),
        "The good side of the piece. Full line: cut. Dashed: stitch or fold. Heavy: edge that is"
            + " kept. Corners have letters from the left end of the base line on.");
  }

  private static void kept(Sketch s, BaseLine base, PatternPiece piece, int edge) {
    s.line(
        s.at(base.local(piece.cut().vertex(edge))),
        s.at(base.local(piece.cut().vertex(edge + 1))),
        1.4,
        "");
  }

  private static void notch(Sketch s, BaseLine base, Notch n) {
    Vector2D from = s.at(base.local(n.onCut()));
    Vector2D to = s.at(base.local(n.onStitch()));
    s.line(from, to, Sketch.OUTLINE, "");
    if (n.doubled()) {
      Vector2D way = to.subtract(from);
      Vector2D aside =
          way.norm() > 0
              ? Vector2D.of(-way.getY(), way.getX()).multiply(1.0 / way.norm())
              : Vector2D.of(0, 1);
      s.line(from.add(aside), to.add(aside), Sketch.OUTLINE, "");
    }
  }

  private static void fold(Sketch s, BaseLine base, Fold fold) {
    s.line(
        s.at(base.local(fold.lower())), s.at(base.local(fold.upper())), Sketch.THIN, Sketch.DASHED);
  }

  private static void foldName(Sketch s, BaseLine base, CutShape shape, Fold fold) {
    Vector2D low = s.at(base.local(fold.lower()));
    Vector2D way = s.at(base.local(fold.upper())).subtract(low);
    s.textWhereFree(
        Stream.of(0.2, 0.3, 0.45, 0.6, 0.12, 0.75, 0.37, 0.52)
            .map(part -> low.add(way.multiply(part)))
            .toList(),
        shape.name(fold),
        false);
  }

  private static void dimensions(Sketch s, BaseLine base, Bounds b, Sizes w) {
    Vector2D a = base.local(base.corner(0));
    Vector2D e = base.local(base.corner(1));
    if (base.isCurved()) {
      s.dimension(
          s.at(Vector2D.of(b.minX(), b.minY())),
          s.at(Vector2D.of(b.maxX(), b.minY())),
          9,
          w.length(b.width()));
    } else {
      s.dimension(s.at(a), s.at(e), 9, w.length(e.distance(a)));
      int top = top(base, b);
      if (top >= 0) {
        Vector2D right = base.local(base.corner(top));
        Vector2D left = base.local(base.corner(top + 1));
        s.dimension(s.at(left), s.at(right), -6, w.length(right.distance(left)));
      }
    }
    s.dimension(
        s.at(Vector2D.of(b.minX(), 0)),
        s.at(Vector2D.of(b.minX(), b.maxY())),
        -9,
        w.length(b.maxY()));
  }

  /** The letter at which the top edge starts, if there is one along the base line. */
  private static int top(BaseLine base, Bounds b) {
    for (int i = 1; i < base.size(); i++) {
      Vector2D p = base.local(base.corner(i));
      Vector2D q = base.local(base.corner(i + 1));
      boolean high = b.maxY() - p.getY() < 1e-6 && b.maxY() - q.getY() < 1e-6;
      if (high && p.distance(q) > b.width() / 8) {
        return i;
      }
    }
    return -1;
  }

  private static void letters(Sketch s, BaseLine base) {
    Vector2D middle = Vector2D.ZERO;
    List<Integer> corners = base.corners();
    for (int i : corners) {
      middle = middle.add(s.at(base.local(base.corner(i))).multiply(1.0 / corners.size()));
    }
    int letter = 0;
    for (int i : corners) {
      Vector2D p = s.at(base.local(base.corner(i)));
      Vector2D in = middle.subtract(p);
      Vector2D way = in.norm() > 0 ? in.normalize() : Vector2D.of(0, 1);
      List<Vector2D> places =
          List.of(
              p.add(way.multiply(4)),
              p.add(way.multiply(6)),
              p.add(Vector2D.of(3.5, 0)),
              p.add(Vector2D.of(-3.5, 0)),
              p.add(way.multiply(9)));
      s.textWhereFree(places, BaseLine.letter(letter++), true);
    }
  }

  /** Writes which side is seen, in one line or two, and draws the grain as an arrow. */
  private static void words(Sketch s, BaseLine base, PatternPiece piece, Bounds b) {
    Inside room = new Inside(s, base, piece);
    String side = piece.goodSide() ? "GOOD SIDE" : "PLAIN SIDE";
    Vector2D centre = s.at(base.local(piece.cut().centroid()));
    List<Vector2D> places =
        Stream.concat(
                Stream.of(0, -5, 5, 10).map(y -> centre.add(Vector2D.of(0, y))),
                grid(s, b).stream())
            .toList();
    Optional<Vector2D> one = places.stream().filter(p -> room.has(p, side)).findFirst();
    String[] two = side.split(" ", -1);
    if (one.isPresent()) {
      s.text(one.get(), side, 0, true);
    } else {
      places.stream()
          .filter(p -> room.has(p, two[0]) && room.has(p.add(BELOW_IT), two[1]))
          .findFirst()
          .ifPresent(p -> s.text(p, two[0], 0, true).text(p.add(BELOW_IT), two[1], 0, true));
    }
    grain(s, room, places);
  }

  /** Places all over the box of a piece, from its middle line outwards. */
  private static List<Vector2D> grid(Sketch s, Bounds b) {
    Vector2D low = s.at(Vector2D.of(b.minX(), b.minY()));
    Vector2D high = s.at(Vector2D.of(b.maxX(), b.maxY()));
    List<Vector2D> places = new ArrayList<>();
    double middle = (low.getX() + high.getX()) / 2;
    for (double aside = 0; aside < (high.getX() - low.getX()) / 2; aside += STEP) {
      for (double y = low.getY() - STEP; y > high.getY(); y -= STEP) {
        places.add(Vector2D.of(middle + aside, y));
        places.add(Vector2D.of(middle - aside, y));
      }
    }
    return places;
  }

  private static void grain(Sketch s, Inside room, List<Vector2D> places) {
    double grain = room.piece().grain();
    Vector2D zero = room.base().local(Vector2D.ZERO);
    Vector2D one = room.base().local(Vector2D.of(StrictMath.cos(grain), StrictMath.sin(grain)));
    Vector2D way = s.at(one).subtract(s.at(zero)).normalize();
    for (double half : new double[] {ARROW, ARROW / 2}) {
      Optional<Vector2D> middle =
          places.stream().filter(p -> room.hasArrow(p, way.multiply(half))).findFirst();
      if (middle.isPresent()) {
        Vector2D tip = middle.get().add(way.multiply(half));
        s.line(middle.get().subtract(way.multiply(half)), tip, Sketch.OUTLINE, "").head(tip, way);
        s.avoid(middle.get(), 1);
        s.textWhereFree(
            Stream.of(6, -6)
                .map(x -> middle.get().add(Vector2D.of(x, 0)))
                .filter(at -> room.has(at, "warp"))
                .toList(),
            "warp",
            false);
        return;
      }
    }
    // A piece all rim has no room: its arrow stands beside it.
    Vector2D beside = room.beside();
    Vector2D tip = beside.add(way.multiply(ARROW));
    s.line(beside.subtract(way.multiply(ARROW)), tip, Sketch.OUTLINE, "").head(tip, way);
  }

  /**
   * The room for words within a piece, off its edges, its holes and other words.
   *
   * @param sketch what is drawn on
   * @param base the piece's base line
   * @param piece the piece
   */
  private record Inside(Sketch sketch, BaseLine base, PatternPiece piece) {

    boolean has(Vector2D middle, String text) {
      double half = Sketch.wide(text) / 2 + 0.5;
      // Bold letters are wider and taller than the room that is kept for plain ones.
      return Stream.of(-0.8, 0.0, 0.8)
              .allMatch(y -> sketch.isFree(middle.add(Vector2D.of(0, y)), text + "n"))
          && Stream.of(-half, -half / 2, 0.0, half / 2, half)
              .flatMap(x -> Stream.of(-2.1, 0.0, 2.1).map(y -> middle.add(Vector2D.of(x, y))))
              .allMatch(this::isCloth);
    }

    boolean hasArrow(Vector2D middle, Vector2D half) {
      return Stream.of(-1.3, -0.6, 0.0, 0.6, 1.3)
          .map(part -> middle.add(half.multiply(part)))
          .allMatch(p -> isCloth(p) && sketch.isFree(p, "i"));
    }

    /** To the right of the piece, half way up. */
    Vector2D beside() {
      Bounds box = drawn(piece.cut()).bounds();
      return Vector2D.of(box.maxX() + 4, (box.minY() + box.maxY()) / 2);
    }

    private boolean isCloth(Vector2D p) {
      return drawn(piece.cut()).contains(p)
          && piece.holes().stream().noneMatch(h -> drawn(h.cut()).contains(p));
    }

    private Outline drawn(Outline outline) {
      return new Outline(sketch.at(base.local(outline.vertices())));
    }
  }
}
