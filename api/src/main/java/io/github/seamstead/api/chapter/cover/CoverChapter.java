package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** The panels and the other pieces of the cover. */
public final class CoverChapter implements ChapterOf<CoverPart> {

  @Override
  public Chapter chapter() {
    return Chapter.PATTERN;
  }

  @Override
  public Class<CoverPart> part() {
    return CoverPart.class;
  }

  @Override
  public List<CoverPart> plan(Run run) {
    return CoverPlanner.plan(run).stream().toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "cover",
        "the pieces of the cover",
        CoverFacts.cover(),
        parts -> parts.one(CoverPart.class));
  }

  @Override
  public void write(BookContext book, List<CoverPart> parts) {
    CoverPages.write(book, parts.get(0));
  }
}
