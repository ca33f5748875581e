package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** The ideal frame and its members. */
public final class FrameChapter implements ChapterOf<FramePart> {

  @Override
  public Chapter chapter() {
    return Chapter.FRAME;
  }

  @Override
  public Class<FramePart> part() {
    return FramePart.class;
  }

  @Override
  public List<FramePart> plan(Run run) {
    return FramePlanner.plan(run).stream().toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "frame", "the ideal frame", FrameFacts.frame(), parts -> parts.one(FramePart.class));
  }

  @Override
  public void write(BookContext book, List<FramePart> parts) {
    FramePages.write(book, parts.get(0));
  }
}
