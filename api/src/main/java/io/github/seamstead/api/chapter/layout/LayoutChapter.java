package io.github.seamstead.api.chapter.layout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Where each piece is cut. */
public final class LayoutChapter implements ChapterOf<LayoutPart> {

  @Override
  public Chapter chapter() {
    return Chapter.LAYOUT;
  }

  @Override
  public Class<LayoutPart> part() {
    return LayoutPart.class;
  }

  @Override
  public List<LayoutPart> plan(Run run) {
    return start(run).get();
  }

  @Override
  public Supplier<List<LayoutPart>> start(Run run) {
    Supplier<Optional<LayoutPart>> layout = LayoutPlanner.start(run, run.part(CoverPart.class));
    return () -> layout.get().stream().toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "layout",
        "where each piece is cut",
        LayoutFacts.layout(),
        parts -> parts.one(LayoutPart.class));
  }

  @Override
  public void write(BookContext book, List<LayoutPart> parts) {
    LayoutPages.write(
        book,
        parts.get(0),
        book.parts().one(CoverPart.class).map(CoverPart::cuts).orElse(List.of()));
  }
}
