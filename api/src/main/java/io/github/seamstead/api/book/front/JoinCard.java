package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.PlacedPiece;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PieceKind;
import io.github.seamstead.geometry.pattern.Splice;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The map of the panels as they lie, and every seam in its order with a box. */
final class JoinCard {

  private static final double SIZE = 100;

  /** A card with no more seams than this has room on half a sheet. */
  private static final int FEW = 12;

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
        "The cover as it lies: inside out, plain side up, seen from above. Door panel at the"
            + " bottom. Each seam has one name, a letter and a check number: read both ends aloud.",
        "class",
        "lead");
    m.open("div", "class", "two");
    desk.figure(m, map(desk, part), false);
    m.open("div");
    int splices = splices(m, cover);
    ring(desk, m, part);
    others(m, cover);
    m.close().closeLine();
    boolean many = part.ring().size() + splices > FEW;
    desk.add("Join card", "Join card", many ? Sheet.Kind.WIDE : Sheet.Kind.CARD, m);
  }

  private static int splices(Markup m, CoverPart cover) {
    List<Splice> splices =
        cover.panels().stream().map(Panel::splices).flatMap(List::stream).toList();
    if (splices.isEmpty()) {
      return 0;
    }
    m.element("h3", "First: splice each panel, the second part over the first");
    m.open("ul", "class", "seams");
    for (Splice s : splices) {
      m.open("li");
      Ticks.box(
          m,
          "splice-" + Markup.anchor(s.joint()),
          label(cover, s.under()) + " under " + label(cover, s.over()));
      m.closeLine();
    }
    m.closeLine();
    return splices.size();
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
    m.element("h3", "Then: the ring, in this order");
    m.open("ol", "class", "seams ring");
    for (JoinStep step : part.order().get().steps()) {
      Joint j = step.joint();
      String team = part.options().teams() > 1 ? ", team " + step.team() : "";
      m.open("li");
      Ticks.box(
          m,
          "seam-" + Markup.anchor(j.mark().text()),
          step.number()
              + ". "
              + j.mark().text()
              + ": "
              + j.first().label()
              + " to "
              + j.second().label()
              + ", "
              + desk.sizes().mass(step.inHandKg())
              + team);
      m.closeLine();
    }
    m.closeLine();
  }

  /** What is joined besides the ring, from the pieces that are cut for it. */
  private static void others(Markup m, CoverPart cover) {
    m.element("h3", "Besides");
    m.open("ul", "class", "seams");
    count(m, cover, PieceKind.PATCH, "patch round its opening");
    count(m, cover, PieceKind.FLAP, "flap, by its upper edge");
    count(m, cover, PieceKind.CAP, "cap, along its lap");
    count(m, cover, PieceKind.SKIRT, "skirt piece: end to end, then to the hem");
    m.open("li");
    Ticks.box(m, "seam-hem", "hem and top edge all round");
    m.close().closeLine();
  }

  private static void count(Markup m, CoverPart cover, PieceKind kind, String what) {
    int count =
        cover.cuts().stream()
            .filter(s -> s.pattern().kind() == kind)
            .mapToInt(s -> s.pieces().size())
            .sum();
    if (count > 0) {
      m.open("li");
      Ticks.box(m, "seam-" + kind.name().toLowerCase(java.util.Locale.ROOT), count + " × " + what);
      m.closeLine();
    }
  }

  private static Drawing map(Desk desk, JoiningPart part) {
    List<PlacedPiece> places = part.lying().places();
    int n = places.size();
    double door =
        places.stream()
            .filter(p -> p.piece() == desk.doorFace())
            .findFirst()
            .map(PlacedPiece::angleRadians)
            .orElse(0.0);
    Sketch s = new Sketch(SIZE, SIZE);
    double outer = n > 16 ? 38 : 36;
    Vector2D middle = Vector2D.of(SIZE / 2, SIZE / 2);
    for (PlacedPiece place : places) {
      double turn = place.angleRadians() - door - Math.PI / 2;
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
    double here = place.angleRadians() - door - Math.PI / 2;
    double step = Math.IEEEremainder(next.angleRadians() - place.angleRadians(), 2 * Math.PI);
    double far = n > 16 ? (place.place() % 2 == 0 ? 5 : 9.5) : 7;
    s.text(ray(middle, outer + far, here + step / 2), name, 0, false);
  }

  private static Vector2D ray(Vector2D middle, double radius, double turn) {
    return middle.add(Vector2D.of(radius * Math.cos(turn), -radius * Math.sin(turn)));
  }
}
