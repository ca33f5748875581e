package io.github.seamstead.api.compare;

import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.page.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The page of a comparison: what none beats, all rows, pictures, and what saves. */
final class ComparePage {

  /** Rows beyond these stand in the list alone: no one reads a longer table on a page. */
  private static final int SHOWN_ROWS = 300;

  private static final int SHOWN_PICTURES = 24;

  private static final String STYLE =
      """
      main{max-width:min(96vw,80rem)}
      td:nth-child(1){white-space:nowrap}
      td:nth-child(2){min-width:10rem}
      .minis{display:grid;grid-template-columns:repeat(auto-fill,minmax(13rem,1fr));gap:.6rem}
      .minis figure{margin:0;border:1px solid #8a8a82;padding:.3rem}
      .minis figure.best{border:3px solid #161616}
      .minis svg{width:100%;height:auto}
      @media print{@page{size:landscape} table{font-size:.62em}}
      """;

  private final Comparison comparison;
  private final MeasureText text;
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();

  private ComparePage(Comparison comparison) {
    this.comparison = comparison;
    this.text = new MeasureText(comparison.imperial());
  }

  /**
   * A page with its drawings.
   *
   * @param html the page
   * @param drawings the small pictures by name
   */
  public record Written(String html, Map<String, Drawing> drawings) {

    public Written {
      drawings = Map.copyOf(drawings);
    }
  }

  /**
   * Writes the page.
   *
   * @param comparison the comparison
   * @return the page and its drawings
   */
  public static Written of(Comparison comparison) {
    ComparePage page = new ComparePage(comparison);
    Page html = new Page(comparison.job() + ": variants", "en").style(STYLE).lead(page.lead());
    html.chapter("Variants that none beats", page.best());
    html.chapter("All variants", page.all());
    html.chapter("Frames at one scale", page.pictures());
    html.chapter("Buy less, save hours", page.levers());
    return new Written(html.html(), page.drawings);
  }

  private Markup lead() {
    Markup m = new Markup();
    comparison.note().ifPresent(note -> m.element("p", note));
    long met = comparison.rows().stream().filter(VariantRow::isFeasible).count();
    m.element(
        "p",
        comparison.rows().size()
            + " plans, the job as written and "
            + (comparison.rows().size() - 1)
            + " variants; "
            + met
            + " can be met. Each number is that of a whole plan of its own, to be read with the"
            + " cautions of that plan's book. Wind and strength are screening only: they are for"
            + " local codes and licensed practice.");
    if (comparison.options().quick()) {
      m.element("p", CompareOptions.LEFT_OUT, "class", "note");
    }
    return m;
  }

  private Markup best() {
    Markup m = new Markup();
    if (comparison.front().numbers().isEmpty()) {
      return m.element("p", "No variant can be met with all that counts known.");
    }
    m.element(
        "p",
        "What counts: "
            + comparison.front().text()
            + ". None of these variants is beaten: whatever is better by one of these is worse by"
            + " another. Which of them is right is for you to choose.");
    Table table = table("Variants that none beats");
    comparison.rows().stream()
        .filter(comparison::isBest)
        .limit(SHOWN_ROWS)
        .forEach(row -> table.row(cells(row)));
    table.write(m);
    return m;
  }

  private Markup all() {
    Markup m = new Markup();
    if (comparison.rows().size() > SHOWN_ROWS) {
      m.element(
          "p",
          "The first " + SHOWN_ROWS + " rows; all stand in variants.csv and variants.json.",
          "class",
          "note");
    }
    Table table = table("All variants; a star marks those that none beats");
    comparison.rows().stream().limit(SHOWN_ROWS).forEach(row -> table.row(cells(row)));
    table.write(m);
    whyNot(m);
    List<String> unpriced = comparison.rows().get(0).unpriced();
    if (!unpriced.isEmpty()) {
      m.element(
          "p",
          "The money holds what has a price in the job. Without a price, and so not in it: "
              + String.join(", ", unpriced)
              + ".");
    }
    return m;
  }

  private void whyNot(Markup m) {
    List<VariantRow> not =
        comparison.rows().stream().filter(row -> !row.isFeasible()).limit(SHOWN_ROWS).toList();
    if (not.isEmpty()) {
      return;
    }
    m.element("h3", "What cannot be met").open("ul");
    for (VariantRow row : not) {
      m.element(
          "li",
          row.number()
              + ": "
              + row.name()
              + ". "
              + row.whyNot().get(0)
              + more(row.whyNot().size()));
    }
    m.closeLine();
  }

