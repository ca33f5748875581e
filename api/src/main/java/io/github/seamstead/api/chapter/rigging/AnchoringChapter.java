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

/** Wind screening of edge and pegs. */
public final class AnchoringChapter implements ChapterOf<AnchoringPart> {

  @Override
  public Chapter chapter() {
    return Chapter.ANCHORING;
  }

  @Override
  public Class<AnchoringPart> part() {
    return AnchoringPart.class;
  }

  @Override
  public List<AnchoringPart> plan(Run run) {
    return run
        .part(FramePart.class)
        .flatMap(
            frame ->
                run.part(CoverPart.class)
                    .flatMap(
                        cover ->
                            AnchoringPlanner.plan(run, frame, cover, run.part(FixingsPart.class))))
        .stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "anchoring",
        "wind screening",
        RiggingFacts.anchoring(),
        parts -> parts.one(AnchoringPart.class));
  }

  @Override
  public void write(BookContext book, List<AnchoringPart> parts) {
    RiggingPages.anchoring(book, parts.get(0));
  }
}
