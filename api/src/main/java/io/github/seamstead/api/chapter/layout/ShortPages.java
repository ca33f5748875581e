package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.cover.CutShape;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import java.util.List;

/** What found no place, what would take it, and where cloth could be saved instead. */
final class ShortPages {

  private final BookContext book;
  private final LayoutPart part;
  private final List<CutShape> cuts;
  private final ShortCloth cloth;

  ShortPages(BookContext book, LayoutPart part, List<CutShape> cuts) {
    this.book = book;
    this.part = part;
    this.cuts = cuts;
    this.cloth = new ShortCloth(part, book.words());
  }

  void write() {
    part.result().unplaced().forEach(lack -> book.note(ShortCloth.lack(lack, cuts)));
    if (!part.result().furtherStock().isEmpty()) {
      book.note(cloth.needed());
    }
    part.savings().ifPresent(this::savings);
  }

  private void savings(Savings savings) {
    Words w = book.words();
    if (!savings.tried().isEmpty()) {
      book.paragraph(
          "Where to save cloth instead: each line is a plan of its own with that change, its panels"
              + " drawn and laid out on the same stock. As planned "
              + part.withoutPlace()
              + " pieces, "
              + w.area(part.areaWithoutPlace())
              + ", have no place."
              + (savings.enough().isEmpty() ? " None of these changes is enough by itself." : ""));
      Table table =
          new Table(
              "Where to save cloth",
              "change",
              "#saves cloth",
              "#still lacks",
              "then fetch",
              "mind");
      savings
          .tried()
          .forEach(
              s ->
                  table.row(
                      s.lever().name(),
                      s.clothSaved() < 0
                          ? "\u2212" + w.area(-s.clothSaved())
                          : w.area(s.clothSaved()),
                      cloth.left(s),
                      cloth.fetch(s),
                      mind(s)));
      book.table(table);
    }
    savings
        .notTried()
        .forEach(n -> book.note("Not planned: " + n.lever().name() + ". " + n.why() + "."));
  }

  private static String mind(ClothSaving saving) {
    return saving.unmet().isEmpty()
        ? saving.lever().price()
        : saving.lever().price() + "; and not met: " + String.join("; ", saving.unmet());
  }
}
