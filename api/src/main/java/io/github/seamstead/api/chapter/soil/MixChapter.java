package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** The mixes that the floor calls. */
public final class MixChapter implements ChapterOf<MixPart> {

  @Override
  public Chapter chapter() {
    return Chapter.MIX;
  }

  @Override
  public Class<MixPart> part() {
    return MixPart.class;
  }

  @Override
  public List<MixPart> plan(Run run) {
    return MixPlanner.plan(run, run.parts(SoilPart.class));
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.many("mixes", "the mixes", SoilFacts.mix(), parts -> parts.all(MixPart.class));
  }

  @Override
  public void write(BookContext book, List<MixPart> parts) {
    SoilPages.mixes(book, parts);
  }
}
