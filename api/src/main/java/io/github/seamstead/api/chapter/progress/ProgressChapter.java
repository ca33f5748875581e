package io.github.seamstead.api.chapter.progress;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** How far the job is, if there is a diary. */
public final class ProgressChapter implements ChapterOf<ProgressPart> {

  @Override
  public Chapter chapter() {
    return Chapter.SITE;
  }

  @Override
  public Class<ProgressPart> part() {
    return ProgressPart.class;
  }

  @Override
  public List<ProgressPart> plan(Run run) {
    return ProgressPlanner.plan(run).stream().toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "progress",
        "how far the job is, if there is a diary",
        ProgressFacts.progress(),
        parts -> parts.one(ProgressPart.class));
  }

  @Override
  public void write(BookContext book, List<ProgressPart> parts) {
    ProgressPages.write(book, parts.get(0), book.parts().one(FloorPart.class));
  }
}
