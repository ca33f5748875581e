package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.api.chapter.internal.Run;
import java.util.List;

/** What the trial samples say; they stand on the page of their mix. */
public final class TrialChapter implements ChapterOf<TrialPart> {

  @Override
  public Chapter chapter() {
    return Chapter.MIX;
  }

  @Override
  public Class<TrialPart> part() {
    return TrialPart.class;
  }

  @Override
  public List<TrialPart> plan(Run run) {
    return run.parts(MixPart.class).stream().flatMap(mix -> mix.trial().stream()).toList();
  }

  @Override
  public void facts(Facts<Parts> results) {
    results.many(
        "trials",
        "what trial samples say",
        TrialFacts.trial(),
        parts -> parts.all(TrialPart.class));
  }

  @Override
  public void write(BookContext book, List<TrialPart> parts) {
    // Its reading stands on the page of the mix.
  }
}
