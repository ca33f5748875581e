package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.ChapterCaution;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.shared.caution.Caution;
import io.github.seamstead.shared.caution.Hazard;
import io.github.seamstead.shared.source.Source;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Safety on one page: by the moment of the work, each hazard once with what it does and what to do,
 * sources small. What lies behind each rule stands in the chapters.
 */
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

  /** A model is held in one hand. */
  private static final Set<Hazard> NOT_OF_MODELS =
      EnumSet.of(Hazard.LIFTING, Hazard.HEIGHT, Hazard.WIND, Hazard.STRUCTURE);

  /** What a class is told, common practice; the shelter's own cautions stand in the chapters. */
  private static final String BLADES =
      "Cut on a board, away from your hand; close a blade before you put it down; one stapler, one"
          + " pupil. What holds in the model says nothing of wind, snow or weight at full size.";

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
      boolean moved = desk.sizes().isModel() && NOT_OF_MODELS.contains(c.caution().hazard());
      // A laxer rule of another publisher belongs to the notes, not to what people carry.
      boolean lax = c.caution().risk().startsWith("A laxer rule");
      if (!moved && !lax && seen.add(c.caution().limit())) {
        groups.computeIfAbsent(moment(c), k -> new ArrayList<>()).add(c.caution());
      }
    }
    Markup m = new Markup();
    m.open("p", "class", "lead").element("b", Caution.DEFERENCE);
    m.text(" One person is in charge of safety each day. Name: ");
    Ticks.blank(m, "safety-name", "who is in charge of safety");
    m.closeLine();
    m.open("div", "class", "safety");
    if (desk.sizes().isModel()) {
      m.open("p", "class", "hazard").element("strong", "CAUTION: blades");
      m.text(", cut hands. " + BLADES).closeLine();
    }
    List<String> sources = new ArrayList<>();
    Set<Hazard> told = EnumSet.noneOf(Hazard.class);
    for (Moment moment : Moment.values()) {
      List<Caution> cautions = groups.getOrDefault(moment, List.of());
      if (!cautions.isEmpty()) {
        m.open("div", "class", "moment").element("h3", moment.title);
        byHazard(cautions)
            .forEach(
                (hazard, of) -> {
                  m.open("p", "class", "hazard");
                  head(m, hazard, told.add(hazard));
                  rules(desk.sizes().words(), m, of, sources);
                  m.closeLine();
                });
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
    desk.add(TITLE, "Safety", Sheet.Kind.CARD, m);
  }

  static boolean canKill(Hazard hazard) {
    return CAN_KILL.contains(hazard);
  }

  private static Moment moment(ChapterCaution c) {
    boolean glue = c.chapter() == Chapter.FIXINGS || c.chapter() == Chapter.JOINING;
    if (c.caution().hazard() == Hazard.CARBON_MONOXIDE
        || (c.caution().hazard() == Hazard.FIRE && !glue)) {
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

  /** What it does to people, in a few words. */
  private static String harm(Hazard hazard) {
    return switch (hazard) {
      case LIFTING -> "strains backs";
      case HEIGHT -> "falls kill";
      case WIND -> "lifts cloth and people";
      case FIRE -> "runs fast in cloth";
      case CARBON_MONOXIDE -> "kills without a smell";
      case SILICA_DUST -> "scars lungs";
      case LIME -> "burns skin and eyes";
      case TRAILER_LOAD -> "swings, does not stop";
      case MACHINERY -> "takes hands";
      case STRUCTURE -> "what gives way crushes";
    };
  }

  private static Map<Hazard, List<Caution>> byHazard(List<Caution> cautions) {
    Map<Hazard, List<Caution>> groups = new LinkedHashMap<>();
    cautions.forEach(c -> groups.computeIfAbsent(c.hazard(), k -> new ArrayList<>()).add(c));
    return groups;
  }

  /** The hazard; what it does to people stands where it comes first. */
  private static void head(Markup m, Hazard hazard, boolean first) {
    m.element("strong", (canKill(hazard) ? "WARNING" : "CAUTION") + ": " + hazard.label());
    m.text(first ? ", " + harm(hazard) + "." : ".");
  }

  private static void rules(Words words, Markup m, List<Caution> cautions, List<String> sources) {
    for (Caution c : cautions) {
      m.text(" " + words.said(c.limit()));
      c.source().ifPresent(s -> m.element("sup", note(words.said(shortly(s)), sources)));
    }
  }

  /** Who printed it and where; its place in it stands with the caution in its chapter. */
  private static String shortly(Source source) {
    return new Source(source.author(), source.title(), source.year(), "", source.status())
        .citation();
  }

  private static String note(String citation, List<String> sources) {
    if (!sources.contains(citation)) {
      sources.add(citation);
    }
    return Integer.toString(sources.indexOf(citation) + 1);
  }
}
