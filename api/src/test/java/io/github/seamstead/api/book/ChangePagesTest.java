package io.github.seamstead.api.book;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.diary.PlanChanges;
import io.github.seamstead.api.diary.PlanChanges.Change;
import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.PlanChanges.Reason;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.testing.DemoJobs;
import io.github.seamstead.shared.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The chapter on what changed tells each change once, with its reason, also as data. */
class ChangePagesTest {

  private final Page page = new Page("t", "en");
  private final BookContext book =
      new BookContext(
          DemoJobs.plan("clay-bank").parts(), List.of(), new Words(UnitSystem.METRIC), page, 1);

  private String written(PlanChanges changes) {
    ChangePages.write(book, changes);
    return page.html();
  }

  @Test
  void nothingIsSaidToHaveHappenedWhereNothingDid() {
    assertThat(written(new PlanChanges(List.of(), List.of())))
        .contains("Nothing happened since the plan before.")
        .contains("Nothing changes by more than its tolerance.");
    assertThat(book.lists().get("changes.csv").strip().lines()).hasSize(1);
  }

  @Test
  void changesStandUnderTheirKindWithTheirReasons() {
    Change cut = new Change(Kind.PIECE, "3-1", "uncut", "cut", true, List.of("a", "b"));
    Change more = new Change(Kind.ORDER, "sand, <sharp>", "1 t", "2 t", false, List.of("b"));
    String html =
        written(
            new PlanChanges(
                List.of(
                    new Reason("a", List.of(Kind.PIECE)),
                    new Reason("b & more", List.of(Kind.PIECE, Kind.ORDER))),
                List.of(cut, more)));
    assertThat(html)
        .contains("Since the plan before:")
        .contains("b &amp; more")
        .contains("sand, &lt;sharp&gt;")
        .doesNotContain("Nothing changes");
    List<String> rows = book.lists().get("changes.csv").strip().lines().toList();
    assertThat(rows).hasSize(3);
    assertThat(rows.get(1)).contains("piece").contains("3-1").contains("uncut").contains("yes");
    assertThat(rows.get(1)).contains("a; b");
    assertThat(rows.get(2)).contains("order").contains("1 t").contains("2 t").contains("no");
  }
}
