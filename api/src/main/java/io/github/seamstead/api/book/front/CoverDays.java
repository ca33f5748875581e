package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.HemKind;
import io.github.seamstead.assembly.fixings.SeamKind;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.markout.MarkOut;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The days from the frame to the joined cover. */
final class CoverDays {

  private static final String DRY_CALM = "dry, no gusts that lift cloth, light to read by";

  /** The last wave of joining takes what is left, so that room stays for glue and closing. */
  private static final int MOST_BEFORE_CLOSING = 7;

  private final Desk desk;
  private final Sizes w;
  private final int crew;
  private final SeamWork seams;

  CoverDays(Desk desk) {
    this.desk = desk;
    this.w = desk.sizes();
    this.crew = desk.people();
    this.seams = new SeamWork(desk);
  }

  void add(List<Day> days) {
    desk.plan()
        .frame()
        .filter(f -> f.members().isPresent() || desk.plan().cover().isPresent())
        .filter(f -> desk.plan().done().cut().isEmpty())
        .ifPresent(f -> days.add(frame(f.measures())));
    desk.plan()
        .cover()
        .ifPresent(
            cover -> {
              if (uncut(cover) > 0) {
                days.add(cut(cover));
              }
              Day prepare = prepare(cover);
              if (prepare.steps().size() > 1) {
                days.add(prepare);
              }
            });
    desk.plan().joining().filter(j -> j.order().isPresent()).ifPresent(j -> days.add(join(j)));
  }

  private Day frame(FrameMeasures m) {
    Day day =
        new Day(Day.Work.FRAME, "Frame and tape", "")
            .startIf(
                w.isModel()
                    ? "a flat table"
                    : "level ground cleared; wind too weak to move a standing pole")
            .tools(
                w.isModel()
                    ? "ruler, fine saw or knife on a board, pencil"
                    : "tape, level or water hose, string, chalk, saw, props"
                        + (desk.plan().anchoring().isPresent()
                            ? "; hammer, spring scale, pegs"
                            : ""))
            .material(
                (w.isModel() ? "sticks, glue, thread; " : "poles and what joins them; ")
                    + "frame card")
            .people(crew);
    desk.plan()
        .frame()
        .flatMap(f -> f.members())
        .ifPresent(members -> day.step("Cut and name the members by the frame card."));
    day.step("Lay out the base ring. Each side:", w.length(m.base().side()));
    if (w.isModel()) {
      day.step("Glue the corners of the ring, each over a square of card; weigh them down.");
    }
    if (m.pyramid().sides() % 2 == 0) {
      day.step("Tape across opposite corners; all alike:", w.length(m.acrossCorners()));
    } else {
      day.step("Tape from each corner to the middle of the side across:", acrossOdd(m));
    }
    if (!w.isModel()) {
      day.step("Level the base corners with the hose; write down how far each is off.");
      day.warn("A falling pole kills. Props stay until the frame is closed; nobody under it.");
    }
    day.step(
        w.isModel()
            ? "Tie the hips together at the top with thread, spread them, glue each foot. Length:"
            : "Stand the hips. Each, from base corner to the top:",
        w.length(m.hipLength()));
    if (m.pyramid().isTruncated()) {
      day.step("Close the opening. Each side:", w.length(m.openingSide()));
    }
    day.step("Tape the height over the middle of the base:", w.length(m.frameHeight()));
    survey(day);
    new RaisingDays(desk).testPegs(day);
    day.pause(
        "before any cloth is cut",
        List.of(
            "every base side taped, none off by more than the seams can ease",
            "every hip taped at the same two points",
            "a second person has read and written every number"));
    day.home(
        w.isModel() ? "glue set" : "poles braced or lying",
        "readings copied into the job document");
    return day.stops("a reading that disagrees with the others, a pole that moves by hand.");
  }

  private int uncut(CoverPart cover) {
    return cover.cuts().stream().mapToInt(s -> s.pieces().size()).sum()
        - desk.plan().done().cut().size();
  }

  private String acrossOdd(FrameMeasures m) {
    return w.length(m.circumradius() + m.inradius());
  }

  private void survey(Day day) {
    if (desk.plan().survey().isPresent()) {
      desk.plan().survey().get().nextReadings().stream()
          .findFirst()
          .ifPresent(
              next ->
                  day.step(
                      "Take one more reading, it helps most: "
                          + next.pair().name()
                          + ". Plan again"
                          + " with it."));
    } else {
      day.step("Write the readings into the job document and plan again: the pieces change.");
    }
  }

