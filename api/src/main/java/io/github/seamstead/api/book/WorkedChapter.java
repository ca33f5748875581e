package io.github.seamstead.api.book;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.page.LessonTitle;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.shared.derivation.Derivation;
import io.github.seamstead.shared.derivation.Step;
import io.github.seamstead.shared.derivation.Typeset;
import java.util.List;
import java.util.Optional;

/** The worked steps of each calculation, typeset with MathML and no script. */
final class WorkedChapter {

  private WorkedChapter() {}

  static void write(BookContext book, List<Derivation> derivations) {
    book.paragraph(
        "Each sum as the program did it: the formula, the numbers in, the result with its unit, the"
            + " source. Shown to "
            + Typeset.SHOWN_DIGITS
            + " figures; computed with all of them.");
    SumLinks sums = new SumLinks(derivations);
    for (int i = 0; i < derivations.size(); i++) {
      Derivation derivation = derivations.get(i);
      book.body().element("h3", derivation.title(), "id", SumLinks.anchor(i)).raw("\n");
      place(book.body(), derivation.id(), sums.doubtOf(i));
      write(book.body(), derivation);
    }
    book.end("The sums, worked");
  }

  /** Where the sum is used, its name in the library, its lesson, and where its doubt stands. */
  private static void place(Markup body, String id, Optional<String> doubt) {
    body.open("p", "class", "src");
    SumLinks.chapter(id)
        .ifPresent(
            chapter ->
                body.text("Chapter: ")
                    .element("a", chapter.title(), "href", "#" + Markup.anchor(chapter.title()))
                    .text(". "));
    body.text("Calculation " + id + ".");
    LessonTitle.of(id)
        .map(LessonTitle::title)
        .ifPresent(title -> body.text(" Lesson: " + title + (title.endsWith("?") ? "" : ".")));
    doubt.ifPresent(anchor -> body.text(" ").element("a", "How sure is it?", "href", "#" + anchor));
    body.closeLine();
  }

  /**
   * Writes the steps of one derivation.
   *
   * @param body where to
   * @param derivation the derivation
   */
  public static void write(Markup body, Derivation derivation) {
    String section = "";
    for (Step step : derivation.steps()) {
      if (!step.section().equals(section)) {
        section = step.section();
        body.element("h4", section);
      }
      body.open("div", "class", "step").element("p", step.name() + ":");
      body.open("div", "class", "chain");
      Typeset.mathMlLinks(step).forEach(body::raw);
      body.close();
      StringBuilder below = new StringBuilder();
      step.source().ifPresent(source -> below.append(source.citation()));
      if (!step.note().isEmpty()) {
        below.append(below.isEmpty() ? "" : ". ").append(step.note());
      }
      if (!below.isEmpty()) {
        body.element("p", below.toString(), "class", "src");
      }
      body.closeLine();
    }
  }
}
