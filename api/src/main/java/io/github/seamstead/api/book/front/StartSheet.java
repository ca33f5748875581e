package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.layout.LayoutPart;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.frame.ScaleModel;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The first sheet: what the job is, how long, with whom, for how much, and what is in doubt. */
final class StartSheet {

  static final String TITLE = "Start here";

  private StartSheet() {}

  static void write(Desk desk, WorkPlan work) {
    Markup m = new Markup();
    desk.document()
        .site()
        .flatMap(Site::note)
        .ifPresent(note -> m.element("p", note, "class", "lead"));
    m.open("div", "class", "two");
    desk.pyramid().ifPresent(p -> desk.figure(m, ShapeSketch.of(desk, p), false));
    facts(desk, work, m);
    m.closeLine();
    if (desk.sizes().isModel()) {
      model(desk, m);
    }
    weeks(desk, work, m);
    m.open("div", "class", "two even").open("div");
    Needs needs = Needs.of(desk);
    m.element("h3", "Order this week");
    order(needs, m);
    m.close().open("div").element("h3", "Where it stands");
    lights(desk, needs, m);
    m.close().closeLine();
    m.open("p", "class", "foot").element("strong", "Screening only: ");
    m.text("frame, anchorage and wind are for local codes and licensed practice. ");
    m.element("a", "Read the safety page first.", "href", "#" + SafetySheet.ANCHOR);
    m.closeLine();
    desk.add(TITLE, "Start", Sheet.Kind.PAGE, m);
  }

  private static void facts(Desk desk, WorkPlan work, Markup m) {
    Sizes w = desk.sizes();
    m.open("div", "class", "facts");
    desk.plan()
        .cover()
        .ifPresent(
            c -> fact(m, w.area(c.clothArea()), "of cloth to cut, " + w.mass(c.clothMass())));
    desk.plan()
        .floor()
        .ifPresent(
            f ->
                fact(
                    m,
                    w.area(f.buildUp().footprint().area()),
                    "of floor, " + w.words().small(f.buildUp().thickness()) + " deep"));
    int people = desk.people();
    if (work.workingDays() > 0) {
      String days = Numbers.fixed(work.workingDays(), 0);
      fact(
          m,
          days + (days.equals("1") ? " day" : " days"),
          "of work, " + Numbers.fixed(work.crewDays(), 0) + " crew-days; crew of " + people);
    }
    if (work.waits()) {
      String from = Numbers.fixed(Math.ceil(work.soonest() / 7), 0);
      String to = Numbers.fixed(Math.ceil(work.latest() / 7), 0);
      fact(
          m,
          (work.isOpenEnded() ? from + " or more" : from.equals(to) ? from : from + "–" + to)
              + " weeks",
          "with drying; likely " + Numbers.fixed(Math.ceil(work.likely() / 7), 0));
    }
    Needs needs = Needs.of(desk);
    fact(
        m,
        needs.priced() > 0 ? Sizes.number(needs.priced()) : "Not priced",
        (needs.priced() > 0 ? "in the money of the job" : "by the job")
            + (needs.unpriced().isEmpty()
                ? ""
                : "; no price: " + String.join(", ", needs.unpriced())));
    desk.plan()
        .joining()
        .ifPresent(
            j ->
                fact(
                    m,
                    w.rough(j.ring().joints().stream().mapToDouble(x -> x.length()).sum()),
                    "of seam round the ring, " + j.ring().size() + " seams"));
    m.closeLine();
  }

  private static void fact(Markup m, String figure, String text) {
    m.open("p").element("b", figure).text(" " + text).close();
  }

  /** The model beside the shelter that it stands for. */
  private static void model(Desk desk, Markup m) {
    if (desk.plan().frame().isEmpty()) {
      return;
    }
    Sizes w = desk.sizes();
    FrameMeasures now = desk.plan().frame().get().measures();
    FrameMeasures full = ScaleModel.fullSize(now);
    int scale = ScaleModel.SCALE;
    m.element(
        "p",
        "This is a model. If it stands for a shelter "
            + scale
            + " times as large, lengths grow by "
            + scale
            + ", cloth by "
            + scale
            + " × "
            + scale
            + ". Wind, pegs and lifting are left out: they do not follow a scale.",
        "class",
        "model");
    Ticks.table(m, "The model and the shelter", "size", "#model", "#full size, 1:" + scale);
    sizes(w, m, "base side", now.base().side(), full.base().side());
    sizes(w, m, "across corners", now.acrossCorners(), full.acrossCorners());
    sizes(w, m, "height", now.frameHeight(), full.frameHeight());
    sizes(w, m, "hip", now.hipLength(), full.hipLength());
    m.open("tr");
    Ticks.cells(
        m,
        "cover on the faces",
        "#" + w.area(now.coverArea()),
        "#" + w.words().area(full.coverArea()));
    m.closeLine();
    Ticks.endTable(m);
  }

