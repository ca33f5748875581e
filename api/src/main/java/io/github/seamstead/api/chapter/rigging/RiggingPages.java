package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.assembly.anchor.PegTest;
import io.github.seamstead.assembly.anchor.Ventilation;
import io.github.seamstead.assembly.anchor.WindScreen;
import io.github.seamstead.assembly.fixings.FixingPattern;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.fixings.ShoppingItem;
import io.github.seamstead.assembly.handling.Packing;
import io.github.seamstead.assembly.handling.TurnRoute;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Fixings, turning and raising, anchoring. */
final class RiggingPages {

  private RiggingPages() {}

  static void fixings(BookContext book, FixingsPart part) {
    Table table = new Table("To buy", "what", "#needed", "#packs", "#in a pack");
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("item", "unit", "needed", "packs", "pack_size"));
    for (ShoppingItem item : part.shopping().items()) {
      table.row(
          book.words().said(item.name()),
          Numbers.significant(item.withSpare(), 4) + "\u00a0" + item.unit(),
          Integer.toString(item.packs()),
          Numbers.significant(item.packSize(), 6));
      csv.add(
          List.of(
              item.name(),
              item.unit(),
              BookContext.number(item.withSpare(), 2),
              Integer.toString(item.packs()),
              BookContext.number(item.packSize(), 2)));
    }
    book.table(table);
    book.list("fixings.csv", csv);
    FixingPattern pattern = part.fixings().pattern();
    book.paragraph(
        part.fixings().total()
            + " "
            + pattern.kind().label()
            + " in "
            + book.words().length(part.seams().length())
            + " of seams, every seam of cover and lining counted.");
    left(book, part);
    Table seams = new Table("By kind of seam", "seams", "#length", "#" + pattern.kind().label());
    for (SeamKind kind : part.seams().kinds()) {
      seams.row(
          kind.label(),
          book.words().length(part.seams().length(kind)),
          Integer.toString(part.seams().fixings(kind, pattern)));
    }
    book.table(seams);
    through(book, part);
    part.glue()
        .ifPresent(
            glue ->
                book.paragraph(
                    "Glue at most "
                        + book.words().length(glue.longestPortion())
                        + " at a time, and let a joint rest "
                        + book.words().duration(glue.cureTime())
                        + " before its group is handled."));
    book.paragraph(
        part.pegs().pegs()
            + " pegs round the hem, "
            + book.words().length(part.pegs().spacing())
            + " apart.");
    book.end(Chapter.FIXINGS);
  }

  private static void left(BookContext book, FixingsPart part) {
    if (part.left().made() > 0) {
      book.paragraph(
          part.left().made()
              + " of them are in: those of the seams that the diary says are joined, and of the"
              + " splices of their panels. "
              + (part.left().open() == 0
                  ? "No seam is left."
                  : "The table says what to buy for the other "
                      + part.left().open()
                      + ". What is left of earlier packs goes off it."));
    }
  }

  private static void through(BookContext book, FixingsPart part) {
    Words w = book.words();
    StackPart through = part.through();
    String layers =
        through.stack().layers()
            + " layers, "
            + w.small(through.stack().thickness())
            + " thick together";
    through
        .leastLeg()
        .ifPresent(
            leg ->
                book.paragraph(
                    "A leg must be "
                        + w.atLeast(leg)
                        + " long or longer for a seam of "
                        + layers
                        + ". Where seams and hem meet there are more layers: try the thickest place"
                        + " on scraps first."));
    through
        .thread()
        .ifPresent(
            thread ->
                book.paragraph(
                    "The stitches of all seams, through "
                        + layers
                        + ", take "
                        + w.length(thread)
                        + " of thread, needle and bobbin together, without ends."));
  }

  static void handling(BookContext book, HandlingPart part) {
    Words w = book.words();
    book.heading("Turning right side out");
    book.paragraph(part.turning().text());
    Table routes =
        new Table("Ways to turn", "pull first", "through", "#bundle across", "#opening", "passes?");
    for (TurnRoute route : part.turning().routes()) {
      routes.row(
          route.first(),
          route.through(),
          w.range(route.bundle(), w::small),
          w.small(route.opening()),
          route.passage().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
    book.table(routes);
    book.heading("Lifting");
    book.paragraph(part.lift().text());
    Table lift = new Table("The lift", "what", "#value");
    lift.row("the whole cover", w.mass(part.bundle().mass()));
    lift.row("one person at most, in this posture", w.massAtMost(part.lift().onePersonMass()));
    lift.row(
        "rolled on " + w.length(Packing.ROLL_LENGTH) + " length, across",
        w.range(part.bundle().rollDiameter(Packing.ROLL_LENGTH, Packing.ROLLED), w::small));
    book.table(lift);
    book.heading("Raising with ropes");
    Table pull = new Table("The ropes", "what", "#value");
    pull.row("ropes over the top", Integer.toString(part.pull().ropes()));
    pull.row("pull to raise, each rope", w.force(part.pull().raisePull() / part.pull().ropes()));
    pull.row("pull to hold, each rope", w.force(part.hold() / part.pull().ropes()));
    pull.row("force on the top of the frame", w.force(part.pull().apexPull()));
    pull.row("people on the ropes", Integer.toString(part.pull().people()));
    part.tackle()
        .ifPresent(
            tackle -> {
              pull.row(
                  "parts of rope at the moving block of the tackle",
                  Integer.toString(tackle.parts()));
              pull.row("pull on each tackle", w.force(tackle.greaterPull(part.pull().ropePull())));
            });
    part.rope().ifPresent(rope -> rope(w, pull, rope));
    pull.row("length of each rope", w.length(part.zone().ropeLength()));
    pull.row("nobody nearer than, from the centre", w.length(part.zone().radius()));
    book.table(pull);
    book.note(part.wind().text());
    book.end(Chapter.HANDLING);
  }

  private static void rope(Words w, Table table, RopePart rope) {
    table.row(
        rope.strength().fibre().label()
            + " rope of "
            + w.small(rope.strength().diameter())
            + ", what it may carry with a knot",
        w.forceAtMost(rope.strength().workingLoad()));
    table.row("is that enough?", rope.holds() ? "yes" : "no, take a thicker one");
    table.row(
        "the same rope breaks at, by two rules that disagree",
        w.force(rope.strength().breakingLoad())
            + " or "
            + w.force(rope.strength().rivalBreakingLoad()));
    rope.coils()
        .ifPresent(
            coils -> table.row("coils to cut the ropes from", Integer.toString(coils.rolls())));
  }

  static void anchoring(BookContext book, AnchoringPart part) {
    Words w = book.words();
    WindScreen screen = part.screen();
    book.note(
        "This page screens; it certifies nothing. Its coefficients are for simple forms: "
            + screen.coefficients().limits());
    Table table = new Table("Wind on the whole and on each peg", "what", "#value");
    table.row("design gust", w.speed(screen.pressure().gust()));
    part.peak()
        .ifPresent(
            peak ->
                table.row(
                    "raised from a mean of "
                        + w.speed(peak.basic())
                        + ", terrain "
                        + peak.terrain().label()
                        + ", by",
                    BookContext.number(screen.pressure().gust() / peak.basic(), 2)));
    table.row("velocity pressure", w.pressure(screen.pressure().pressure()));
    table.row(
        "the same with air of "
            + w.said(BookContext.number(screen.pressure().rival().density(), 3) + " kg/m³"),
        w.pressure(screen.pressure().rivalPressure()));
    table.row("drag, sideways", w.force(screen.drag()));
    table.row("uplift", w.force(screen.uplift()));
    table.row("pegs", Integer.toString(screen.pegs()));
    table.row("pull on each peg, factored", w.forceAtLeast(screen.pegPull()));
    table.row("angle of the pull above the ground", w.angle(screen.pullAngle()));
    table.row("ballast that would do instead", w.mass(part.ballast().mass()));
    book.table(table);
    pegs(book, part);
    Table ropes = new Table("Ropes of the edge, if you set them", "what", "#value");
    ropes.row(
        "rope along the hem, dip a tenth of the pegs' distance",
        w.forceAtLeast(part.hemRope().tension()));
    ropes.row("guy rope from each corner, 45 degrees", w.forceAtLeast(part.guy().tension()));
    book.table(ropes);
    book.heading("Air and water");
    Table air = new Table("Openings", "what", "#value");
    air.row("free area for air that is wanted, in all", w.area(part.ventilation().neededArea()));
    air.row("there is, high", w.area(part.ventilation().highArea()));
    air.row("there is, low", w.area(part.ventilation().lowArea()));
    air.row("enough?", part.ventilation().enough() ? "yes" : "no");
    book.table(air);
    book.paragraph(
        "A door is not counted, for it is shut in rain; a top under a cap is not counted either."
            + " With two fifths to a half of the area high and the rest low, "
            + w.area(part.ventilation().floorArea() / Ventilation.BALANCED_PART)
            + " in all is enough.");
    book.note(part.drainage().text());
    book.end(Chapter.ANCHORING);
  }

  private static void pegs(BookContext book, AnchoringPart part) {
    if (part.pegs().isPresent()) {
      book.paragraph(part.pegs().get().text());
      return;
    }
    book.paragraph(
        "Test the pegs in your own ground, in its worst spot: drive "
            + PegTest.LEAST_TESTS
            + " or more as they will stand, pull each along the rope, at the angle above, until it"
            + " moves, and write the pulls under site, pegs. What a peg may be asked to hold is not"
            + " half of the lowest pull: with few tests that scatter it is far less, and half of"
            + " that again on wet or thawing ground. The plan works it out from the pulls.");
  }
}
