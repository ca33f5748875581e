package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Markup;
import io.github.seamstead.geometry.frame.FrameMeasures;

/** A blank form for the tape: which distances to read, and what they should be. */
final class SurveyForm {

  private SurveyForm() {}

  static void write(Desk desk) {
    boolean cloth = desk.plan().cover().isPresent() && !desk.sizes().isModel();
    if (cloth && desk.plan().survey().isEmpty()) {
      desk.plan()
          .frame()
          .ifPresent(
              f ->
                  desk.add(
                      "Survey form", "Survey form", Sheet.Kind.CARD, form(desk, f.measures())));
    }
  }

  private static Markup form(Desk desk, FrameMeasures m) {
    Sizes w = desk.sizes();
    int n = m.pyramid().sides();
    Markup to = new Markup();
    to.open("p", "class", "lead");
    to.text(
        "Corners B1 to B"
            + n
            + ", top T, counter-clockwise from above; face 1 is between B"
            + n
            + " and B1. Pole centre to pole centre. Wanted: base side ");
    to.element("b", w.length(m.base().side())).text(", hip ");
    to.element("b", w.length(m.hipLength())).text(", across ");
    to.element("b", w.length(m.acrossCorners())).text(".").closeLine();
    to.open("div", "class", "form");
    for (int i = 1; i <= n; i++) {
      reading(to, "B" + i + "–B" + (i % n + 1));
    }
    for (int i = 1; i <= n; i++) {
      reading(to, m.pyramid().isTruncated() ? "B" + i + "–T" + i : "B" + i + "–top");
    }
    for (int i = 1; i <= n; i++) {
      int far = (i - 1 + Math.max(2, n / 2)) % n + 1;
      boolean twice = n % 2 == 0 && n > 4 && far < i;
      if (n > 3 && !twice && !(n == 4 && i > 2)) {
        reading(to, "B" + i + "–B" + far);
      }
    }
    to.closeLine();
    return to;
  }

  private static void reading(Markup to, String pair) {
    to.open("p").element("span", pair);
    Ticks.number(to, "tape-" + pair, "distance " + pair);
    to.closeLine();
  }
}
