package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.floor.FloorStep;
import io.github.seamstead.shared.quantity.Numbers;

/** The work on the floor, step by step from the ground up. */
final class FloorStepsSection {

  private FloorStepsSection() {}

  static void write(BookContext book, FloorPart floor) {
    book.heading("The work, step by step");
    int number = 1;
    for (FloorStep step : floor.steps()) {
      step(book, number++, step);
    }
  }

  private static void step(BookContext book, int number, FloorStep step) {
    book.body().element("h3", number + ". " + step.title());
    book.body().open("ul");
    step.work().forEach(sentence -> book.body().element("li", sentence));
    book.body().closeLine();
    if (!step.quantities().isEmpty()) {
      Table table = new Table("By the plan: " + step.title(), "what", "#how much");
      step.quantities().forEach(q -> table.row(q.name(), text(book.words(), q)));
      book.table(table);
    }
    book.paragraph("Tools: " + step.tools() + ". Hands: " + step.hands() + ".");
    book.paragraph("Done when: " + step.check() + ".");
    book.paragraph("If left out: " + step.ifLeftOut() + ".");
  }

  private static String text(Words w, FloorStep.Quantity quantity) {
    return w.range(quantity.value(), x -> text(w, quantity.kind(), x));
  }

  private static String text(Words w, FloorStep.Kind kind, double value) {
    return switch (kind) {
      case THICKNESS -> w.small(value);
      case LENGTH -> w.length(value);
      case AREA -> w.area(value);
      case VOLUME -> w.volume(value);
      case LIQUID -> w.litres(value);
      case MASS -> w.mass(value);
      case HOURS -> Numbers.significant(value, 2) + "\u00a0h";
      case COUNT -> Numbers.plain(value);
    };
  }
}
