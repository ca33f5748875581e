package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.PlacedPiece;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.Splice;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The map of the panels as they lie, and every seam in its order with a box. */
final class JoinCard {

  private static final double SIZE = 100;

  /** A ring of few panels shares its page with other cards. */
  private static final int FEW = 7;

  private static final double SMALL = 70;

  /** With more seams the rest stands on a card of its own. */
  private static final int MOST_ON_ONE_SHEET = 28;

  /** A longer table stands in two parts side by side. */
  private static final int MOST_ROWS = 14;

  private JoinCard() {}

  static void write(Desk desk) {
    if (desk.plan().joining().isEmpty() || desk.plan().cover().isEmpty()) {
      return;
    }
    JoiningPart part = desk.plan().joining().get();
    CoverPart cover = desk.plan().cover().get();
    Markup m = new Markup();
    m.element(
        "p",
        "As it lies: inside out, plain side up, seen from above, the door panel at the bottom.",
        "class",
        "lead");
    SeamWork seams = new SeamWork(desk);
    int many = part.ring().joints().size();
    boolean small = many <= FEW;
    boolean all = !small && many <= MOST_ON_ONE_SHEET;
    m.open("div", "class", small ? "two" : "two join").open("div");
    desk.figure(m, map(desk, part, small ? SMALL : SIZE), false);
    if (all) {
      splices(m, cover);
    }
    m.close().open("div");
    ring(desk, m, part);
    if (all) {
      kinds(m, seams);
    }
    m.close().closeLine();
    if (small) {
      kinds(m, seams);
      splices(m, cover);
    }
    desk.add("Join card", "Join card", small ? Sheet.Kind.CARD : Sheet.Kind.WIDE, m);
    if (!small && !all) {
      Markup rest = new Markup();
      kinds(rest, seams);
      splices(rest, cover);
      desk.add("Seam card", "Join card", Sheet.Kind.CARD, rest);
    }
  }

  private static void splices(Markup m, CoverPart cover) {
    List<Splice> splices =
        cover.panels().stream().map(Panel::splices).flatMap(List::stream).toList();
    if (splices.isEmpty()) {
      return;
    }
    m.element("h3", "Splices: the first part lies under the second");
    m.open("ul", "class", "seams splices");
    for (Splice s : splices) {
      m.open("li");
      Ticks.box(
          m,
          "splice-" + Markup.anchor(s.joint()),
          label(cover, s.under()) + " under " + label(cover, s.over()));
      m.closeLine();
    }
    m.closeLine();
  }

  private static String label(CoverPart cover, String id) {
    return cover.panels().stream()
        .flatMap(p -> p.parts().stream())
        .filter(p -> p.id().equals(id))
        .map(p -> p.label())
        .findFirst()
        .orElse(id);
  }

  private static void ring(Desk desk, Markup m, JoiningPart part) {
    List<Joint> made = part.log().map(log -> log.kept()).orElse(List.of());
    if (!made.isEmpty()) {
      m.element(
          "p",
          "Made already: "
              + made.stream().map(j -> j.mark().text()).collect(Collectors.joining(", "))
              + ".");
    }
    if (made.size() == part.ring().joints().size()) {
      m.element("p", "The ring is closed.");
      return;
    }
    if (part.order().isEmpty()) {
      m.element("p", "No order of the ring keeps the limits stated: see the start sheet.");
      return;
    }
    List<JoinStep> steps = part.order().get().steps();
    boolean pair = steps.size() > MOST_ROWS;
    int half = pair ? (steps.size() + 1) / 2 : steps.size();
    m.open("div", "class", pair ? "pair" : "");
    rows(desk, m, part, steps.subList(0, half), "The ring in the order of joining");
    if (pair) {
      rows(desk, m, part, steps.subList(half, steps.size()), "The ring, further");
    }
    m.closeLine();
  }

