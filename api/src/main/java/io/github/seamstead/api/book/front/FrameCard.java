package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.members.FrameMember;
import io.github.seamstead.geometry.members.FrameMember.EndCut;
import io.github.seamstead.geometry.members.FrameMembers;
import java.util.List;
import java.util.stream.Collectors;

/** What is sawn for the frame: every member with its cuts, and from which bar. */
final class FrameCard {

  private FrameCard() {}

  static void write(Desk desk) {
    desk.plan()
        .frame()
        .flatMap(f -> f.members())
        .ifPresent(
            members -> desk.add("Frame card", "Frame card", Sheet.Kind.CARD, card(desk, members)));
  }

  private static Markup card(Desk desk, FrameMembers members) {
    Sizes w = desk.sizes();
    Markup m = new Markup();
    m.element(
        "p",
        "Sizes only: nobody has checked that these members bear wind or snow.",
        "class",
        "lead");
    Ticks.table(
        m,
        "Members to cut",
        "member",
        "#count",
        "#cut length",
        "mitre and tilt of the saw",
        "done");
    int i = 0;
    for (FrameMember member : members.members()) {
      m.open("tr").open("td").element("b", member.name()).close();
      Ticks.cells(
          m,
          "#" + member.count(),
          "#" + w.length(member.cutLength()),
          member.cuts().stream().map(c -> cut(w, c)).distinct().collect(Collectors.joining("; ")));
      m.open("td");
      Ticks.bare(m, "member" + ++i, member.name() + ": all cut");
      m.close().closeLine();
    }
    Ticks.endTable(m);
    desk.plan().frame().flatMap(f -> f.bars()).ifPresent(bars -> bars(w, m, bars));
    List<String> bends =
        members.bends().stream().map(b -> b.name() + " " + w.words().angle(b.angle())).toList();
    if (w.isModel() && !bends.isEmpty()) {
      m.element(
          "p",
          "Joints of the model: cut a strip of card for each plate below, bend it by its angle,"
              + " glue it over both sticks and hold it until it sets.");
    }
    if (!bends.isEmpty()) {
      m.element("p", "Plates bend by: " + String.join(", ", bends) + ".", "class", "small");
    }
    return m;
  }

  private static String cut(Sizes w, EndCut cut) {
    return cut.where()
        + " "
        + w.words().angle(cut.setting().mitre())
        + " / "
        + w.words().angle(cut.setting().tilt());
  }

  private static void bars(Sizes w, Markup m, BarPlan plan) {
    m.open("ul", "class", "ticks");
    int i = 0;
    for (BarPlan.CutBar bar : plan.bars()) {
      m.open("li");
      Ticks.box(
          m,
          "bar" + ++i,
          bar.times()
              + " × bar "
              + w.length(bar.stock().length())
              + ": "
              + bar.pieces().stream()
                  .map(p -> p.count() + " × " + p.name() + " " + w.length(p.length()))
                  .collect(Collectors.joining(", "))
              + "; rest "
              + w.length(bar.offcut()));
      m.closeLine();
    }
    m.closeLine();
  }
}
