package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.job.TrialSample;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.mix.Basis;
import io.github.seamstead.materials.mix.ClayBand;
import io.github.seamstead.materials.mix.ClayBlend;
import io.github.seamstead.materials.mix.MixSolution;
import io.github.seamstead.materials.mix.Recipe;
import io.github.seamstead.materials.mix.TrialLadder;
import io.github.seamstead.materials.soil.Conflict;
import io.github.seamstead.materials.soil.SoilFinding;
import io.github.seamstead.materials.soil.TestReading;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;

/** What each soil is, with its doubt, and the mixes made of it. */
final class SoilPages {

  private static final double LEAST_SHOWN = 0.02;
  private static final int TESTS_SHOWN = 4;

  private SoilPages() {}

  static void write(BookContext book, List<SoilPart> soils) {
    for (SoilPart soil : soils) {
      soil(book, soil);
    }
    book.end(Chapter.SOIL);
  }

  static void mixes(BookContext book, List<MixPart> mixes) {
    for (MixPart mix : mixes) {
      mix(book, mix);
    }
    book.end(Chapter.MIX);
  }

  private static void soil(BookContext book, SoilPart part) {
    Words w = book.words();
    SoilFinding finding = part.finding();
    String id = part.sample().id();
    book.heading(part.sample().id());
    Table table = new Table("Shares of dry mass", "fraction", "#mean (5 % to 95 %)");
    table.row("clay", w.range(finding.texture().clayRange(), w::percent));
    table.row("silt", w.range(finding.texture().siltRange(), w::percent));
    table.row("sand", w.range(finding.texture().sandRange(), w::percent));
    finding.gravelRatio().ifPresent(g -> table.row("gravel, of the whole", w.percent(g.value())));
    book.table(table);
    Table classes = new Table("Texture class", "class", "#probability");
    finding
        .texture()
        .classProbabilities()
        .forEach(
            (kind, probability) -> {
              if (probability >= LEAST_SHOWN) {
                classes.row(kind.label(), w.percent(probability));
              }
            });
    book.table(classes);
    part.stoniness().ifPresent(word -> book.paragraph("Its stones make it " + word + "."));
    part.group()
        .ifPresent(
            group ->
                book.paragraph(
                    "Group by sieve and limits (ASTM D2487): "
                        + group.symbol()
                        + (group.withGravel() ? " with gravel" : "")
                        + "."));
    book.figure(SoilDrawings.triangle(id, finding));
    book.figure(SoilDrawings.grading(id, finding, w));
    tests(book, part);
    suitability(book, part);
    finding.conflicts().stream().map(Conflict::message).forEach(book::note);
    if (!finding.remarks().isEmpty()) {
      book.body().open("details").element("summary", "Remarks on the tests").open("ul");
      finding.remarks().stream()
          .distinct()
          .forEach(remark -> book.body().element("li", book.words().said(remark)));
      book.body().close().closeLine();
    }
  }

  private static void tests(BookContext book, SoilPart part) {
    if (part.readings().isEmpty()) {
      return;
    }
    Words w = book.words();
    Table table = new Table("Tests made", "test", "#clay by it alone", "tells plasticity");
    for (TestReading reading : part.readings()) {
      table.row(
          w.said(reading.label()),
          w.range(reading.clay(), w::percent),
          reading.plastic() ? "yes" : "no");
    }
    book.table(table);
    if (part.readings().stream().filter(TestReading::plastic).count() > 1) {
      book.paragraph(
          "Tests of plasticity, felt by hand or measured, have one cause in common, the minerals of"
              + " the clay, so they err together and each further one tells less.");
    }
  }

  private static void suitability(BookContext book, SoilPart part) {
    book.paragraph(
        "As " + part.floor().use().label() + ": " + part.floor().verdict().label() + ".");
    part.floor().reasons().forEach(book::paragraph);
    Table tests = new Table("Tests to make next", "test", "#doubt of clay left", "#work (min)");
    part.nextTests().stream()
        .limit(TESTS_SHOWN)
        .forEach(
            next ->
                tests.row(
                    next.kind().label(),
                    book.words().percent(next.clayDoubtLeft()),
                    BookContext.number(next.kind().handsOnTime() / 60, 0)));
    book.table(tests);
  }

