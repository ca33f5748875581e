package io.github.seamstead.api.plan;

import io.github.seamstead.api.chapter.cover.CoverChapter;
import io.github.seamstead.api.chapter.drying.DryingChapter;
import io.github.seamstead.api.chapter.floor.FloorChapter;
import io.github.seamstead.api.chapter.frame.FrameChapter;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.joining.JoiningChapter;
import io.github.seamstead.api.chapter.joining.ScheduleChapter;
import io.github.seamstead.api.chapter.layout.LayoutChapter;
import io.github.seamstead.api.chapter.markout.MarkoutChapter;
import io.github.seamstead.api.chapter.progress.ProgressChapter;
import io.github.seamstead.api.chapter.rigging.AnchoringChapter;
import io.github.seamstead.api.chapter.rigging.FixingsChapter;
import io.github.seamstead.api.chapter.rigging.HandlingChapter;
import io.github.seamstead.api.chapter.soil.MixChapter;
import io.github.seamstead.api.chapter.soil.SoilChapter;
import io.github.seamstead.api.chapter.soil.TrialChapter;
import io.github.seamstead.api.chapter.survey.SurveyChapter;
import java.util.List;

/**
 * The chapters in the order of the work: the one list that the run, the results and the book walk.
 */
public final class Chapters {

  private Chapters() {}

  /**
   * Gives the chapters.
   *
   * @return all chapters in the order of the work
   */
  public static List<ChapterOf<?>> all() {
    return List.of(
        new ProgressChapter(),
        new FrameChapter(),
        new SurveyChapter(),
        new CoverChapter(),
        new MarkoutChapter(),
        new LayoutChapter(),
        new JoiningChapter(),
        new ScheduleChapter(),
        new FixingsChapter(),
        new HandlingChapter(),
        new AnchoringChapter(),
        new SoilChapter(),
        new MixChapter(),
        new TrialChapter(),
        new FloorChapter(),
        new DryingChapter());
  }
}