  private static void rows(
      Desk desk, Markup m, JoiningPart part, List<JoinStep> steps, String caption) {
    boolean teams = part.options().teams() > 1;
    List<String> columns =
        new ArrayList<>(List.of("#", "seam", "this edge", "to that", "#in hand"));
    if (teams) {
      columns.add("#team");
    }
    columns.add("done");
    Ticks.table(m, caption, columns.toArray(String[]::new));
    for (JoinStep step : steps) {
      Joint j = step.joint();
      m.open("tr");
      Ticks.cells(m, "#" + step.number());
      m.open("td").element("b", j.mark().text()).close();
      Ticks.cells(
          m, j.first().label(), j.second().label(), "#" + desk.sizes().mass(step.massInHand()));
      if (teams) {
        Ticks.cells(m, "#" + step.team());
      }
      m.open("td");
      Ticks.dated(
          m, "seam-" + Markup.anchor(j.mark().text()), j.text() + ": joined", DiaryLines.joined(j));
      m.close().closeLine();
    }
    Ticks.endTable(m);
  }

  /**
   * Every kind of seam in the order of the work: how it laps, how long it is, how long it takes.
   */
  private static void kinds(Markup m, SeamWork seams) {
    if (seams.kinds().isEmpty()) {
      return;
    }
    m.element("h3", "Every seam, in the order of the work");
    Ticks.table(m, "Every kind of seam", "seams", "#all", "#one team", "which lies on top", "done");
    for (SeamKind kind : seams.kinds()) {
      m.open("tr");
      Ticks.cells(
          m,
          seams.count(kind) + " × " + kind.label(),
          "#" + seams.length(kind),
          "#" + seams.time(kind),
          kind.lap());
      m.open("td");
      String key = kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
      Ticks.bare(m, "seam-" + key, kind.label() + ": all done");
      m.close().closeLine();
    }
    Ticks.endTable(m);
  }

  private static Drawing map(Desk desk, JoiningPart part, double size) {
    List<PlacedPiece> places = part.lying().places();
    int n = places.size();
    double door =
        places.stream()
            .filter(p -> p.piece() == desk.doorFace())
            .findFirst()
            .map(PlacedPiece::angle)
            .orElse(0.0);
    Sketch s = new Sketch(size, size);
    double outer = size / 2 - (n > 16 ? 13 : 11);
    Vector2D middle = Vector2D.of(size / 2, size / 2);
    for (PlacedPiece place : places) {
      double turn = place.angle() - door - Math.PI / 2;
      double half = Math.PI / n;
      s.shape(
          List.of(
              ray(middle, 6, turn - half),
              ray(middle, outer, turn - half),
              ray(middle, outer, turn + half),
              ray(middle, 6, turn + half)),
          Sketch.OUTLINE,
          "",
          place.piece() == desk.doorFace() ? "#dcdcd4" : "#fff");
      s.text(ray(middle, outer * 0.72, turn), place.name(), 0, true);
      place.rightJoint().ifPresent(j -> seam(s, middle, outer, place, part, door, j.mark().text()));
    }
    return s.drawing(
        "join-card-map",
        "Map of the panels as they lie",
        "The panels round the middle, plain side up, the door panel at the bottom and grey. At the"
            + " end of each seam stands its name.");
  }

  /** A seam lies between two panels: on the side where the neighbour lies. */
  private static void seam(
      Sketch s,
      Vector2D middle,
      double outer,
      PlacedPiece place,
      JoiningPart part,
      double door,
      String name) {
    int n = part.lying().places().size();
    PlacedPiece next = part.lying().places().get(place.place() % n);
    double here = place.angle() - door - Math.PI / 2;
    double step = Math.IEEEremainder(next.angle() - place.angle(), 2 * Math.PI);
    double far = n > 16 ? (place.place() % 2 == 0 ? 4 : 8.5) : 5;
    s.text(ray(middle, outer + far, here + step / 2), name, 0, false);
  }

  private static Vector2D ray(Vector2D middle, double radius, double turn) {
    return middle.add(Vector2D.of(radius * StrictMath.cos(turn), -radius * StrictMath.sin(turn)));
  }
}
