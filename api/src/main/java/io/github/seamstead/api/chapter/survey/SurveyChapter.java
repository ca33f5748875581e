package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** The frame as it was taped. */
public final class SurveyChapter implements ChapterOf<SurveyPart> {

  @Override
  public Chapter chapter() {
    return Chapter.SURVEY;
  }

  @Override
  public Class<SurveyPart> part() {
    return SurveyPart.class;
  }

  @Override
  public List<SurveyPart> plan(Run run) {
    return SurveyPlanner.plan(run, run.part(FramePart.class)).stream().toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.maybe(
        "survey",
        "the frame as it was taped",
        SurveyFacts.survey(),
        parts -> parts.one(SurveyPart.class));
  }

  @Override
  public void write(BookContext book, List<SurveyPart> parts) {
    SurveyPages.write(book, parts.get(0));
  }
}