  private static void sizes(Sizes w, Markup m, String what, double model, double full) {
    m.open("tr");
    Ticks.cells(m, what, "#" + w.length(model), "#" + w.words().length(full));
    m.closeLine();
  }

  private static void weeks(Desk desk, WorkPlan work, Markup m) {
    if (!work.waits()) {
      return;
    }
    m.element("h3", "The weeks");
    desk.figure(m, WeeksSketch.of(work), true);
    m.element(
        "p",
        "Black: work, five days a week. Hatched: waiting, as likely. Dashed: it may take as long as"
            + " this"
            + (work.isOpenEnded() ? ", or longer than was forecast" : "")
            + ". Only seams and floor layers are timed by the plan; every other day sheet stands"
            + " for one day.",
        "class",
        "small");
  }

  private static void order(Needs needs, Markup m) {
    m.open("ul", "class", "ticks");
    int i = 0;
    for (Needs.Line line : needs.lines()) {
      m.open("li");
      m.open("label", "class", "tk");
      m.open("input", "type", "checkbox", "data-k", "order" + i++);
      m.open("span").text(line.what() + " ").element("b", line.amount());
      if (!line.note().isEmpty()) {
        m.text(" ").element("i", line.note());
      }
      m.close().close().closeLine();
    }
    if (needs.lines().isEmpty()) {
      m.element("li", "Nothing: the plan asks for no purchase.");
    }
    m.closeLine();
  }

  private static void lights(Desk desk, Needs needs, Markup m) {
    m.open("ul", "class", "lights");
    List<String> unmet = new ArrayList<>();
    desk.plan()
        .unmet()
        .forEach(u -> unmet.add(desk.sizes().words().said(u.what()).replaceAll("\\.$", "")));
    if (unmet.isEmpty()) {
      light(m, "●", "Fits", fits(desk));
    } else {
      light(m, "✕", "Does not fit", String.join("; ", unmet) + ".");
    }
    light(
        m,
        "▲",
        needs.lines().isEmpty() ? "Nothing to buy" : "To buy",
        needs.lines().isEmpty()
            ? "what the job states is enough."
            : needs.lines().size()
                + (needs.lines().size() == 1 ? " thing" : " things")
                + ": see the order.");
    List<String> tests = tests(desk);
    light(
        m,
        "■",
        tests.isEmpty() ? "Nothing to test first" : "Test first",
        tests.isEmpty() ? "no doubt that a test would settle." : String.join(" ", tests));
    m.closeLine();
  }

  private static void light(Markup m, String sign, String word, String text) {
    m.open("li").element("span", sign, "class", "sign", "aria-hidden", "true");
    m.element("b", word + ": ").text(text).close();
  }

  private static String fits(Desk desk) {
    return desk.plan()
        .layout()
        .map(LayoutPart::result)
        .map(
            r ->
                r.used().stream().mapToInt(u -> u.placements().size()).sum()
                    + " pieces lie on "
                    + r.used().size()
                    + " sheets or rolls at hand.")
        .orElse("what was planned can be met as stated.");
  }

  /** What to test or decide before money is spent. */
  static List<String> tests(Desk desk) {
    List<String> tests = new ArrayList<>();
    if (desk.plan().cover().isPresent()
        && desk.plan().survey().isEmpty()
        && !desk.sizes().isModel()) {
      tests.add("Tape the frame before cutting: the pieces follow the drawing, not a survey.");
    }
    desk.plan()
        .soils()
        .forEach(
            s -> {
              if (!s.finding().conflicts().isEmpty()) {
                tests.add(s.sample().id() + ": its tests contradict each other; repeat them.");
              }
              s.nextTests().stream()
                  .findFirst()
                  .ifPresent(
                      t -> tests.add(s.sample().id() + ": next test, " + t.kind().label() + "."));
            });
    desk.plan()
        .trials()
        .forEach(
            t -> {
              if (!t.reading().decided()) {
                tests.add(
                    "Tiles of "
                        + t.trials().mix()
                        + " are not decided"
                        + (t.reading().nextSandParts().isPresent()
                            ? ": make one of "
                                + Sizes.number(t.reading().nextSandParts().get())
                                + " parts of sand."
                            : "."));
              }
            });
    if (desk.plan().trials().isEmpty() && !desk.plan().mixes().isEmpty()) {
      tests.add("Make trial tiles before the sand is ordered.");
    }
    return tests;
  }
}
