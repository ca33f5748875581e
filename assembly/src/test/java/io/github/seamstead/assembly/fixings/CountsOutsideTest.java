package io.github.seamstead.assembly.fixings;

import io.github.seamstead.shared.derivation.Steps;
import io.github.seamstead.shared.source.Source;
import io.github.seamstead.shared.testing.OutsideCheck;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Fixings, packs, cartridges, pegs and seams counted by hand. */
class CountsOutsideTest {

  private static final Source COUNTED =
      Source.derived("counted by hand: a row has one fixing more than it has gaps");
  private static final Source SUMMED = Source.derived("hand sum from first principles");

  /** Length and spacing in millimetres, rows, fixings in all. */
  @ParameterizedTest
  @CsvSource({
    "STAPLES,1000,100,1,11",
    "STAPLES,3200,40,2,162",
    "STAPLES,990,100,1,11",
    "SCREWS,500,250,1,3",
    "STITCHES,1000,5,2,400",
    "STITCHES,996,5,1,200",
    "SCREWS,90,100,2,4"
  })
  void fixingsInARow(FixingKind kind, double length, double spacing, int rows, int fixings) {
    OutsideCheck.of(
            "assembly.fixings.count",
            kind.label() + " on " + length + " mm, one each " + spacing + " mm, rows: " + rows,
            COUNTED)
        .expect(fixings)
        .within(1e-9)
        .got(FixingPattern.of(kind, spacing / 1000, rows).count(length / 1000, Steps.none()));
  }

  @ParameterizedTest
  @CsvSource({"1620,0.1,1000,2", "1000,0,1000,1", "1001,0,1000,2", "950,0.1,100,11", "3,0.1,1,4"})
  void packs(double need, double spare, int size, int packs) {
    OutsideCheck.of(
            "assembly.fixings.packs",
            need + " needed, spare " + spare + ", in packs of " + size,
            SUMMED)
        .expect(packs)
        .within(1e-9)
        .got(ShoppingItem.of("staples", "piece", need, spare, size).packs(Steps.none()));
  }

  @ParameterizedTest
  @CsvSource({"10,1.6,0.7,30", "12,1.6,0.6,36", "6,1.9,0.5,24", "5,2.4,0.6,20", "8,0.5,0.6,8"})
  void pegsRoundTheHem(int sides, double side, double spacing, int pegs) {
    OutsideCheck.of(
            "assembly.fixings.hempegs",
            sides + " sides of " + side + " m, at most " + spacing + " m apart",
            COUNTED)
        .expect(pegs)
        .within(1e-9)
        .got(new HemPegs(sides, side, spacing).pegs(Steps.none()));
  }

  /** A bead 10 mm by 5 mm is 50 ml a metre: length, beads, cartridge in ml, waste, cartridges. */
  @ParameterizedTest
  @CsvSource({"3,2,300,0,1", "3,2,300,0.1,2", "10,1,310,0.1,2", "12,2,600,0.05,3"})
  void cartridges(double length, int beads, double millilitres, double waste, int cartridges) {
    OutsideCheck.of(
            "assembly.fixings.adhesive",
            beads + " beads of 50 ml/m on " + length + " m, cartridge " + millilitres + " ml",
            SUMMED)
        .expect(cartridges)
        .within(1e-9)
        .got(
            AdhesiveNeed.of(
                    Bead.rectangle(0.01, 0.005), List.of(length), beads, millilitres / 1e6, waste)
                .cartridges(Steps.none()));
  }

  @ParameterizedTest
  @EnumSource(names = {"SPLICE", "RING", "SKIRT", "CAP"})
  void lengthOfAllSeams(SeamKind kind) {
    int count = kind.ordinal() + 2;
    SeamBill bill =
        new SeamBill(
            List.of(
                new SeamRun(SeamKind.RING, "hips", 2.5, 6),
                new SeamRun(kind, "others", 0.75, count)));
    OutsideCheck.of(
            "assembly.fixings.seams",
            "6 seams of 2.5 m and " + count + " of 0.75 m, " + kind.label() + ", m",
            SUMMED)
        .expect(Collections.nCopies(count, 0.75).stream().mapToDouble(d -> d).sum() + 15)
        .within(1e-9)
        .got(bill.length(Steps.none()));
  }
}
