package io.github.seamstead.api.doubt;

import io.github.seamstead.api.compare.MeasureText;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.shared.quantity.Numbers;
import io.github.seamstead.shared.uncertainty.Uncertain;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The page of what matters most: advice first, then each number with its doubts. */
final class MattersPage {

  private final Matters matters;
  private final MeasureText text;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();

  private MattersPage(Matters matters) {
    this.matters = matters;
    this.text = new MeasureText(matters.imperial());
  }

  record Written(String html, Map<String, Drawing> drawings) {}

  static Written of(Matters matters) {
    MattersPage page = new MattersPage(matters);
    Page html = new Page(matters.job() + ": what matters most", "en").lead(page.lead());
    html.chapter("Do this first", page.advice());
    for (NumberInDoubt number : matters.numbers()) {
      html.chapter("What moves " + number.measure().label(), page.number(number));
    }
    html.chapter("The doubts, and how this was reckoned", page.method());
    return new Written(html.html(), page.drawings);
  }

  private Markup lead() {
    return new Markup()
        .element(
            "p",
            "Every number of a plan rests on others that are known only so well. This page shows"
                + " which of these doubts moves the numbers that you decide by, and what is won by"
                + " knowing one better. "
                + matters.runs()
                + " plans were made for it.")
        .element(
            "p",
            "The pull of the wind is screening only: pegs, frame and anchorage are for local codes"
                + " and licensed practice.",
            "class",
            "note");
  }

  private Markup advice() {
    Markup m = new Markup();
    List<String> sentences = Advice.of(matters);
    if (sentences.isEmpty()) {
      return m.element("p", "No single doubt makes a tenth of any number's variance.");
    }
    m.open("ol");
    sentences.forEach(sentence -> m.element("li", sentence));
    return m.closeLine();
  }

  private Markup number(NumberInDoubt number) {
    Markup m = new Markup();
    m.element(
        "p",
        "Planned "
            + text.of(number.measure(), number.planned())
            + "; with all doubts nine times in ten "
            + Advice.range(number, number.range().low(), number.range().high(), text)
            + ", in the middle "
            + text.of(number.measure(), number.range().likely())
            + ".");
    if (number.points() < matters.options().points()) {
      m.element(
          "p",
          "From "
              + number.points()
              + " of "
              + matters.options().points()
              + " points: at the others some plan cannot be met, or the floor never dries in air"
              + " that damp. What is said here holds for those that can be met.",
          "class",
          "note");
    }
    Drawing drawing = MattersChart.of(number, text);
    drawings.put(drawing.name(), drawing);
    m.open("figure").raw(drawing.inline());
    m.element(
            "figcaption",
            "Grey: what goes if this alone is known. With the hatching: what stays if all but this"
                + " is known. The line is one standard error either way.")
        .closeLine();
    Table table =
        new Table(
            "From end to end, one at a time, and the parts of the variance",
            "doubt",
            "#from",
            "#to",
            "#alone",
            "#with others");
    for (Influence influence : MattersChart.shown(number)) {
      table.row(
          influence.doubt(),
          text.of(number.measure(), influence.low()),
          text.of(number.measure(), influence.high()) + (influence.open() ? " or none" : ""),
          part(influence.index().first()),
          part(influence.index().total()));
    }
    table.write(m);
    if (MattersChart.shown(number).stream().anyMatch(Influence::open)) {
      m.element(
          "p",
          "Or none: towards one end the plan cannot be met, or the floor never dries.",
          "class",
          "note");
    }
    return m;
  }

  private static String part(Uncertain part) {
    return Numbers.fixed(part.value() * 100, 0)
        + " ± "
        + Numbers.fixed(part.standardUncertainty() * 100, 0)
        + " %";
  }

  private Markup method() {
    Markup m = new Markup();
    m.element(
        "p",
        "Two samples of "
            + matters.options().points()
            + " points each over all doubts, from seed "
            + matters.options().seed()
            + ", and for each doubt the first sample with that doubt from the second. The part that"
            + " a doubt makes alone is its first-order index, with others its total index. One at"
            + " a time: the doubt alone from its 5 % to its 95 % end, all else as planned. The"
            + " sand in each mix stays as the plan chose it.");
    m.element("p", MattersOptions.LEFT_OUT, "class", "note");
    Table table = new Table("The doubts", "doubt", "how far it may be off", "ground");
    matters.numbers().stream()
        .findFirst()
        .ifPresent(
            number ->
                number.influences().stream()
                    .sorted(Comparator.comparing(Influence::doubt))
                    .forEach(i -> table.row(i.doubt(), i.spread(), i.ground())));
    table.write(m);
    if (!matters.still().isEmpty()) {
      m.element("h3", "Not moved, or not looked at").open("ul");
      matters.still().forEach(line -> m.element("li", line));
      m.closeLine();
    }
    return m;
  }
}
