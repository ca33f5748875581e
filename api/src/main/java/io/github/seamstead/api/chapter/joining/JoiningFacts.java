package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.assembly.fixings.SeamRun;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.assembly.merge.MergePlan;
import io.github.seamstead.assembly.merge.Optimality;
import io.github.seamstead.assembly.ring.Fault;
import io.github.seamstead.assembly.ring.Joint;
import io.github.seamstead.assembly.ring.LogReport;
import io.github.seamstead.assembly.ring.Piece;
import io.github.seamstead.assembly.ring.PlacedPiece;
import io.github.seamstead.assembly.ring.Seam;
import io.github.seamstead.assembly.schedule.GanttChart;
import io.github.seamstead.assembly.schedule.LearningCurve;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.pattern.SeamMatch;
import java.util.List;

/** The joints and their order as data. */
final class JoiningFacts {

  private JoiningFacts() {}

  static Facts<JoiningPart> joining() {
    return new Facts<JoiningPart>()
        .whole("joints", "how many joints", j -> j.ring().joints().size())
        .whole("edgesToPrepare", "edges to prepare", j -> j.ring().count().edgesToPrepare())
        .many("pieces", "the panels round the frame", piece(), j -> j.ring().pieces())
        .many("ring", "the joints round the frame", joint(), j -> j.ring().joints())
        .many(
            "meetings",
            "how the edges of each joint meet, in the order of the ring",
            meeting(),
            JoiningPart::meetings)
        .many("standing", "the map seen from outside", placed(), j -> j.standing().places())
        .many("lying", "the map as it lies inside out", placed(), j -> j.lying().places())
        .number("seams_m", "length of all seams", j -> j.seams().length())
        .number("seamsMade_m", "length of the seams made so far", j -> j.left().madeLength())
        .number("seamsLeft_m", "length of the seams left to make", j -> j.left().leftLength())
        .many("seams", "every seam, in the order of the work", seam(), j -> j.seams().runs())
        .maybe("order", "the join order", plan(), JoiningPart::order)
        .maybeNumber("teamLift_kg", "what one team may carry", j -> j.lift().map(l -> l.capacity()))
        .many("alternatives", "other orders beside it", plan(), j -> j.alternatives().plans())
        .maybe("log", "what was joined so far, if anything was", log(), JoiningPart::log)
        .maybe(
            "renaming",
            "a cure that undoes fewer seams by renaming pieces alike",
            renaming(),
            j -> j.renaming().map(r -> j));
  }

  private static Facts<LogReport> log() {
    return new Facts<LogReport>()
        .texts("made", "joints that are made", l -> l.kept().stream().map(Joint::text).toList())
        .texts("open", "joints still to make", l -> l.open().stream().map(Joint::text).toList())
        .texts("undo", "seams to undo", l -> l.undo().stream().map(Seam::text).toList())
        .texts("faults", "what is wrong", l -> l.faults().stream().map(Fault::message).toList())
        .text("proof", "why no fewer will do", LogReport::proof);
  }

  private static Facts<JoiningPart> renaming() {
    return new Facts<JoiningPart>()
        .texts(
            "undo",
            "seams to undo",
            j -> j.renaming().orElseThrow().undo().stream().map(Seam::text).toList())
        .texts(
            "newNames",
            "each piece with the place it takes",
            j -> j.renaming().orElseThrow().texts(j.ring()));
  }

  private static Facts<SeamMatch> meeting() {
    return new Facts<SeamMatch>()
        .number("first_m", "the right edge of one panel", SeamMatch::first)
        .number("second_m", "the left edge of the next", SeamMatch::second)
        .number("ease_m", "how much longer the first is", SeamMatch::ease)
        .flag(
            "notchesMatch",
            "whether each notch has its mate at the same height",
            m -> m.notchesMatch(MarkOut.HAND_TOLERANCE));
  }

  private static Facts<SeamRun> seam() {
    return new Facts<SeamRun>()
        .text("kind", "what it joins", s -> s.kind().label())
        .text("name", "which it is", SeamRun::name)
        .number("length_m", "length of one", SeamRun::length)
        .whole("count", "how many alike", SeamRun::count)
        .text("lap", "which cloth lies on top", s -> s.kind().lap());
  }