  private static String more(int reasons) {
    return reasons == 1 ? "" : " (and " + (reasons - 1) + " more)";
  }

  private Table table(String caption) {
    List<String> head = new ArrayList<>(List.of("", "variant"));
    comparison.columns().forEach(measure -> head.add("#" + measure.label()));
    head.add("#weeks, from to");
    return new Table(caption, head.toArray(String[]::new));
  }

  private String[] cells(VariantRow row) {
    List<String> cells = new ArrayList<>();
    cells.add((comparison.isBest(row) ? "★ " : "") + row.number());
    cells.add(row.name() + (row.isFeasible() ? "" : " (cannot be met)"));
    comparison
        .columns()
        .forEach(
            measure -> cells.add(row.value(measure).map(v -> text.of(measure, v)).orElse("–")));
    cells.add(
        row.weeks()
            .map(
                w ->
                    text.of(Measure.WEEKS, w.low())
                        + "–"
                        + text.of(Measure.WEEKS, w.high())
                        + (row.openEnded() ? " or more" : ""))
            .orElse("–"));
    return cells.toArray(String[]::new);
  }

  private Markup pictures() {
    Markup m = new Markup();
    List<VariantRow> shown =
        comparison.rows().stream()
            .filter(row -> row.frame().isPresent())
            .filter(
                row ->
                    comparison.rows().size() <= SHOWN_PICTURES
                        || row.number() == 0
                        || comparison.isBest(row))
            .limit(SHOWN_PICTURES)
            .toList();
    FrameMiniature scale = FrameMiniature.scale(shown);
    m.element(
        "p",
        "From the side, all at one scale; the person is 1.7 m tall. A heavy border marks a variant"
            + " that none beats.");
    m.open("div", "class", "minis");
    for (VariantRow row : shown) {
      Drawing drawing =
          scale.draw(
              row.frame().orElseThrow(),
              "variant-" + row.number(),
              row.name(),
              "The frame from the side: "
                  + row.frame().orElseThrow().sides()
                  + " sides, "
                  + row.value(Measure.HEADROOM).map(h -> text.of(Measure.HEADROOM, h)).orElse("")
                  + " high.");
      drawings.put(drawing.name(), drawing);
      m.open("figure", "class", comparison.isBest(row) ? "best" : "other").raw(drawing.inline());
      m.element("figcaption", row.number() + ": " + row.name()).closeLine();
    }
    return m.closeLine();
  }

  private Markup levers() {
    Markup m = new Markup();
    m.element(
        "p",
        "Each line is a plan of its own with that one change, beside the job as written, what saves"
            + " most money first, then most hours. What moves elsewhere stands beside it, and what"
            + " no number shows.");
    Table table =
        new Table(
            "What saves, and what it costs elsewhere",
            "change",
            "on",
            "#saves money",
            "#saves person-hours",
            "elsewhere",
            "mind");
    for (LeverRow row : comparison.levers()) {
      table.row(
          row.lever().name(),
          row.lever().on().word(),
          saved(row, Measure.MONEY),
          saved(row, Measure.HOURS),
          row.after().isFeasible() ? elsewhere(row) : shortBy(row) + row.after().whyNot().get(0),
          row.lever().price());
    }
    if (table.isEmpty()) {
      return m.element("p", "This job states nothing that could be made smaller.");
    }
    table.write(m);
    return m;
  }

  /** A lever that is not enough alone may still shorten what lacks. */
  private String shortBy(LeverRow row) {
    return row.saved(Measure.CLOTH_SHORT)
        .map(
            less ->
                "not enough alone, cloth short " + text.change(Measure.CLOTH_SHORT, -less) + ": ")
        .orElse("cannot be met: ");
  }

  private String saved(LeverRow row, Measure measure) {
    return row.saved(measure)
        .filter(s -> row.after().isFeasible())
        .map(s -> text.of(measure, s).replace('-', '\u2212'))
        .orElse("–");
  }

  private String elsewhere(LeverRow row) {
    List<String> parts = new ArrayList<>();
    for (Measure measure : row.elsewhere()) {
      parts.add(measure.label() + " " + text.change(measure, -row.saved(measure).orElse(0.0)));
    }
    return parts.isEmpty() ? "nothing moves" : String.join(", ", parts);
  }
}
