package io.github.seamstead.api.book;

import io.github.seamstead.api.chapter.NotPlanned;
import io.github.seamstead.api.chapter.Unmet;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.Assumption;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.page.Markup;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.shared.caution.Caution;
import java.util.List;
import java.util.Optional;

/** What stands under the book's title, and the list of what was assumed. */
final class Overview {

  private Overview() {}

  /** Writes the lead: what the job is, its main numbers, what is missing. */
  static Markup lead(JobPlan plan, Words words) {
    Markup lead = new Markup();
    Optional<Site> site = plan.job().document().site();
    site.flatMap(Site::note).ifPresent(note -> lead.element("p", note));
    Table table = new Table("The job at a glance", "what", "#how much");
    plan.frame()
        .ifPresent(
            frame -> {
              table.row("sides", Integer.toString(frame.pyramid().sides()));
              table.row("base side", words.length(frame.pyramid().baseSide()));
              table.row("height of the frame", words.length(frame.measures().frameHeight()));
              table.row("cover area on the faces", words.area(frame.measures().coverArea()));
            });
    plan.cover()
        .ifPresent(
            cover -> {
              table.row("cloth with allowances", words.area(cover.clothArea()));
              table.row("mass of the cover", words.mass(cover.clothMass()));
            });
    plan.floor()
        .ifPresent(
            floor -> table.row("floor area", words.area(floor.buildUp().footprint().area())));
    table.write(lead);
    for (Unmet unmet : plan.unmet()) {
      lead.open("div", "class", "caution").open("p");
      lead.element("strong", "Cannot be met as stated: ").text(words.said(unmet.what()));
      lead.close().closeLine();
    }
    if (!plan.notPlanned().isEmpty()) {
      lead.element("p", "Not planned:").open("ul");
      for (NotPlanned part : plan.notPlanned()) {
        lead.element("li", part.chapter().title() + ": " + words.said(part.reason()));
      }
      lead.closeLine();
    }
    lead.element("p", Caution.DEFERENCE);
    return lead;
  }

  /** Writes the chapter of assumed values. */
  static void assumed(BookContext book, List<Assumption> assumptions) {
    if (assumptions.isEmpty()) {
      book.paragraph("Nothing was assumed: the document states every value that was used.");
    } else {
      book.paragraph(
          "The job document leaves these values out. Check each one before you rely on what follows"
              + " from it.");
      Table table = new Table("Assumed values", "value", "assumed", "ground");
      // The same value of many layers or sheets is one assumption to the reader.
      assumptions.stream()
          .map(
              a ->
                  List.of(
                      DocumentPlace.words(a.path()),
                      book.words().said(a.value()),
                      book.words().said(a.ground())))
          .distinct()
          .forEach(row -> table.row(row.toArray(String[]::new)));
      book.table(table);
    }
    book.end("What was assumed");
  }
}