  private Day cut(CoverPart cover) {
    int pieces = uncut(cover);
    int sheets = desk.plan().layout().map(l -> l.result().used().size()).orElse(0);
    Day day =
        new Day(Day.Work.CUT, "Mark out and cut", "")
            .startIf(w.isModel() ? "a cutting board" : "clean flat ground or table; " + DRY_CALM)
            .tools(
                w.isModel()
                    ? "ruler, set square, pencil, knife or scissors"
                    : "2 tapes, straightedge, square, chalk or marker, shears or knife")
            .material(
                (sheets > 0
                        ? sheets + (sheets == 1 ? " sheet or roll" : " sheets or rolls") + " of "
                        : "")
                    + cloth()
                    + "; piece cards, cut cards")
            .people(crew);
    boolean flaws = desk.plan().layout().filter(CoverDays::hasFlaws).isPresent();
    boolean kept =
        desk.document().cover().filter(c -> c.hem().isAnywhere(HemKind.REINFORCED)).isPresent();
    day.step("Spread the sheet good side up, the edge of the ruler towards you.");
    if (flaws) {
      day.step("Find each flaw ringed on the cut card; ring it on the cloth.");
    }
    day.step("Mark corners a and b of every piece by the cut card, in its order.");
    day.step("Draw each piece from a and b by its piece card. A second person reads aloud.");
    day.step(
        "Tape both checks of the piece card; draw again what is off by more than " + close() + ".");
    day.pause(
        "before the first cut",
        Stream.of(
                "every piece of the sheet drawn" + (flaws ? ", none over a flaw" : ""),
                "both checks of each piece within " + close(),
                kept ? "kept edges lie on the edge of the sheet" : "")
            .filter(item -> !item.isEmpty())
            .toList());
    day.step(
        "Cut along the full lines"
            + (w.isModel() ? ", the blade away from yourself." : ", away from yourself. Cut the")
            + (w.isModel() ? "" : " notches: the double one is the lowest."));
    day.step("Write name, both edge names and GOOD SIDE on each piece, then tick its card.");
    day.step("Stack by name, lowest number on top. Roll the rests and write their size on.");
    day.home(
        pieces + " pieces ticked" + (sheets > 0 ? ", " + sheets + " sheets done" : ""),
        w.isModel() ? "blades closed" : "blades closed, cloth off the ground and covered");
    return day.stops("a piece without its two edge names, a piece that is short.");
  }

  private String close() {
    return w.words().small(MarkOut.HAND_TOLERANCE);
  }

  private static boolean hasFlaws(LayoutPart layout) {
    return layout.stock().stream().anyMatch(item -> !item.flaws().isEmpty());
  }

  private String cloth() {
    return desk.document().cover().map(c -> c.fabric().name()).orElse("cloth");
  }

  /** What is sewn or stapled on single panels, by the seams that the plan counts. */
  private static final List<SeamKind> ON_PANELS =
      List.of(
          SeamKind.SPLICE,
          SeamKind.PATCH,
          SeamKind.FLAP,
          SeamKind.HEM,
          SeamKind.TOP,
          SeamKind.SKIRT_ENDS,
          SeamKind.CAP_JOINTS);

  private Day prepare(CoverPart cover) {
    Cover stated = desk.document().cover().orElseThrow();
    boolean splices = seams.has(SeamKind.SPLICE);
    Day day =
        new Day(
                Day.Work.SINGLE_PANELS,
                splices ? "Splices, hems and patches" : "Hems and patches",
                "Everything on single panels, while one person can still turn them.")
            .startIf("cloth clean and dry" + gluing())
            .tools(tools(stated) + ", rag, rollers or weights")
            .material(material(ON_PANELS) + "join card")
            .people(crew);
    if (splices) {
      double lap =
          cover.panels().stream()
              .flatMap(p -> p.splices().stream())
              .findFirst()
              .orElseThrow()
              .lap();
      on(
          day,
          SeamKind.SPLICE,
          "Splice the panels by the join card: " + lap(SeamKind.SPLICE, lap) + ".");
    }
    on(day, SeamKind.PATCH, "Fasten each patch round its opening, before the opening is cut:");
    if (seams.has(SeamKind.PATCH)) {
      day.step("Cut the openings, leave the corners round.");
    }
    on(day, SeamKind.FLAP, "Hem each flap, fix it above its opening, free at sides and foot:");
    on(day, SeamKind.HEM, "Fold the hem to the inside, so that no pocket holds water:");
    if (stated.hem().isAnywhere(HemKind.REINFORCED)) {
      day.step("Mend the kept edge where it is torn: it is the hem.");
    }
    on(
        day,
        SeamKind.TOP,
        "Fold the top edge to the inside by " + w.words().small(stated.topTurnIn()) + ":");
    on(day, SeamKind.CAP_JOINTS, "Close the cap, " + SeamKind.CAP_JOINTS.lap() + "; put it aside:");
    on(
        day,
        SeamKind.SKIRT_ENDS,
        "Join the strips of the skirt end to end; leave the last end open:");
    day.home(
        "all panels whole: " + cover.panels().size() + ", as they are to be joined",
        "openings and flaps on the panel that the map says");
    return day.stops("adhesive still wet under a fold, a splice that slides by hand.");
  }

  private void on(Day day, SeamKind kind, String text) {
    if (seams.has(kind)) {
      day.step(text, seams.amount(kind));
    }
  }

