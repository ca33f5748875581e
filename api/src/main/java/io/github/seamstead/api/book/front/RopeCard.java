package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.rigging.AnchoringPart;
import io.github.seamstead.api.chapter.rigging.HandlingPart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.geometry.frame.RegularPyramid;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Ropes and pegs on one card: where they are, how many, how hard they pull, when to stop. */
final class RopeCard {

  private static final double SIZE = 66;

  private RopeCard() {}

  static void write(Desk desk) {
    boolean something =
        desk.plan().handling().isPresent()
            || desk.plan().fixings().isPresent()
            || desk.plan().anchoring().isPresent();
    if (desk.sizes().isModel() || !something) {
      return;
    }
    Markup m = new Markup();
    m.open("div", "class", "two mixer").open("div");
    desk.pyramid().ifPresent(p -> desk.figure(m, plan(desk, p), false));
    desk.plan().anchoring().ifPresent(a -> pulled(m));
    m.close().open("div");
    Ticks.table(m, "Ropes, pegs and limits", "what", "#value");
    desk.plan().handling().ifPresent(h -> ropes(desk.sizes(), m, h));
    desk.plan()
        .fixings()
        .ifPresent(
            f -> {
              row(m, "pegs round the hem", Integer.toString(f.pegs().pegs()));
              row(m, "pegs apart", desk.sizes().length(f.pegs().spacing()));
              row(m, "pegs on each side", Integer.toString(f.pegs().gapsPerSide()));
            });
    desk.plan().anchoring().ifPresent(a -> pegs(desk.sizes(), m, a));
    Ticks.endTable(m);
    m.close().closeLine();
    desk.add("Rope and peg card", "Rope and peg card", Sheet.Kind.CARD, m);
  }

  private static void pulled(Markup m) {
    m.open("p", "class", "fields").text("Pegs pulled until they moved: ");
    for (int i = 1; i <= PegTest.LEAST_TESTS; i++) {
      Ticks.number(m, "peg" + i, "peg " + i + ", pull when it moved");
      m.text(" ");
    }
    m.text(
        "Write the pulls into the job, pegs under site, and plan again: it reckons what a peg may"
            + " be asked to hold, less on wet ground.");
    m.closeLine();
  }

  private static void ropes(Sizes w, Markup m, HandlingPart h) {
    row(m, "cover to be raised", w.mass(h.bundle().mass()));
    row(
        m,
        "ropes over the top, each with a tail",
        h.pull().ropes() + " × " + w.atLeast(h.zone().ropeLength()));
    row(m, "people on the ropes, in all", Integer.toString(h.pull().people()));
    row(m, "pull of all ropes to raise it", w.pull(h.pull().raisePull()));
    row(m, "pull on each rope, as hauled", w.pull(RaisingDays.hauled(h)));
    h.tackle().ifPresent(t -> row(m, "tackle on each rope, parts", Integer.toString(t.parts())));
    row(m, "pull on each rope to hold it", w.pull(h.hold() / h.pull().ropes()));
    row(m, "load on the top while hauling", w.pull(h.pull().apexPull()));
    row(m, "nobody within, from the middle", w.atLeast(h.zone().radius()));
    row(m, "do not start in gusts over", w.speedAtMost(h.wind().limitGust()));
    row(m, "bring it down in gusts over", w.speedAtMost(h.wind().stopGust()));
  }

  private static void pegs(Sizes w, Markup m, AnchoringPart a) {
    row(m, "gust that the pegs are screened for", w.speed(a.screen().pressure().gust()));
    row(m, "pull on each peg, factored", w.pullAtLeast(a.screen().pegPull()));
    row(m, "its angle above the ground", w.words().angle(a.screen().pullAngle()));
    row(m, "rope along the hem, if set", w.pullAtLeast(a.hemRope().tension()));
    row(m, "guy rope from each corner, if set", w.pullAtLeast(a.guy().tension()));
    row(m, "ballast that would do instead", w.mass(a.ballast().mass()));
  }

  private static void row(Markup m, String what, String value) {
    m.open("tr");
    Ticks.cells(m, what, "#" + value);
    m.closeLine();
  }

  private static Drawing plan(Desk desk, RegularPyramid pyramid) {
    Sketch s = new Sketch(SIZE, SIZE + 10);
    Vector2D middle = Vector2D.of(SIZE / 2, SIZE / 2);
    double r = SIZE * 0.28;
    int n = pyramid.sides();
    double first = -Math.PI / 2 - Math.PI / n;
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(ray(middle, r, first + 2 * Math.PI * i / n));
    }
    s.shape(corners, Sketch.OUTLINE, "", Sketch.PALE);
    s.line(corners.get(0), corners.get(1), 1.4, "");
    s.text(ray(middle, r - 5, -Math.PI / 2), "door", 0, true);
    desk.plan().fixings().ifPresent(f -> pegs(s, middle, corners, f.pegs().gapsPerSide()));
    double zone =
        desk.plan().handling().map(h -> h.zone().radius()).orElse(0.0)
            / pyramid.measures().circumradius();
    if (zone > 0) {
      s.circle(middle, Math.min(r * zone, SIZE / 2 - 1), Sketch.OUTLINE, "none");
      ropes(s, middle, Math.min(r * zone, SIZE / 2 - 1));
    }
    double unit = desk.sizes().unit();
    s.map(0, 0, r / pyramid.measures().circumradius());
    s.bar(2, SIZE + 9, unit, desk.sizes().words().scale(unit));
    s.text(Vector2D.of(SIZE / 2, SIZE + 3), "dots: pegs · ring: nobody inside it", 0, false);
    return s.drawing(
        "rope-card-plan",
        "Ropes and pegs seen from above",
        "The base with the door at the bottom, the pegs as dots round it, two ropes as arrows over"
            + " the top, and the ring inside which nobody stands while it is raised.");
  }

  private static void pegs(Sketch s, Vector2D middle, List<Vector2D> corners, int gaps) {
    for (int side = 0; side < corners.size(); side++) {
      Vector2D a = corners.get(side);
      Vector2D b = corners.get((side + 1) % corners.size());
      for (int k = 0; k < gaps; k++) {
        Vector2D p = a.lerp(b, (double) k / gaps);
        Vector2D out = p.subtract(middle).normalize();
        s.circle(p.add(out.multiply(2)), 0.7, Sketch.THIN, "#111");
      }
    }
  }

  /** The ropes go out on the side that the door is not on. */
  private static void ropes(Sketch s, Vector2D middle, double radius) {
    for (double turn : new double[] {Math.PI / 2 - 0.35, Math.PI / 2 + 0.35}) {
      Vector2D tip = ray(middle, radius - 1, turn);
      s.line(middle, tip, Sketch.HEAVY, "");
      Vector2D way = tip.subtract(middle).normalize();
      Vector2D back = tip.subtract(way.multiply(4));
      Vector2D side = Vector2D.of(-way.getY(), way.getX()).multiply(1.3);
      s.shape(List.of(tip, back.add(side), back.subtract(side)), Sketch.THIN, "", "#111");
    }
    s.text(ray(middle, radius * 0.5, Math.PI / 2), "ropes", 0, false);
  }

  private static Vector2D ray(Vector2D middle, double radius, double turn) {
    return middle.add(Vector2D.of(radius * StrictMath.cos(turn), -radius * StrictMath.sin(turn)));
  }
}
