package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.frame.FrameMeasures;
import io.github.seamstead.geometry.survey.TapingRound;
import java.util.HashSet;
import java.util.Set;

/** A blank form for the tape: which distances to read, and what they should be. */
final class SurveyForm {

  private SurveyForm() {}

  static void write(Desk desk) {
    boolean cloth = desk.plan().cover().isPresent() && !desk.sizes().isModel();
    if (cloth && desk.plan().survey().isEmpty()) {
      desk.plan()
          .frame()
          .ifPresent(f -> desk.add("Survey form", "Survey form", Sheet.Kind.CARD, form(desk, f)));
    }
  }

  private static Markup form(Desk desk, FramePart frame) {
    FrameMeasures m = frame.measures();
    Sizes w = desk.sizes();
    int n = m.pyramid().sides();
    Markup to = new Markup();
    to.open("p", "class", "lead");
    to.text(
        "Corners B1 to B"
            + n
            + ", top T, counter-clockwise from above; face 1 is between B"
            + n
            + " and B1. Pole centre to pole centre; in this order the ladder is moved least. A rise"
            + " is how much higher the second point is. Wanted: base side ");
    to.element("b", w.length(m.base().side())).text(", hip ");
    to.element("b", w.length(m.hipLength())).text(", across ");
    to.element("b", w.length(m.acrossCorners())).text(".").closeLine();
    TapingRound round = TapingRound.of(frame.surveyShape());
    Set<String> known = new HashSet<>();
    for (TapingRound.Stand stand : round.stands()) {
      to.element(
          "h3",
          stand.at().map(node -> "Ladder at " + node.name()).orElse("Standing on the ground"));
      to.open("div", "class", "form");
      stand.readings().forEach(wanted -> reading(to, wanted, known));
      to.closeLine();
    }
    return to;
  }

  /** A pair that is read a second time, from its other end or anew, is a reading of its own. */
  private static void reading(Markup to, TapingRound.Wanted wanted, Set<String> known) {
    boolean rise = wanted.quantity() == TapingRound.Quantity.RISE;
    String pair = wanted.from().name() + "–" + wanted.to().name();
    String name = (rise ? "rise " : "tape ") + pair;
    String key = (rise ? "rise-" : "tape-") + pair;
    to.open("p").element("span", rise ? "rise " + pair : pair);
    Ticks.number(to, known.add(key) ? key : key + "-again", name);
    to.closeLine();
  }
}
