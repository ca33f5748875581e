package io.github.seamstead.examples.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.examples.instance.InstanceReader;
import io.github.seamstead.geometry.layout.StripLayout;
import io.github.seamstead.geometry.layout.StripResult;
import io.github.seamstead.shared.testing.SharedData;
import io.github.seamstead.shared.work.Budget;
import io.github.seamstead.shared.work.Work;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published strip instances (ESICUP data sets; densities from Gardeyn, Vanden Berghe and
 * Wauters 2025, arXiv:2509.13329, table 3, found): every printed layout keeps the rules, and a
 * small budget of work, which gives the same layout on every machine, already comes near.
 */
@Tag("long")
class PublishedLayoutsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"blaz", "dagli", "dighe1", "marques", "shapes0", "shirts", "swim", "trousers"})
  void whatTheCommandPrintsKeepsTheRules(String name) throws Exception {
    Path file = SharedData.require("benchmarks/layout/" + name + ".json");
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new String[] {"layout", file.toString(), "--seconds", "0.5"},
            new PrintWriter(out),
            new PrintWriter(err));
    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    assertThat(PrintedLayout.verifiedDensity(file, out.toString())).isGreaterThan(40);
  }

  @ParameterizedTest
  @CsvSource({
    "blaz, 0.88",
    "dagli, 0.90",
    "marques, 0.92",
    "shapes0, 0.88",
    "shirts, 0.88",
    "swim, 0.85",
    "trousers, 0.92"
  })
  void aSmallBudgetComesNearThePublishedDensity(String name, double part) {
    var instance = InstanceReader.read(SharedData.require("benchmarks/layout/" + name + ".json"));
    StripResult result =
        StripLayout.solve(instance.problem(), Work.of(Budget.ofWork(4_000_000), 1));
    double published = instance.bestPublishedPercent().orElseThrow() / 100;
    assertThat(result.density() / published).as("%s", name).isBetween(part, 1.0 + 1e-3);
  }

  /** Of sixteen seeds each gets there with this budget, and eleven with a fifth of it. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void theJigsawIsLaidWithoutWaste(long seed) {
    var jigsaw = InstanceReader.read(SharedData.require("benchmarks/layout/dighe1.json"));
    StripResult result =
        StripLayout.solve(jigsaw.problem(), Work.of(Budget.ofWork(100_000_000), seed));
    // The last press is a search too and ends some hundred thousandths short of the optimum.
    assertThat(result.density()).isCloseTo(1, within(1e-4));
    assertThat(result.gap()).isCloseTo(0, within(1e-4));
  }
}
