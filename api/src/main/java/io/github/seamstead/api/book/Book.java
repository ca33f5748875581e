package io.github.seamstead.api.book;

import io.github.seamstead.api.book.front.Front;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.ChapterOf;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.page.Drawing;
import io.github.seamstead.api.page.Page;
import io.github.seamstead.api.plan.Chapters;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.ResultsJson;
import io.github.seamstead.geometry.drawing.PaperSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The book of a plan as texts: one self-contained page, drawings, lists.
 *
 * <pre>{@code
 * JobPlan plan =
 *     JobPlanner.plan(JobReader.read(Path.of("jobs/class-model.json")), PlanOptions.defaults());
 * Book book = Book.of(plan);
 * book.html().startsWith("<!DOCTYPE html>"); // true
 * book.lists().containsKey("cut-list.csv"); // true
 * }</pre>
 *
 * @param html the page
 * @param drawings SVG texts of the drawings by name, each a file that stands alone
 * @param lists CSV lists by file name
 * @param printSheets pieces of a model's size true to scale on paper; empty if none is small enough
 */
public record Book(
    String html,
    Map<String, String> drawings,
    Map<String, String> lists,
    Optional<String> printSheets) {

  public Book {
    drawings = Map.copyOf(drawings);
    lists = Map.copyOf(lists);
  }

  /**
   * Writes a plan's book, chapters in the order of the work. Costs time linear in the plan's size.
   *
   * @param plan the plan
   * @return the book
   */
  public static Book of(JobPlan plan) {
    return of(plan, ResultsJson.text(plan));
  }

  private static Map<String, String> texts(Map<String, Drawing> drawings) {
    Map<String, String> texts = new HashMap<>();
    drawings.forEach((name, drawing) -> texts.put(name, drawing.file()));
    return texts;
  }

  /** Writes a plan's book beside the text of its results, which the sheets name by a digest. */
  static Book of(JobPlan plan, String results) {
    Words words = new Words(plan.job().document().units());
    String title = plan.job().document().site().map(Site::name).orElse("Cover and floor");
    Page page = new Page(title + ": job book", "en").lead(Overview.lead(plan, words));
    BookContext book =
        new BookContext(
            plan.parts(), plan.cautions(), words, page, plan.job().document().doorFace());
    SumLinks sums = new SumLinks(plan.derivations());
    Front.write(plan, words, page, title, Digest.of(results), sums::anchorOf)
        .values()
        .forEach(book::keep);
    plan.changes().ifPresent(changes -> ChangePages.write(book, changes));
    for (ChapterOf<?> chapter : Chapters.all()) {
      book.linkNumbers(text -> sums.anchorOf(chapter.chapter(), text));
      write(chapter, book);
    }
    book.linkNumbers(text -> Optional.empty());
    Overview.assumed(book, plan.assumptions());
    if (!plan.derivations().isEmpty()) {
      WorkedChapter.write(book, plan.derivations());
    }
    book.listDrawings();
    PaperSize paper = PaperSize.valueOf(plan.job().document().paper().name());
    return new Book(
        page.html(),
        texts(book.drawings()),
        book.lists(),
        plan.cover().flatMap(part -> PrintSheets.html(part, paper)));
  }

  private static <P> void write(ChapterOf<P> chapter, BookContext book) {
    List<P> parts = book.parts().all(chapter.part());
    if (!parts.isEmpty()) {
      chapter.write(book, parts);
    }
  }
}
