package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** Lifting, turning and raising the cover. */
public final class HandlingChapter implements ChapterOf<HandlingPart> {

  @Override
  public Chapter chapter() {
    return Chapter.HANDLING;
  }

  @Override
  public Class<HandlingPart> part() {
    return HandlingPart.class;
  }

  @Override
  public List<HandlingPart> plan(Run run) {
    return run
        .part(FramePart.class)
        .flatMap(
            frame -> run.part(CoverPart.class).flatMap(c -> HandlingPlanner.plan(run, frame, c)))
        .stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "handling",
        "turning and raising",
        RiggingFacts.handling(),
        parts -> parts.one(HandlingPart.class));
  }

  @Override
  public void write(BookContext book, List<HandlingPart> parts) {
    RiggingPages.handling(book, parts.get(0));
  }
}
