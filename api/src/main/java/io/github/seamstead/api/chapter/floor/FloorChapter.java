package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.chapter.soil.MixPart;
import io.github.seamstead.api.chapter.survey.SurveyPart;
import java.util.List;

/** The floor: layers, loads and orders. */
public final class FloorChapter implements ChapterOf<FloorPart> {

  @Override
  public Chapter chapter() {
    return Chapter.FLOOR;
  }

  @Override
  public Class<FloorPart> part() {
    return FloorPart.class;
  }

  @Override
  public List<FloorPart> plan(Run run) {
    return FloorPlanner.plan(
            run, run.part(FramePart.class), run.part(SurveyPart.class), run.parts(MixPart.class))
        .stream()
        .toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "floor", "the earthen floor", FloorFacts.floor(), parts -> parts.one(FloorPart.class));
  }

  @Override
  public void write(BookContext book, List<FloorPart> parts) {
    FloorPages.write(book, parts.get(0));
  }
}
