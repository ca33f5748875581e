package io.github.seamstead.api.chapter.joining;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** How long the joining takes; its page is part of the joining. */
public final class ScheduleChapter implements ChapterOf<SchedulePart> {

  @Override
  public Chapter chapter() {
    return Chapter.JOINING;
  }

  @Override
  public Class<SchedulePart> part() {
    return SchedulePart.class;
  }

  @Override
  public List<SchedulePart> plan(Run run) {
    return run.part(JoiningPart.class).flatMap(join -> SchedulePlanner.plan(run, join)).stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "schedule",
        "how long the joining takes",
        JoiningFacts.schedule(),
        parts -> parts.one(SchedulePart.class));
  }

  @Override
  public void write(BookContext book, List<SchedulePart> parts) {
    // Its numbers stand on the page of the joining.
  }
}
