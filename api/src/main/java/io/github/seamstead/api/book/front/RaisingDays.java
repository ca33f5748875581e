package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.rigging.HandlingPart;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.handling.TurnRoute;
import java.util.List;

/** The day on which the cover is turned, raised and pegged; a model is only turned and set over. */
final class RaisingDays {

  private static final List<SeamKind> ON_THE_COVER =
      List.of(SeamKind.CAP, SeamKind.SKIRT, SeamKind.LINING);

  private final Desk desk;
  private final Sizes w;
  private final SeamWork seams;

  RaisingDays(Desk desk) {
    this.desk = desk;
    this.w = desk.sizes();
    this.seams = new SeamWork(desk);
  }

  void add(List<Day> days) {
    if (w.isModel()) {
      desk.plan().cover().ifPresent(c -> days.add(model()));
    } else {
      boolean pegged = desk.plan().fixings().isPresent();
      desk.plan().handling().ifPresent(h -> days.add(pegged ? raise(h).andTheSameDay() : raise(h)));
      if (pegged) {
        days.add(peg());
        Day upper = upper();
        if (upper.steps().size() > 1) {
          days.add(upper);
        }
      }
    }
  }

  /** Pegs are tried while the frame is set up: the plan may ask for more or longer ones. */
  void testPegs(Day day) {
    desk.plan()
        .anchoring()
        .filter(a -> !w.isModel() && day.steps().size() < Day.MOST_STEPS)
        .ifPresent(
            a ->
                day.step(
                    "Drive "
                        + PegTest.LEAST_TESTS
                        + " pegs, pull each at "
                        + w.words().angle(a.screen().pullAngle())
                        + " above the ground until it moves; write it on the rope and peg card."
                        + " Wanted:",
                    w.pullAtLeast(a.screen().pegPull())));
  }

  private Day model() {
    return new Day(
            Day.Work.RAISE,
            "Set the cover over the frame",
            "A model is light: one pupil holds, one looks.")
        .startIf("the glue or the staples hold")
        .tools("ruler, pencil")
        .material("the frame, the joined cover, glue or thread")
        .people(2)
        .step("Fold the seams to the inside, one after the other.")
        .step("Set the cover over the frame, the first panel to the front.")
        .step("Ease each seam over its pole.")
        .step("Fix the hem to the base ring, opposite sides in turn.")
        .step("Measure one base side and one hip; compare with the start sheet.")
        .home("measures written down")
        .stops("nothing.");
  }

  private Day raise(HandlingPart h) {
    int ropes = h.pull().ropes();
    TurnRoute route = h.turning().best();
    Day day =
        new Day(
                Day.Work.RAISE,
                "Turn and raise",
                "Everybody who can come. One person gives all commands, and makes fast before"
                    + " letting go.")
            .startIf(
                "gusts under "
                    + w.speedAtMost(h.wind().limitGust())
                    + " and mean under "
                    + w.speedAtMost(h.wind().limitMean())
                    + " for the whole job; cloth dry")
            .tools("wind meter, gloves, helmets, hammer, padding" + tackleName(h))
            .material(
                ropes
                    + " ropes of "
                    + w.atLeast(h.zone().ropeLength())
                    + " at least, pegs, cover of "
                    + w.mass(h.bundle().mass()))
            .hands(h.pull().people() + " on the ropes, one on the call, one at the wind meter")
            .people(hands(h));
    day.step(
        "Measure the wind for ten minutes; write the greatest gust:",
        "under " + w.speedAtMost(h.wind().limitGust()));
    day.step(
        "Turn the cover good side out: take "
            + route.first()
            + " through "
            + route.through()
            + ", feed seam by seam.");
    day.step("Spread it round the frame, the door panel at the door. Tie the ropes to the top.");
    day.step("Pad the top of the frame. Lay the ropes over it.", ropes + " ropes");
    day.pause(
        "before anything is raised",
        List.of(
            "gust under " + w.speedAtMost(h.wind().limitGust()) + ", one person only watches",
            "nobody within " + w.atLeast(h.zone().radius()) + " of the middle",
            h.pull().people() + " people on the ropes, one more on the call",
            "pegs and hammers ready at every corner"
                + desk.plan()
                    .anchoring()
                    .map(a -> ", each held " + w.pullAtLeast(a.screen().pegPull()) + " when tested")
                    .orElse("")));
    h.tackle()
        .ifPresent(
            t ->
                day.step(
                    "Put a tackle on each rope, parts at its moving block:",
                    Integer.toString(t.parts())));
    day.warn("What is raised can fall, ropes whip: out of the circle and of the rope's line.");
    day.step("Haul evenly on the call. Pull on each rope, about:", w.pull(hauled(h)));
    day.step("Make every rope fast; each holds about:", w.pull(h.hold() / ropes));
    day.step("Pull the hem down, door panel first; peg opposite corners at once.");
    day.home("never with pegs left to set: go on with the next sheet at once");
    return day.stops(
        "gusts over " + w.speedAtMost(h.wind().stopGust()) + ": bring it down, sit on it, peg it.");
  }

