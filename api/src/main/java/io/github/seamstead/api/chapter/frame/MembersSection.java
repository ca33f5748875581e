package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.bars.BarPlan;
import io.github.seamstead.geometry.members.FrameMember;
import io.github.seamstead.geometry.members.FrameMember.EndCut;
import io.github.seamstead.geometry.members.FrameMembers;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cut list of the frame with the saw settings at every joint. */
final class MembersSection {

  private MembersSection() {}

  static void write(BookContext book, FrameMembers members) {
    Words w = book.words();
    book.heading("Members");
    Table list = new Table("Cut list of the frame", "member", "#count", "#centre line", "#cut");
    Table cuts = new Table("Saw settings", "member", "end", "laid on", "#mitre", "#blade tilt");
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("member", "count", "centre_line_m", "cut_length_m"));
    for (FrameMember m : members.members()) {
      list.row(
          m.name(), Integer.toString(m.count()), w.length(m.centreLine()), w.length(m.cutLength()));
      csv.add(
          List.of(
              m.name(),
              Integer.toString(m.count()),
              BookContext.number(m.centreLine(), 4),
              BookContext.number(m.cutLength(), 4)));
      for (EndCut cut : m.cuts()) {
        cuts.row(
            m.name(),
            cut.where(),
            cut.laidOn(),
            w.angle(cut.setting().mitre()),
            w.angle(cut.setting().tilt()));
      }
    }
    book.table(list);
    book.table(cuts);
    Table bends = new Table("Bends of the joining plates", "plate", "#bend");
    members.bends().forEach(b -> bends.row(b.name(), w.angle(b.angle())));
    book.table(bends);
    book.list("frame-members.csv", csv);
  }

  /** Writes how the members are cut from bars. */
  static void bars(BookContext book, BarPlan plan) {
    Words w = book.words();
    Table table = new Table("Bars", "#bars", "bar", "cut from each, in this order", "#left over");
    for (BarPlan.CutBar bar : plan.bars()) {
      String pieces =
          bar.pieces().stream()
              .map(p -> p.count() + " × " + p.name() + " " + w.length(p.length()))
              .collect(Collectors.joining(", "));
      table.row(
          Integer.toString(bar.times()),
          bar.stock().name() + ", " + w.length(bar.stock().length()),
          pieces,
          w.length(bar.offcut()));
    }
    book.table(table);
    book.note(
        plan.barCount()
            + " bars; a saw cut takes "
            + w.small(plan.kerf())
            + ". "
            + (plan.proven()
                ? "Proved: no plan uses less."
                : "Best found, at most " + w.percent(plan.gapRatio()) + " off."));
  }
}
