package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** What the local soils are. */
public final class SoilChapter implements ChapterOf<SoilPart> {

  @Override
  public Chapter chapter() {
    return Chapter.SOIL;
  }

  @Override
  public Class<SoilPart> part() {
    return SoilPart.class;
  }

  @Override
  public void ahead(Run run) {
    SoilPlanner.ahead(run);
  }

  @Override
  public List<SoilPart> plan(Run run) {
    return SoilPlanner.plan(run);
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.many("soils", "the local soils", SoilFacts.soil(), parts -> parts.all(SoilPart.class));
  }

  @Override
  public void write(BookContext book, List<SoilPart> parts) {
    SoilPages.write(book, parts);
  }
}
