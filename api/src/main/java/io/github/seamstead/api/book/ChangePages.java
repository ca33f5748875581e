package io.github.seamstead.api.book;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.page.Table;
import java.util.ArrayList;
import java.util.List;

/** What changed since the plan before, and why: the first chapter of a book with a diary. */
final class ChangePages {

  private ChangePages() {}

  static void write(BookContext book, PlanChanges changes) {
    if (changes.reasons().isEmpty()) {
      book.paragraph("Nothing happened since the plan before.");
    } else {
      book.paragraph("Since the plan before:");
      book.body().open("ul");
      changes.reasons().forEach(reason -> book.body().element("li", reason.text()));
      book.body().closeLine();
    }
    if (changes.changes().isEmpty()) {
      book.paragraph("Nothing changes by more than its tolerance.");
    }
    List<List<String>> csv = new ArrayList<>();
    csv.add(List.of("kind", "name", "before", "now", "done", "because"));
    for (PlanChanges.Kind kind : PlanChanges.Kind.values()) {
      Table table = new Table("Changes: " + kind.word(), kind.word(), "before", "now", "done");
      for (PlanChanges.Change change : changes.of(kind)) {
        table.row(change.name(), change.before(), change.after(), change.done() ? "yes" : "–");
        csv.add(
            List.of(
                kind.word(),
                change.name(),
                change.before(),
                change.after(),
                change.done() ? "yes" : "no",
                String.join("; ", change.because())));
      }
      book.table(table);
    }
    book.list("changes.csv", csv);
    book.end("What changed since the last plan");
  }
}
