package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.assembly.merge.JoinStep;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.markout.MarkOut;
import io.github.seamstead.geometry.pattern.PatternPiece;
import io.github.seamstead.geometry.pattern.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The days from the frame to the joined cover. */
final class CoverDays {

  private static final String DRY_CALM = "dry, no gusts that lift cloth, light to read by";

  private final Desk desk;
  private final Sizes w;
  private final int crew;

  CoverDays(Desk desk) {
    this.desk = desk;
    this.w = desk.sizes();
    this.crew = desk.crew().map(c -> c.people()).orElse(2);
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
        new Day("Frame and tape", "Set the frame up and tape it before any cloth is cut.")
            .startIf(
                w.isModel()
                    ? "a flat table"
                    : "level ground cleared; wind too weak to move a standing pole")
            .bring(
                w.isModel()
                    ? "ruler, saw or knife on a board, glue, frame card"
                    : "tape, level or water hose, string, chalk, saw, frame card, this sheet")
            .people(crew);
    desk.plan()
        .frame()
        .flatMap(f -> f.members())
        .ifPresent(members -> day.step("Cut and name the members by the frame card."));
    day.step("Lay out the base ring. Each side:", w.length(m.base().side()));
    if (m.pyramid().sides() % 2 == 0) {
      day.step("Tape across opposite corners; all alike:", w.length(m.acrossCorners()));
    } else {
      day.step("Tape from each corner to the middle of the side across:", acrossOdd(m));
    }
    if (!w.isModel()) {
      day.step("Level the base corners with the hose; write down how far each is off.");
      day.warn("A falling pole kills. Props stay until the frame is closed; nobody under it.");
    }
    day.step("Stand the hips. Each, from base corner to the top:", w.length(m.hipLength()));
    if (m.pyramid().isTruncated()) {
      day.step("Close the opening. Each side:", w.length(m.openingSide()));
    }
    day.step("Tape the height over the middle of the base:", w.length(m.frameHeight()));
    survey(day);
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
        new Day("Mark out and cut", pieces + " pieces by the piece cards and the cut cards.")
            .startIf(w.isModel() ? "a cutting board" : "clean flat ground or table; " + DRY_CALM)
            .bring(
                "2 tapes, straightedge, chalk or marker, square, shears or knife, piece cards, cut"
                    + " cards")
            .people(crew);
    day.step("Spread the sheet good side up, the edge of the ruler towards you.");
    desk.plan()
        .layout()
        .filter(CoverDays::hasFlaws)
        .ifPresent(l -> day.step("Find each flaw ringed on the cut card; ring it on the cloth."));
    day.step("Mark corners a and b of every piece by the cut card, in its order.");
    day.step("Draw each piece from a and b by its piece card. A second person reads aloud.");
    day.step(
        "Tape both checks of the piece card; draw again what is off by more than " + close() + ".");
    day.pause(
        "before the first cut",
        List.of(
            "every piece of the sheet drawn, none over a flaw",
            "both checks of each piece within " + close(),
            "kept edges lie on the edge of the sheet"));
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

  private Day prepare(CoverPart cover) {
    Cover stated = desk.document().cover().orElseThrow();
    long splices = cover.panels().stream().mapToLong(p -> p.splices().size()).sum();
    Day day =
        new Day(
                splices > 0 ? "Splices, hems and patches" : "Hems and patches",
                "Everything on single panels, while one person can still turn them.")
            .startIf("cloth clean and dry; adhesive at the temperature on its label")
            .bring(tools(stated) + ", rag and cleaner, rollers or weights, join card")
            .people(crew);
    if (splices > 0) {
      double lap =
          cover.panels().stream()
              .flatMap(p -> p.splices().stream())
              .findFirst()
              .orElseThrow()
              .lap();
      day.step(
          "Splice the panels by the join card, the upper part over the lower. Lap:",
          w.words().small(lap));
    }
    if (has(cover, PieceKind.PATCH)) {
      day.step("Fasten each patch round its opening before the opening is cut through.");
      day.step("Cut the openings, leave the corners round.");
    }
    if (has(cover, PieceKind.FLAP)) {
      day.step("Hem the flaps and fix each by its upper edge, over the opening, good side out.");
    }
    day.step(
        "Hem: "
            + stated.hem().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ')
            + " edge at the bottom; mend a kept edge that is torn.");
    if (stated.topTurnIn() > 0) {
      day.step("Fold the top edge in and fasten it:", w.words().small(stated.topTurnIn()));
    }
    if (has(cover, PieceKind.CAP)) {
      day.step("Close the cap along its lap; leave it off until the cover stands.");
    }
    if (has(cover, PieceKind.SKIRT)) {
      day.step("Join the skirt end to end; leave the last end open to fit it round.");
    }
    day.home(
        "all panels whole: as many as the frame has sides",
        "openings and flaps on the panel " + "that the map says");
    return day.stops("adhesive still wet under a fold, a splice that slides by hand.");
  }

  private String tools(Cover stated) {
    return stated
        .fixings()
        .map(
            f -> {
              String tool =
                  switch (f.method().name()) {
                    case "STAPLES" ->
                        "staplers, " + "1 row, one every " + w.words().small(f.spacing());
                    case "SCREWS" ->
                        "drivers and screws, one every " + w.words().small(f.spacing());
                    default -> "sewing tools, a stitch every " + w.words().small(f.spacing());
                  };
              return f.rows() > 1 ? tool.replace("1 row", f.rows() + " rows") : tool;
            })
        .orElse("what joins the seams");
  }

  private static boolean has(CoverPart cover, PieceKind kind) {
    return cover.cuts().stream()
        .map(CutShape::pattern)
        .map(PatternPiece::kind)
        .anyMatch(kind::equals);
  }

  private Day join(JoiningPart part) {
    List<JoinStep> steps = part.order().orElseThrow().steps();
    int teams = part.options().teams();
    Day day =
        new Day(
                "Join the ring",
                "Good sides together, plain side up. "
                    + (teams == 1 ? "One team" : teams + " teams")
                    + ", the order of the join card."
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
            .startIf(w.isModel() ? "table clear" : DRY_CALM)
            .bring(
                desk.document().cover().map(this::tools).orElse("") + ", pegs or clips, join card")
            .people(crew);
    day.step("Lay the panels out as the map shows: plain side up, hems outward.");
    day.step("Before each seam read both names aloud: the same letter and check number.");
    for (int wave = 1;
        wave <= steps.get(steps.size() - 1).wave() && day.steps().size() < 6;
        wave++) {
      addWave(day, steps, wave);
    }
    List<String> items = new ArrayList<>();
    items.add("every seam on the join card ticked but the last, " + last(steps));
    items.add("run a hand along each seam: none is twisted, no stray edge is caught in it");
    items.add("both free edges carry the name " + last(steps));
    day.step("Close the ring, the whole lies flat: " + last(steps) + ".");
    day.pause("before the ring is closed", items);
    day.home(
        w.isModel() ? "names all inside" : "cloth rolled or weighted, nothing loose to the wind");
    return day.stops("a seam that is open, " + (w.isModel() ? "wet glue." : "gusts, wet cloth."));
  }

  private void addWave(Day day, List<JoinStep> steps, int wave) {
    List<JoinStep> now = steps.stream().filter(s -> s.wave() == wave && !s.closing()).toList();
    if (now.isEmpty()) {
      return;
    }
    int lastWave =
        steps.stream().filter(s -> !s.closing()).mapToInt(JoinStep::wave).max().orElse(1);
    boolean rest = day.steps().size() == 5 && wave < lastWave;
    List<JoinStep> these =
        rest ? steps.stream().filter(s -> s.wave() >= wave && !s.closing()).toList() : now;
    double heaviest = these.stream().mapToDouble(JoinStep::inHandKg).max().orElse(0);
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