  private static Facts<Piece> piece() {
    return new Facts<Piece>()
        .text("name", "its name", Piece::name)
        .text("template", "the template it is cut by", Piece::template)
        .number("mass_kg", "its mass", p -> p.load().mass());
  }

  private static Facts<Joint> joint() {
    return new Facts<Joint>()
        .whole("number", "its place round the frame", Joint::number)
        .text("mark", "the name that both edges carry", j -> j.mark().text())
        .text("first", "the right edge of one panel", j -> j.first().label())
        .text("second", "the left edge of the next", j -> j.second().label())
        .number("length_m", "its length", Joint::length);
  }

  private static Facts<PlacedPiece> placed() {
    return new Facts<PlacedPiece>()
        .whole("place", "its place on the map, from the left", PlacedPiece::place)
        .text("piece", "the panel", PlacedPiece::name)
        .text("onLeft", "the edge on its left", p -> p.onLeft().label())
        .text("onRight", "the edge on its right", p -> p.onRight().label());
  }

  private static Facts<MergePlan> plan() {
    return new Facts<MergePlan>()
        .text("name", "what the order is called", MergePlan::name)
        .number("handledMass_kg", "mass handled over all joints", p -> p.cost().handledMass())
        .number("heaviestCarried_kg", "heaviest group carried", p -> p.cost().heaviestCarried())
        .number("work_s", "time of all joints one after another", p -> p.cost().workTime())
        .number("elapsed_s", "time with the teams stated", p -> p.cost().elapsedTime())
        .flag("withinLimits", "whether it keeps the limits", p -> p.cost().withinLimits())
        .maybe("optimality", "how good it is proved to be", optimality(), MergePlan::optimality)
        .many("steps", "the joints in order", step(), MergePlan::steps);
  }

  private static Facts<Optimality> optimality() {
    return new Facts<Optimality>()
        .flag("proved", "whether no order is better", Optimality::proved)
        .number("value", "the value of the order in its objective", Optimality::value)
        .number("lowerBound", "no order is below this", Optimality::lowerBound)
        .text("method", "how it was found", Optimality::method);
  }

  private static Facts<JoinStep> step() {
    return new Facts<JoinStep>()
        .whole("number", "its place in the order", JoinStep::number)
        .text("joint", "the joint", s -> s.joint().text())
        .whole("team", "the team that does it", JoinStep::team)
        .number("start_s", "when it starts", JoinStep::startTime)
        .number("time_s", "how long it takes", JoinStep::time)
        .number("inHand_kg", "mass in hand", JoinStep::massInHand)
        .number("carried_kg", "mass carried", JoinStep::carriedMass)
        .flag("closing", "whether it closes the ring", JoinStep::closing);
  }

  private static Facts<GanttChart.Bar> bar() {
    return new Facts<GanttChart.Bar>()
        .text("joint", "the joint", b -> b.task().name())
        .whole(
            "team",
            "which of the teams at work, counted by who is free; the order counts its own",
            GanttChart.Bar::lane)
        .number("start_s", "when it starts", GanttChart.Bar::startTime)
        .number("end_s", "when it is done", GanttChart.Bar::endTime)
        .flag("critical", "whether the end waits for it", GanttChart.Bar::critical);
  }

  static Facts<SchedulePart> schedule() {
    return new Facts<SchedulePart>()
        .number("mean_s", "every seam in its mean time", s -> s.schedule().length())
        .number("bound_s", "no schedule is shorter", s -> s.schedule().lowerBound())
        .flag("proved", "whether none can be shorter", s -> s.schedule().proved())
        .number("p50_s", "done by then one time in two", s -> s.simulation().p50())
        .number("p80_s", "four times in five", s -> s.simulation().p80())
        .number("p95_s", "nineteen times in twenty", s -> s.simulation().p95())
        .maybeNumber(
            "learning_ratio",
            "what each doubling of the seams leaves of the time of one",
            s -> s.learning().map(LearningCurve::ratio))
        .many(
            "days",
            "each seam by the clock, in seconds from midnight before the first day",
            bar(),
            s -> s.days().map(GanttChart::bars).orElse(List.of()));
  }
}
