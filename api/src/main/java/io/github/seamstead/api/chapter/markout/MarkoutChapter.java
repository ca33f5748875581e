package io.github.seamstead.api.chapter.markout;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** How each panel is drawn with a tape. */
public final class MarkoutChapter implements ChapterOf<MarkoutPart> {

  @Override
  public Chapter chapter() {
    return Chapter.MARKOUT;
  }

  @Override
  public Class<MarkoutPart> part() {
    return MarkoutPart.class;
  }

  @Override
  public List<MarkoutPart> plan(Run run) {
    return run.part(CoverPart.class)
        .map(cover -> MarkoutPlanner.plan(run, cover))
        .orElse(List.of());
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.many(
        "markout",
        "marking-out tables",
        MarkoutFacts.markout(),
        parts -> parts.all(MarkoutPart.class));
  }

  @Override
  public void write(BookContext book, List<MarkoutPart> parts) {
    MarkoutPages.write(book, parts);
  }
}
