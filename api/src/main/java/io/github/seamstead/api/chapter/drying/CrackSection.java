package io.github.seamstead.api.chapter.drying;

import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.materials.drying.CrackChange;
import io.github.seamstead.materials.drying.Cracking;
import io.github.seamstead.materials.drying.Milestone;
import io.github.seamstead.materials.drying.SlipRepair;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/** The cracks of a coat with what mends them, and the air that its water asks for. */
final class CrackSection {

  private static final int MILLIMETRES = 1000;

  private CrackSection() {}

  static void cracks(BookContext book, DryingPart part) {
    part.cracking().ifPresent(cracking -> cracks(book, part, cracking));
  }

  private static void cracks(BookContext book, DryingPart part, Cracking c) {
    Words w = book.words();
    Table table = new Table("Cracks: " + part.layer().name(), "what", "#likely (range)");
    table.row("free shrinkage of the coat", w.range(c.freeShrinkage(), w::percent));
    table.row("crack width by the soil's bar", w.range(c.forecast(), CrackSection::perMille));
    Optional<Double> measured = c.measured();
    if (measured.isPresent()) {
      table.row("crack width of the trial sample", perMille(measured.get()));
    }
    table.row(
        "all crack widths together, that counts",
        w.range(c.widthPerMetre(), CrackSection::perMille));
    part.repair().ifPresent(slip -> slip(table, w, slip));
    book.table(table);
    book.paragraph(statement(c));
    part.crackAdvice().forEach(book::note);
    changes(book, part);
  }

  private static void changes(BookContext book, DryingPart part) {
    Words w = book.words();
    Table table =
        new Table(
            "What a change would do: " + part.layer().name(),
            "change",
            "#crack width then",
            "#slip for the cracks then");
    for (CrackChange change : part.crackChanges()) {
      table.row(
          change.what(),
          w.range(change.widthPerMetre(), CrackSection::perMille),
          part.repair()
              .map(slip -> w.litres(slip.cracks().likely() * change.slipFactor()))
              .orElse("\u2013"));
    }
    book.table(table);
  }

  private static void slip(Table table, Words w, SlipRepair slip) {
    table.row("slip for the cracks", w.range(slip.cracks(), w::litres));
    table.row("slip for a skim over the whole floor", w.litres(slip.skim()));
    table.row("slip to mix in all", w.range(slip.volume(), w::litres));
    slip.parts().forEach(p -> table.row("slip: " + p.name(), w.mass(p.dryMass())));
    table.row("slip: water", w.litres(slip.water() / 1000));
    table.row("slip: sieve", w.mesh(slip.sieve()));
  }

  /** Forecast and sample in one statement, and which of the two counts. */
  private static String statement(Cracking c) {
    Optional<Double> measured = c.measured();
    if (measured.isEmpty()) {
      return "Nothing was measured on this mix: the forecast is from the soil's bar alone. A trial"
          + " sample of the mix counts more.";
    }
    return "The trial sample of the mix as it is laid cracked by "
        + perMille(measured.get())
        + " of its length, and counts; the soil's bar alone says "
        + perMille(c.forecast().likely())
        + (c.sampleContradictsForecast()
            ? ", and its range does not hold the sample: make a second sample before the coat."
            : ", and its range holds the sample.");
  }

  /** A width over a length reads the same in every unit. */
  private static String perMille(double width) {
    return Numbers.fixed(width * MILLIMETRES, 1) + "\u00a0in\u00a01000";
  }

  static void air(BookContext book, DryingPart part) {
    part.air().ifPresent(air -> air(book, part, air));
  }

  private static void air(BookContext book, DryingPart part, CoverAir air) {
    Words w = book.words();
    Table table = new Table("Air under the cover: " + part.layer().name(), "what", "#how much");
    table.row("water given off in the first day", w.mass(air.waterFirstDay()));
    table.row("air under the cover", w.volume(air.roomVolume()));
    table.row("air changes a day, at the very least", changes(air.leastChanges()));
    table.row("air changes a day, to keep the stated humidity", changes(air.changesToHold()));
    table.row("humidity under a shut cover", w.percent(air.shutHumidity()));
    book.table(table);
    Milestone open = last(part.forecast().milestones());
    Milestone shut = last(air.shut().milestones());
    book.note(
        "The days above hold only while the air over the floor is changed that often. With the"
            + " cover shut, "
            + changes(air.shutChanges())
            + " air changes a day, its own water keeps the air damp. Until "
            + shut.name()
            + ": with the cover shut, "
            + DryingPages.after(shut)
            + "; open, "
            + DryingPages.after(open)
            + ". Open low and high on all sides: a draught on one side alone opens cracks.");
  }

  private static Milestone last(List<Milestone> milestones) {
    return milestones.get(milestones.size() - 1);
  }

  private static String changes(double changes) {
    return Numbers.significant(changes, 2);
  }
}
