package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.chapter.soil.TrialPart;
import java.util.List;

/** How the mixed layers dry and crack. */
public final class DryingChapter implements ChapterOf<DryingPart> {

  @Override
  public Chapter chapter() {
    return Chapter.DRYING;
  }

  @Override
  public Class<DryingPart> part() {
    return DryingPart.class;
  }

  @Override
  public List<DryingPart> plan(Run run) {
    return DryingPlanner.plan(
        run,
        run.part(FloorPart.class),
        run.part(FramePart.class),
        run.parts(SoilPart.class),
        run.parts(MixPart.class),
        run.parts(TrialPart.class));
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.many(
        "drying",
        "how each mixed layer dries",
        DryingFacts.drying(),
        parts -> parts.all(DryingPart.class));
  }

  @Override
  public void write(BookContext book, List<DryingPart> parts) {
    DryingPages.write(book, parts);
  }
}
