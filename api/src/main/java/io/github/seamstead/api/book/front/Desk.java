package io.github.seamstead.api.book.front;

import io.github.seamstead.api.job.Crew;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.page.Anchors;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.geometry.frame.ScaleModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What the sheets share while they are written: the plan, its sizes, the drawings. */
final class Desk {

  /** One holds, one measures. */
  private static final int LEAST_PEOPLE = 2;

  private final JobPlan plan;
  private final Sizes sizes;
  private final List<Sheet> sheets = new ArrayList<>();
  private final Anchors anchors = new Anchors();
  private final Anchors names = new Anchors();
  private final Map<String, Drawing> drawings = new LinkedHashMap<>();
  private Function<String, Optional<String>> sums = text -> Optional.empty();

  Desk(JobPlan plan, io.github.seamstead.api.chapter.internal.Words words) {
    this.plan = plan;
    this.sizes = new Sizes(words, isModel(plan));
  }

  /** From here on numbers of the sheets lead to the sums from which they come. */
  Desk linkNumbers(Function<String, Optional<String>> toSums) {
    sums = toSums;
    return this;
  }

  /** The id of the sum that a number comes from. */
  Function<String, Optional<String>> sums() {
    return sums;
  }

  static boolean isModel(JobPlan plan) {
    return plan.frame().filter(f -> ScaleModel.isOne(f.measures())).isPresent();
  }

  JobPlan plan() {
    return plan;
  }

  JobDocument document() {
    return plan.job().document();
  }

  Sizes sizes() {
    return sizes;
  }

  Optional<Crew> crew() {
    return document().site().flatMap(Site::crew);
  }

  /** How many people work; two if the document states no crew. */
  int people() {
    return crew().map(Crew::people).orElse(LEAST_PEOPLE);
  }

  /** The face with the door; the first if there is none. */
  int doorFace() {
    return document().doorFace();
  }

  Optional<RegularPyramid> pyramid() {
    return plan.frame().map(f -> f.pyramid());
  }

  void add(String title, String part, Sheet.Kind kind, Markup body) {
    sheets.add(new Sheet(title, anchors.unique("sheet " + title), part, kind, body));
  }

  List<Sheet> sheets() {
    return sheets;
  }

  Map<String, Drawing> drawings() {
    return drawings;
  }

  /** Shows a drawing at its printed size; one wider than a phone scrolls inside its own box. */
  void figure(Markup to, Drawing figure, boolean wide) {
    Drawing drawing = figure.named(names.unique(figure.name()));
    drawings.put(drawing.name(), drawing);
    if (wide) {
      to.open(
          "div",
          "class",
          "scroll",
          "tabindex",
          "0",
          "role",
          "region",
          "aria-label",
          drawing.title());
    }
    to.open("figure", "class", wide ? "pic broad" : "pic").raw(drawing.printed());
    to.closeLine();
    if (wide) {
      to.closeLine();
    }
  }
}
