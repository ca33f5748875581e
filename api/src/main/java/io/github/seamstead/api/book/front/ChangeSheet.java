package io.github.seamstead.api.book.front;

import io.github.seamstead.api.chapter.progress.ProgressPart;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.page.Markup;
import java.util.List;
import java.util.Optional;

/** The first sheet of a book with a diary: what changed since the last plan, and the next day. */
final class ChangeSheet {

  /** Changes that fit a sheet beside the next day; the rest stands in the chapter. */
  private static final int SHOWN = 14;

  private ChangeSheet() {}

  static void write(Desk desk) {
    Optional<PlanChanges> changes = desk.plan().changes();
    Optional<ProgressPart> progress = desk.plan().parts().one(ProgressPart.class);
    if (changes.isEmpty() || progress.isEmpty()) {
      return;
    }
    Markup m = new Markup();
    m.element(
        "p",
        "As the diary stands on the evening of "
            + progress.get().last()
            + ". What is cut, joined and laid stays as it is.",
        "class",
        "lead");
    m.element("h3", "Next day, " + progress.get().last().plusDays(1));
    m.open("ul");
    for (int i = 0; i < progress.get().nextDay().size(); i++) {
      m.open("li");
      Ticks.box(m, "next-" + (i + 1), progress.get().nextDay().get(i));
      m.closeLine();
    }
    m.closeLine();
    changed(m, changes.get());
    desk.add("Next day, and what changed", "Next day", Sheet.Kind.CARD, m);
  }

  private static void changed(Markup m, PlanChanges changes) {
    m.element("h3", "What changed since the last plan");
    List<PlanChanges.Change> all = changes.changes();
    if (all.isEmpty()) {
      m.element("p", "Nothing changes by more than its tolerance.");
      return;
    }
    m.open("ul");
    all.stream().limit(SHOWN).forEach(c -> m.element("li", c.text()));
    m.closeLine();
    if (all.size() > SHOWN) {
      m.element("p", (all.size() - SHOWN) + " more stand in the chapter on changes.");
    }
    m.element("h3", "Why");
    m.open("ul");
    changes.reasons().stream().limit(SHOWN).forEach(r -> m.element("li", r.text()));
    m.closeLine();
    if (changes.reasons().size() > SHOWN) {
      m.element("p", (changes.reasons().size() - SHOWN) + " more stand in the chapter on changes.");
    }
  }
}
