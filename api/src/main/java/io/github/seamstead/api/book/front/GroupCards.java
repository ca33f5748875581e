package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.assembly.ring.Edge;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.PlacedPiece;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** For a class: what each group makes, and with whom it joins. A group has the panel's number. */
final class GroupCards {

  private GroupCards() {}

  static void write(Desk desk) {
    if (!desk.sizes().isModel() || desk.plan().joining().isEmpty()) {
      return;
    }
    JoiningPart part = desk.plan().joining().get();
    Markup m = new Markup();
    m.element(
        "p",
        "One group makes one panel and has its number. Each seam is joined by the two groups whose"
            + " edges carry its name: read both names aloud first.",
        "class",
        "lead");
    Ticks.table(m, "Groups", "group", "right edge", "left edge", "drawn", "cut", "right joined");
    List<PlacedPiece> places =
        part.standing().places().stream()
            .sorted(Comparator.comparingInt(PlacedPiece::piece))
            .toList();
    for (PlacedPiece place : places) {
      m.open("tr").open("td").element("b", place.name()).close();
      Ticks.cells(m, seam(part, place.name() + "R"), seam(part, place.name() + "L"));
      for (String what : List.of("drawn", "cut", "joined")) {
        m.open("td");
        Ticks.bare(
            m,
            "group-" + Markup.anchor(place.name()) + what,
            "group " + place.name() + ": " + what);
        m.close();
      }
      m.closeLine();
    }
    Ticks.endTable(m);
    desk.add("Group cards", "Group cards", Sheet.Kind.CARD, m);
  }

  /** An edge with its seam and the group of the other edge. */
  private static String seam(JoiningPart part, String edge) {
    Optional<Joint> joint =
        part.ring().joints().stream()
            .filter(j -> j.first().label().equals(edge) || j.second().label().equals(edge))
            .findFirst();
    if (joint.isEmpty()) {
      return "open";
    }
    Edge first = joint.get().first();
    String other = (first.label().equals(edge) ? joint.get().second() : first).label();
    String group = other.substring(0, other.length() - 1);
    return edge + " " + joint.get().mark().text() + " to " + other + ", group " + group;
  }
}