  private static void trials(BookContext book, TrialLadder ladder) {
    book.paragraph(
        "Trial samples to make first, and to choose from by what dries without cracks"
            + " and does not dust:");
    book.body().open("ul");
    for (int rung = 0; rung < ladder.sandParts().size(); rung++) {
      book.body().element("li", ladder.proportion(rung).text());
    }
    book.body().closeLine();
    ladder.reasons().forEach(book::note);
  }

  private static void reading(BookContext book, TrialPart trial) {
    Words w = book.words();
    Table table =
        new Table(
            "Trial samples as measured",
            "#parts of sand to one of soil",
            "#cracks along the mould",
            "#shrinkage",
            "reading");
    for (TrialSample sample : trial.trials().samples()) {
      double ratio = sample.crack() / sample.mould();
      boolean sound =
          trial.reading().soundSamples().stream()
              .anyMatch(
                  s ->
                      s.sandParts() == sample.sandParts()
                          && s.crackWidth() == sample.crack()
                          && s.mould() == sample.mould());
      table.row(
          BookContext.number(sample.sandParts(), 2),
          w.mesh(sample.crack()) + " in " + w.small(sample.mould()),
          w.percent(ratio),
          ratio > trial.trials().crackLimit() ? "cracks" : sound ? "sound" : "dusts or crumbles");
    }
    book.table(table);
    trial.reading().advice().forEach(book::paragraph);
  }

  private static void design(BookContext book, MixSolution design) {
    Words w = book.words();
    Table table = new Table("The mix as calculated, before rounding to buckets", "what", "#value");
    List<Double> shares = design.exact().dryMassRatios();
    for (int i = 0; i < shares.size(); i++) {
      table.row(
          design.exact().portions().get(i).component().name() + ", share of the dry mass",
          w.percent(shares.get(i)));
    }
    table.row("clay", w.percent(design.clayRatio()));
    design.shrinkage().ifPresent(s -> table.row("linear shrinkage", w.range(s, w::percent)));
    if (design.gradingMisfit().isPresent()) {
      table.row("off the grading aimed at", w.percent(design.gradingMisfit().get()));
    }
    if (design.pricePerDryTonne().isPresent()) {
      table.row("price of a dry tonne", BookContext.number(design.pricePerDryTonne().get(), 2));
    }
    book.table(table);
  }

  private static boolean leaves(Range clay, ClayBand band) {
    return clay.low() < band.least() || clay.high() > band.greatest();
  }

  private static void mix(BookContext book, MixPart part) {
    Words w = book.words();
    ClayBlend blend = part.blend();
    book.heading(part.spec().id());
    Recipe rounded = part.choice().recipe();
    book.body().element("p", rounded.proportion(Basis.LOOSE_VOLUME).text(), "class", "key");
    book.paragraph(part.choice().reason());
    part.choice().remarks().forEach(book::note);
    Table table = new Table("The mix", "what", "#value");
    table.row(
        "clay in the dry mix, nine times in ten",
        part.clay()
            .map(clay -> w.range(clay, w::percent))
            .orElseGet(() -> w.percent(rounded.clayRatio().value())));
    table.row(
        "clay wanted",
        w.percent(blend.band().least()) + " to " + w.percent(blend.band().greatest()));
    table.row(
        "dry sand to one part of dry soil, by mass, for the middle of that (for its ends)",
        BookContext.number(blend.sandPerSoilDryMass(), 2)
            + " ("
            + BookContext.number(blend.leastSandPerSoilDryMass(), 2)
            + " to "
            + BookContext.number(blend.greatestSandPerSoilDryMass(), 2)
            + ")");
    table.row(
        "yield: compacted volume of one loose volume", w.range(rounded.yieldRatio(), w::percent));
    book.table(table);
    if (part.trial().isEmpty() && part.clay().filter(c -> leaves(c, blend.band())).isPresent()) {
      book.note(
          "What is known of the soil leaves the clay of this mix open beyond what is wanted: let"
              + " trial samples decide the ratio before the sand is ordered.");
    }
    part.choice().unmet().ifPresent(book::note);
    part.design().ifPresent(design -> design(book, design));
    part.composition().forEach(book::note);
    book.figure(SoilDrawings.mixGrading(part.spec().id(), rounded, w));
    part.trial().ifPresent(trial -> reading(book, trial));
    part.ladder().ifPresent(ladder -> trials(book, ladder));
  }
}
