package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.SeamRun;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.PlanCost;
import io.github.seamstead.assembly.merge.TeamLift;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.pattern.SeamMatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The two maps, the join order as a tick-list, and the orders side by side. */
final class JoiningPages {

  private JoiningPages() {}

  static void write(BookContext book, JoiningPart part, Optional<SchedulePart> schedule) {
    book.paragraph(part.ring().count().text());
    book.note(
        "Every joint has one name that both its edges carry, with a check mark behind it. Join two"
            + " edges only if name and mark are the same on both.");
    book.figure(JoinDrawings.map(part.standing(), book.doorFace()));
    book.figure(JoinDrawings.map(part.lying(), book.doorFace()));
    meetings(book, part);
    seams(book, part);
    part.log().ifPresent(log -> made(book, log, part));
    part.order()
        .ifPresent(
            order -> {
              order(book, order, part.lift());
              book.figure(ScheduleSection.tree(order));
            });
    schedule.ifPresent(s -> ScheduleSection.write(book, s));
    compare(book, part);
    book.end(Chapter.JOINING);
  }

  /** Edges that meet: a table only where one is longer than the other. */
  private static void meetings(BookContext book, JoiningPart part) {
    boolean equal =
        part.meetings().stream()
            .allMatch(
                m ->
                    Math.abs(m.ease()) < MarkOut.HAND_TOLERANCE
                        && m.notchesMatch(MarkOut.HAND_TOLERANCE));
    if (equal) {
      book.paragraph("The two edges of every joint are equally long, and their notches meet.");
      return;
    }
    Words w = book.words();
    Table table =
        new Table(
            "Edges that meet", "joint", "#right edge", "#left edge", "#to ease in", "notches");
    for (int i = 0; i < part.meetings().size(); i++) {
      SeamMatch m = part.meetings().get(i);
      table.row(
          part.ring().joints().get(i).mark().text(),
          w.length(m.first()),
          w.length(m.second()),
          w.error(Math.abs(m.ease())),
          m.notchesMatch(MarkOut.HAND_TOLERANCE) ? "meet" : "differ: go by the ends");
    }
    book.table(table);
  }

  private static void order(BookContext book, MergePlan order, Optional<TeamLift> lift) {
    Words w = book.words();
    int n = order.ring().size();
    book.heading("The order, to tick off");
    lift.ifPresent(
        team ->
            book.note(
                "One person lifts at most "
                    + w.massAtMost(team.massPerPerson())
                    + " of cloth from the ground; a team of "
                    + team.people()
                    + " carries at most "
                    + w.massAtMost(team.capacity())
                    + ", "
                    + team.rule()
                    + "."));
    book.body().open("ol", "class", "tick");
    List<List<String>> csv = new ArrayList<>();
    csv.add(
        List.of("step", "joint", "left_pieces", "right_pieces", "team", "in_hand_kg", "closes"));
    for (JoinStep step : order.steps()) {
      String what =
          step.closing()
              ? "close the ring"
              : "pieces " + step.left().text(n) + " to " + step.right().text(n);
      book.body()
          .open("li")
          .element("strong", step.number() + ". " + step.joint().text())
          .text(
              ": "
                  + what
                  + ", team "
                  + step.team()
                  + ", "
                  + w.mass(step.massInHand())
                  + " in hand, "
                  + w.mass(step.carriedMass())
                  + " carried"
                  + lift.map(team -> hands(team, step.carriedMass())).orElse(""))
          .closeLine();
      csv.add(
          List.of(
              Integer.toString(step.number()),
              step.joint().mark().text(),
              step.left().text(n),
              step.right().text(n),
              Integer.toString(step.team()),
              BookContext.number(step.massInHand(), 2),
              step.closing() ? "yes" : "no"));
    }
    book.body().closeLine();
    book.list("join-order.csv", csv);
    order
        .optimality()
        .ifPresent(
            o ->
                book.note(
                    (o.proved() ? "Proved best: " : "Best found: ")
                        + o.method()
                        + (o.proved() ? "." : ", at most " + w.percent(o.gapRatio()) + " off.")));
  }

  /** What stands already, what of it is wrong, and that the order is that of the rest. */
  private static void made(BookContext book, LogReport log, JoiningPart part) {
    book.heading("What is joined");
    book.paragraph(
        log.kept().isEmpty()
            ? "No joint stands yet that may stay."
            : "These joints stand: "
                + log.kept().stream().map(Joint::text).collect(Collectors.joining("; "))
                + ".");
    log.faults().forEach(fault -> book.note(fault.message()));
    if (!log.undo().isEmpty()) {
      book.paragraph(log.proof());
    }
    part.renaming()
        .ifPresent(
            r ->
                book.note(
                    "Or undo "
                        + r.undo().size()
                        + " and write new names on pieces alike: "
                        + String.join(", ", r.texts(part.ring()))
                        + "."));
    if (log.open().isEmpty()) {
      book.paragraph("Every joint of the ring is made.");
    }
  }

  /** Every seam by its place in the work; those of the ring follow in their own order. */
  private static void seams(BookContext book, JoiningPart part) {
    Words w = book.words();
    Table table =
        new Table(
            "All seams, in the order of the work",
            "seams",
            "#length",
            "#one team",
            "which lies on top");
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("seams", "seam", "length_m", "count"));
    for (SeamKind kind : part.seams().kinds()) {
      table.row(
          kind.label(),
          w.length(part.seams().length(kind)),
          w.duration(part.seams().workTime(kind, part.timePerLength())),
          kind.lap());
      for (SeamRun run : part.seams().of(kind)) {
        csv.add(
            List.of(
                kind.label(),
                run.name(),
                BookContext.number(run.length(), 3),
                Integer.toString(run.count())));
      }
    }
    book.heading("Every seam");
    book.table(table);
    book.list("seams.csv", csv);
    book.paragraph(
        "Times are at the pace of the seams round the ring, for one team. Join the parts of a panel"
            + " before its neighbours; put the cap on when the cover is right side out.");
    if (!part.left().made().isEmpty()) {
      book.paragraph(
          w.length(part.left().madeLength())
              + " of them are made, splices of joined panels among them; "
              + w.length(part.left().leftLength())
              + " are left.");
    }
    book.body().open("ol", "class", "tick");
    for (SeamRun splice : part.left().left()) {
      if (splice.kind() != SeamKind.SPLICE) {
        continue;
      }
      book.body()
          .open("li")
          .element("strong", splice.name())
          .text(": " + w.length(splice.length()))
          .closeLine();
    }
    book.body().closeLine();
  }

  /** How many people carry it, by the rule for teams. */
  private static String hands(TeamLift team, double kilograms) {
    Optional<Integer> people = TeamLift.peopleFor(kilograms, team.massPerPerson());
    return people.isEmpty()
        ? ": too much for " + TeamLift.MOST_PEOPLE + " people, drag it on a sheet"
        : " by " + people.get() + (people.get() == 1 ? " person" : " people");
  }

  private static void compare(BookContext book, JoiningPart part) {
    Words w = book.words();
    Table table =
        new Table(
            "Orders side by side",
            "order",
            "#handled mass",
            "#work",
            "#elapsed",
            "#heaviest in hand",
            "within limits");
    for (MergePlan plan : part.alternatives().plans()) {
      PlanCost cost = plan.cost();
      table.row(
          plan.name(),
          w.mass(cost.handledMass()),
          w.duration(cost.workTime()),
          w.duration(cost.elapsedTime()),
          w.mass(cost.heaviestInHand()),
          cost.withinLimits() ? "yes" : "no");
    }
    book.heading("Other orders");
    book.table(table);
  }
}