  /** Those on the ropes, one on the call, one at the wind meter; all of them peg afterwards. */
  private int hands(HandlingPart h) {
    return Math.max(desk.people(), h.pull().people() + 2);
  }

  /** The pull on each rope, at its tackle if there is one. */
  static double hauled(HandlingPart h) {
    return h.tackle()
        .map(t -> t.greaterPull(h.pull().ropePull()))
        .orElse(h.pull().raisePull() / h.pull().ropes());
  }

  private static String tackleName(HandlingPart h) {
    return h.tackle().map(t -> ", tackle for each rope").orElse("");
  }

  private Day peg() {
    Day day =
        new Day(
                Day.Work.PEG,
                "Peg down, the same day",
                "A raised cover is not left unpegged for an hour.")
            .startIf("the cover hangs straight, every seam over its pole")
            .tools("hammer, chalk, tape")
            .material(
                desk.plan().fixings().map(f -> f.pegs().pegs() + " pegs, ").orElse("pegs, ")
                    + "rope and peg card")
            .people(desk.plan().handling().map(this::hands).orElse(desk.people()));
    desk.plan()
        .fixings()
        .ifPresent(
            f ->
                day.step(
                    "Set the pegs round the hem, opposite ones in turn. Apart:",
                    w.length(f.pegs().spacing()) + ", " + f.pegs().pegs() + " in all"));
    day.step("Tension the hem round and round until no fold is left.");
    day.step("Kick every peg; set one that moves again, deeper or beside.");
    day.step("Open the air: door tied back, top clear.");
    day.home("every peg holds against a kick", "door can be opened from inside");
    return day.stops("a peg that moves by hand: longer pegs, or ballast by the rope and peg card.");
  }

  /** What is set on the cover when it stands and holds. */
  private Day upper() {
    Day day =
        new Day(Day.Work.ON_THE_COVER, "Cap, skirt and lining", "")
            .startIf("every peg holds, no gusts that lift cloth")
            .tools("ladder or tower that stands by itself, what joins the seams")
            .material("cap, skirt, lining as there are; " + seams.fixings(ON_THE_COVER))
            .people(desk.people());
    if (seams.has(SeamKind.CAP)) {
      day.warn("A fall kills. Work from a ladder or tower that stands by itself, not the frame.");
      day.step("Set the cap, " + SeamKind.CAP.lap() + ":", seams.amount(SeamKind.CAP));
    }
    if (seams.has(SeamKind.SKIRT)) {
      day.step("Fix the skirt: " + SeamKind.SKIRT.lap() + ":", seams.amount(SeamKind.SKIRT));
      day.step("Lay the skirt outward and weigh it down with soil or sand all round.");
    }
    if (seams.has(SeamKind.LINING)) {
      day.step("Hang the lining inside:", seams.amount(SeamKind.LINING));
    }
    day.step("Look for daylight and for water after the first rain; mend from outside.");
    day.home("ladder lies down, nothing loose on the cover");
    return day.stops("a seam that is open to the wind.");
  }
}
