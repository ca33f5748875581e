package io.github.seamstead.api.chapter.internal;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.Parts;
import java.util.List;
import java.util.function.Supplier;

/**
 * One stage of the work on its way from the document to the reader: how it is planned, what of it
 * is data, and what of it stands in the book.
 *
 * <p>The run, the results and the book walk over the list of chapters and know none by name. A
 * chapter asks the run for the parts it builds on; the run plans them first if need be, so that one
 * chapter can be asked for alone.
 *
 * @param <P> the part that the chapter adds to the plan
 */
public interface ChapterOf<P> {

  /**
   * Gives the stage of the work.
   *
   * @return the chapter
   */
  Chapter chapter();

  /**
   * Gives the type of the part, by which the plan holds it.
   *
   * @return the type
   */
  Class<P> part();

  /**
   * Plans the chapter. What the document does not ask for is skipped, what cannot be met is noted,
   * and the list is empty then.
   *
   * @param run the run
   * @return the parts
   */
  List<P> plan(Run run);

  /**
   * Begins what is dear and depends on the document alone, before any chapter is planned ({@link
   * Beside#begin}).
   *
   * @param run the run
   */
  default void ahead(Run run) {}

  /**
   * Starts planning; the supplier gives the result to the thread that plans. Chapters that take
   * long and that nothing waits for work beside the others.
   *
   * @param run the run
   * @return what gives the parts
   */
  default Supplier<List<P>> start(Run run) {
    List<P> parts = plan(run);
    return () -> parts;
  }

  /**
   * Adds the chapter's key to the results, with all of the part that is data.
   *
   * @param results the results
   */
  void facts(Facts<Parts> results);

  /**
   * Writes the chapter's pages; called only if there is a part.
   *
   * @param book the book
   * @param parts at least one part
   */
  void write(BookContext book, List<P> parts);
}
