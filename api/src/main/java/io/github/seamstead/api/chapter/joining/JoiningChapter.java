package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** How the panels are joined. */
public final class JoiningChapter implements ChapterOf<JoiningPart> {

  @Override
  public Chapter chapter() {
    return Chapter.JOINING;
  }

  @Override
  public Class<JoiningPart> part() {
    return JoiningPart.class;
  }

  @Override
  public List<JoiningPart> plan(Run run) {
    return run.part(CoverPart.class).flatMap(cover -> JoiningPlanner.plan(run, cover)).stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "joining",
        "how the panels are joined",
        JoiningFacts.joining(),
        parts -> parts.one(JoiningPart.class));
  }

  @Override
  public void write(BookContext book, List<JoiningPart> parts) {
    JoiningPages.write(book, parts.get(0), book.parts().one(SchedulePart.class));
  }
}