  private String lap(SeamKind kind, double width) {
    return kind.lap() + ", by " + w.words().small(width);
  }

  private String material(List<SeamKind> kinds) {
    String held = seams.fixings(kinds);
    boolean glued = desk.plan().fixings().flatMap(f -> f.adhesive()).isPresent();
    return (held.isEmpty() ? "" : held + ", ") + (glued ? "adhesive, " : "");
  }

  /** The limits that the adhesive's maker states, as a condition to start. */
  private String gluing() {
    return desk.document()
        .cover()
        .flatMap(Cover::fixings)
        .flatMap(f -> f.adhesive())
        .map(
            a ->
                "; for the glue "
                    + w.celsius(a.leastTemperature())
                    + " to "
                    + w.celsius(a.greatestTemperature())
                    + ", air under "
                    + w.words().percent(a.greatestHumidity())
                    + " damp")
        .orElse("");
  }

  private String tools(Cover stated) {
    return stated
        .fixings()
        .map(
            f -> {
              String every = ", " + rows(f.rows()) + ", one every " + w.words().small(f.spacing());
              return switch (f.method()) {
                case STAPLES -> "staplers" + every;
                case SCREWS -> "drivers" + every;
                case STITCHES -> "sewing tools" + every;
              };
            })
        .orElse("what joins the seams");
  }

  private static String rows(int rows) {
    return rows == 1 ? "1 row" : rows + " rows";
  }

  private Day join(JoiningPart part) {
    List<JoinStep> steps = part.order().orElseThrow().steps();
    int teams = part.options().teams();
    Day day =
        new Day(
                Day.Work.RING,
                "Join the ring",
                "Good sides together, plain side up, in the order of the join card."
                    + desk.plan()
                        .schedule()
                        .map(
                            s ->
                                " Ring seams alone: "
                                    + w.words().duration(s.simulation().p50())
                                    + ", four times of five within "
                                    + w.words().duration(s.simulation().p80())
                                    + ".")
                        .orElse(""))
            .startIf((w.isModel() ? "table clear" : DRY_CALM) + gluing())
            .tools(
                desk.document().cover().map(this::tools).orElse("")
                    + (w.isModel() ? ", clips" : ", clips or clamps, chalk, weights"))
            .material(material(List.of(SeamKind.RING)) + "join card")
            .hands(teams == 1 ? "one team" : teams + " teams")
            .people(crew);
    day.step("Lay the panels out as the map shows: plain side up, hems outward.");
    day.step("Before each seam read both names aloud: the same letter and check number.");
    for (int wave = 1;
        wave <= steps.get(steps.size() - 1).wave() && day.steps().size() < MOST_BEFORE_CLOSING;
        wave++) {
      addWave(day, steps, wave);
    }
    List<String> items = new ArrayList<>();
    glue(day, items);
    if (day.steps().size() < Day.MOST_STEPS - 1) {
      day.step(
          "Look at each seam from both sides when it is pressed: no gap, no fold, no edge of"
              + " another panel caught in it. Tick it on the join card.");
    }
    items.add("every seam on the join card ticked but the last, " + last(steps));
    items.add("run a hand along each seam: none is twisted, no stray edge is caught in it");
    items.add("both free edges carry the name " + last(steps));
    day.step("Close the ring, the whole lies flat: " + last(steps) + ".");
    day.pause("before the ring is closed", items);
    day.home(
        w.isModel() ? "names all inside" : "cloth rolled or weighted, nothing loose to the wind");
    return day.stops("a seam that is open, " + (w.isModel() ? "wet glue." : "gusts, wet cloth."));
  }

  private void glue(Day day, List<String> pause) {
    desk.plan()
        .fixings()
        .flatMap(f -> f.glue())
        .ifPresent(
            glue -> {
              day.step("Spread no more glue at a time than:", w.length(glue.longestPortion()));
              pause.add(
                  "every glued seam has rested "
                      + w.words().duration(glue.cureTime())
                      + " before its panels are moved");
            });
  }

  private void addWave(Day day, List<JoinStep> steps, int wave) {
    List<JoinStep> now = steps.stream().filter(s -> s.wave() == wave && !s.closing()).toList();
    if (now.isEmpty()) {
      return;
    }
    int lastWave =
        steps.stream().filter(s -> !s.closing()).mapToInt(JoinStep::wave).max().orElse(1);
    boolean rest = day.steps().size() == MOST_BEFORE_CLOSING - 1 && wave < lastWave;
    List<JoinStep> these =
        rest ? steps.stream().filter(s -> s.wave() >= wave && !s.closing()).toList() : now;
    double heaviest = these.stream().mapToDouble(JoinStep::massInHand).max().orElse(0);
    day.step(
        "Join "
            + these.stream().map(s -> s.joint().mark().text()).collect(Collectors.joining(", "))
            + ".",
        w.isModel() ? "" : "up to " + w.mass(heaviest) + " in hand");
  }

  private static String last(List<JoinStep> steps) {
    return steps.get(steps.size() - 1).joint().mark().text();
  }
}
