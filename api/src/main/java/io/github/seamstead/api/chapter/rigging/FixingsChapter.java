package io.github.seamstead.api.chapter.rigging;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.cover.CoverPart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.joining.JoiningPart;
import java.util.List;

/** What holds seams and hem. */
public final class FixingsChapter implements ChapterOf<FixingsPart> {

  @Override
  public Chapter chapter() {
    return Chapter.FIXINGS;
  }

  @Override
  public Class<FixingsPart> part() {
    return FixingsPart.class;
  }

  @Override
  public List<FixingsPart> plan(Run run) {
    return run
        .part(JoiningPart.class)
        .flatMap(join -> FixingsPlanner.plan(run, run.part(CoverPart.class).orElseThrow(), join))
        .stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "fixings",
        "what holds the seams",
        RiggingFacts.fixings(),
        parts -> parts.one(FixingsPart.class));
  }

  @Override
  public void write(BookContext book, List<FixingsPart> parts) {
    RiggingPages.fixings(book, parts.get(0));
  }
}
