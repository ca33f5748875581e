package io.github.seamstead.api.book;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.quantity.Dimension;
import io.github.seamstead.shared.quantity.QuantityText;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Leads from the numbers of a chapter to the sums of that chapter. A number leads to the first sum
 * with a step of its value, to the digits in which it is written; fewer than three digits tell too
 * little.
 */
final class SumLinks {

  private static final int LEAST_DIGITS = 3;

  /** Ends the id of a sum that adds up the doubt of the result of another. */
  private static final String DOUBT = "-doubt";

  private static final Pattern METRIC = Pattern.compile("(-?)(\\d+)(?:\\.(\\d+))?\\s*(\\D*)");
  private static final Pattern IMPERIAL = Pattern.compile("[\\d /.]+(ft|in)( [\\d /]+in)?");

  /** Half of the sixteenth of an inch to which lengths are written. */
  private static final double HALF_SIXTEENTH = QuantityText.toSi(1, Dimension.LENGTH, "in") / 32;

  /** A little more than half of the last digit, for what the writing itself rounded. */
  private static final double HALF = 0.51;

  private static final Map<String, Dimension> DIMENSIONS =
      Map.of(
          "m", Dimension.LENGTH,
          "m2", Dimension.AREA,
          "m3", Dimension.VOLUME,
          "kg", Dimension.MASS,
          "rad", Dimension.ANGLE);

  /** Which chapter the calculations of a package belong to. */
  private static final Map<String, Chapter> CHAPTERS =
      Map.ofEntries(
          Map.entry("geometry.frame", Chapter.FRAME),
          Map.entry("geometry.members", Chapter.FRAME),
          Map.entry("geometry.bars", Chapter.FRAME),
          Map.entry("geometry.survey", Chapter.SURVEY),
          Map.entry("geometry.tape", Chapter.SURVEY),
          Map.entry("geometry.templates", Chapter.SURVEY),
          Map.entry("geometry.pattern", Chapter.PATTERN),
          Map.entry("geometry.markout", Chapter.MARKOUT),
          Map.entry("geometry.layout", Chapter.LAYOUT),
          Map.entry("assembly.merge", Chapter.JOINING),
          Map.entry("assembly.ring", Chapter.JOINING),
          Map.entry("assembly.schedule", Chapter.JOINING),
          Map.entry("assembly.fixings", Chapter.FIXINGS),
          Map.entry("assembly.handling", Chapter.HANDLING),
          Map.entry("assembly.anchor", Chapter.ANCHORING),
          Map.entry("materials.soil", Chapter.SOIL),
          Map.entry("materials.mix", Chapter.MIX),
          Map.entry("materials.floor", Chapter.FLOOR),
          Map.entry("materials.water", Chapter.FLOOR),
          Map.entry("materials.drying", Chapter.DRYING));

  private final List<Derivation> derivations;

  SumLinks(List<Derivation> derivations) {
    this.derivations = List.copyOf(derivations);
  }

  /** The id of the heading of a sum by its place. */
  static String anchor(int place) {
    return "sum-" + (place + 1);
  }

  static Optional<Chapter> chapter(String id) {
    return Optional.ofNullable(CHAPTERS.get(room(id)));
  }

  /** Where the doubt of a sum is added up, which is the next sum of its doubt after it. */
  Optional<String> doubtOf(int place) {
    String id = derivations.get(place).id();
    for (int i = place + 1; i < derivations.size(); i++) {
      String later = derivations.get(i).id();
      if (later.equals(id + DOUBT)) {
        return Optional.of(anchor(i));
      } else if (later.equals(id)) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private static String room(String id) {
    return id.substring(0, Math.max(0, id.lastIndexOf('.')));
  }

  /** Where the sum of a number stands that a chapter writes so. */
  Optional<String> anchorOf(Chapter chapter, String text) {
    // On sheets number and unit are held together by a space that does not break.
    Predicate<Step> isWritten = written(text.replace('\u00a0', ' ').strip());
    for (int i = 0; i < derivations.size(); i++) {
      Derivation sum = derivations.get(i);
      // A share of a doubt is of no number that a chapter prints.
      if (chapter(sum.id()).filter(chapter::equals).isPresent()
          && !sum.id().endsWith(DOUBT)
          && sum.steps().stream().filter(step -> step.formula().isPresent()).anyMatch(isWritten)) {
        return Optional.of(anchor(i));
      }
    }
    return Optional.empty();
  }

  /**
   * Where the sum of a number stands that a sheet writes so, if sums of one chapter alone have it.
   */
  Optional<String> anchorOf(String text) {
    List<String> places =
        Arrays.stream(Chapter.values()).flatMap(c -> anchorOf(c, text).stream()).toList();
    return places.size() == 1 ? Optional.of(places.get(0)) : Optional.empty();
  }

  /** Whether a step has the value of a text; the text is read once for all steps. */
  private static Predicate<Step> written(String text) {
    Matcher metric = METRIC.matcher(text);
    if (metric.matches()) {
      return metric(metric);
    }
    if (!IMPERIAL.matcher(text).matches()) {
      return step -> false;
    }
    double length = QuantityText.parse(text, Dimension.LENGTH);
    return step -> step.unit().equals("m") && Math.abs(length - step.value()) <= HALF_SIXTEENTH;
  }

  private static Predicate<Step> metric(Matcher written) {
    String decimals = Optional.ofNullable(written.group(3)).orElse("");
    String digits = (written.group(2) + decimals).replaceFirst("^0+", "");
    if (digits.length() < LEAST_DIGITS) {
      return step -> false;
    }
    double value = Double.parseDouble(written.group(1) + written.group(2) + "." + decimals + "0");
    double last = StrictMath.pow(10, -decimals.length());
    String unit = written.group(4).strip();
    return step -> {
      double scale = scale(unit, step.unit());
      return Math.abs(value * scale - step.value()) <= HALF * last * scale;
    };
  }

  /** How many of a step's unit a written unit is; not a number if it is of another kind. */
  private static double scale(String written, String ofStep) {
    String unit = written.replace('²', '2').replace('³', '3');
    if (unit.isEmpty() && ofStep.isEmpty()) {
      return 1;
    } else if (unit.equals("%") && ofStep.isEmpty()) {
      return 0.01;
    }
    Dimension dimension = DIMENSIONS.get(ofStep);
    if (dimension == null || !QuantityText.symbols(dimension).contains(unit)) {
      return unit.equals(ofStep) && !unit.isEmpty() ? 1 : Double.NaN;
    }
    return QuantityText.toSi(1, dimension, unit);
  }
}
