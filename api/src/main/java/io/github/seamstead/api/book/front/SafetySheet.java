package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Safety on one page: by the moment of the work, each hazard once, sources small. */
final class SafetySheet {

  static final String TITLE = "Safety";
  static final String ANCHOR = "sheet-safety";

  /** Hazards that can kill: their word is WARNING, that of the others CAUTION. */
  private static final Set<Hazard> CAN_KILL =
      EnumSet.of(
          Hazard.HEIGHT,
          Hazard.WIND,
          Hazard.FIRE,
          Hazard.CARBON_MONOXIDE,
          Hazard.SILICA_DUST,
          Hazard.TRAILER_LOAD,
          Hazard.MACHINERY,
          Hazard.STRUCTURE);

  /** The moments of the work, in their order, with the chapters that belong to each. */
  private enum Moment {
    FRAME("Frame and site"),
    CLOTH("Cutting and joining cloth"),
    RAISE("Turning, raising, pegging"),
    FLOOR("Soil, mixing, laying"),
    USE("Drying, oiling, living with it");

    private final String title;

    Moment(String title) {
      this.title = title;
    }
  }

  private SafetySheet() {}

  static void write(Desk desk) {
    Map<Moment, List<Caution>> groups = new LinkedHashMap<>();
    Set<String> seen = new LinkedHashSet<>();
    for (ChapterCaution c : desk.plan().cautions()) {
      boolean moved =
          desk.sizes().isModel()
              && (c.chapter() == Chapter.HANDLING || c.chapter() == Chapter.ANCHORING);
      // A laxer rule of another publisher belongs to the notes, not to what people carry.
      boolean lax = c.caution().risk().startsWith("A laxer rule");
      if (!moved && !lax && seen.add(c.caution().risk())) {
        groups.computeIfAbsent(moment(c), k -> new ArrayList<>()).add(c.caution());
      }
    }
    Markup m = new Markup();
    m.open("p", "class", "lead").element("b", Caution.DEFERENCE);
    m.text(" One person is in charge of safety each day. Name: ");
    Ticks.blank(m, "safety-name", "who is in charge of safety");
    m.closeLine();
    m.open("div", "class", "safety");
    List<String> sources = new ArrayList<>();
    for (Moment moment : Moment.values()) {
      List<Caution> cautions = groups.getOrDefault(moment, List.of());
      if (!cautions.isEmpty()) {
        m.open("div", "class", "moment").element("h3", moment.title);
        cautions.forEach(c -> caution(m, c, sources));
        m.closeLine();
      }
    }
    m.closeLine();
    if (!sources.isEmpty()) {
      m.open("p", "class", "sources").text("Sources: ");
      for (int i = 0; i < sources.size(); i++) {
        m.text((i == 0 ? "" : "; ") + (i + 1) + " " + sources.get(i));
      }
      m.text(".").closeLine();
    }
    desk.add(TITLE, "Safety", Sheet.Kind.PAGE, m);
  }

  static boolean canKill(Hazard hazard) {
    return CAN_KILL.contains(hazard);
  }

  private static Moment moment(ChapterCaution c) {
    if (c.caution().hazard() == Hazard.FIRE || c.caution().hazard() == Hazard.CARBON_MONOXIDE) {
      return Moment.USE;
    }
    return switch (c.chapter()) {
      case SITE, FRAME, SURVEY -> Moment.FRAME;
      case PATTERN, MARKOUT, LAYOUT, JOINING, FIXINGS -> Moment.CLOTH;
      case HANDLING, ANCHORING -> Moment.RAISE;
      case SOIL, MIX, FLOOR -> Moment.FLOOR;
      case DRYING -> Moment.USE;
    };
  }

  private static void caution(Markup m, Caution c, List<String> sources) {
    m.open("p", "class", "hazard");
    m.element("strong", (canKill(c.hazard()) ? "WARNING" : "CAUTION") + ": " + c.hazard().label());
    m.text(". " + c.risk() + " ").element("b", c.limit());
    c.source()
        .ifPresent(
            s -> {
              String text = s.citation();
              if (!sources.contains(text)) {
                sources.add(text);
              }
              m.element("sup", Integer.toString(sources.indexOf(text) + 1));
            });
    m.closeLine();
  }
}
