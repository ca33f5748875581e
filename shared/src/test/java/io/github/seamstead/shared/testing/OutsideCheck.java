package io.github.seamstead.shared.testing;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.shared.source.Source;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.assertj.core.data.Offset;

/**
 * Compares a calculation with a value from outside the project and keeps the comparison for the
 * reference page, so that the page is what the tests did.
 *
 * <pre>{@code
 * OutsideCheck.of("geometry.frame", "regular heptagon: area over side squared", CRC_TABLES)
 *     .expect(3.633912).within(1e-6).got(polygon.area());
 * }</pre>
 *
 * <p>Each comparison is appended as one tab-separated line to {@code
 * target/outside-checks/<calculation>-<test class>.tsv}, so that test classes may run beside one
 * another: calculation, what, citation, status, expected, got, tolerance, test class. The tolerance
 * covers the rounding that the source shows, never more.
 */
public final class OutsideCheck {

  private static final Set<Path> OPENED = ConcurrentHashMap.newKeySet();

  private final String calculation;
  private final String what;
  private final Source source;
  private double expected = Double.NaN;
  private double tolerance = Double.NaN;

  private OutsideCheck(String calculation, String what, Source source) {
    this.calculation = calculation;
    this.what = what;
    this.source = source;
  }

  /**
   * Names a comparison.
   *
   * @param calculation module and package of what is checked, such as {@code geometry.frame}
   * @param what the case and the quantity with its unit
   * @param source where the expected value stands
   * @return the comparison, to be completed
   */
  public static OutsideCheck of(String calculation, String what, Source source) {
    return new OutsideCheck(calculation, what, source);
  }

  /**
   * States the value as the source prints it.
   *
   * @param value the printed value
   * @return this comparison
   */
  public OutsideCheck expect(double value) {
    expected = value;
    return this;
  }

  /**
   * States an absolute tolerance.
   *
   * @param absolute half a unit of the source's last printed digit, or what the source states
   * @return this comparison
   */
  public OutsideCheck within(double absolute) {
    tolerance = absolute;
    return this;
  }

  /**
   * States a relative tolerance.
   *
   * @param ratio relative to the expected value, which must be set before
   * @return this comparison
   */
  public OutsideCheck withinRatio(double ratio) {
    tolerance = Math.abs(expected) * ratio;
    return this;
  }

  /**
   * Keeps and asserts the comparison.
   *
   * @param actual what the library computes
   */
  public void got(double actual) {
    assertThat(expected).as("expected value is set").isNotNaN();
    assertThat(tolerance).as("tolerance is set").isNotNaN();
    keep(actual);
    assertThat(actual)
        .as("%s: %s (%s)", calculation, what, source.citation())
        .isCloseTo(expected, Offset.offset(tolerance));
  }

  private void keep(double actual) {
    String line =
        String.join(
                "\t",
                clean(calculation),
                clean(what),
                clean(source.citation()),
                source.status().label(),
                Double.toString(expected),
                Double.toString(actual),
                Double.toString(tolerance),
                test())
            + "\n";
    Path folder = Path.of(System.getProperty("seamstead.checks", "target/outside-checks"));
    Path file = folder.resolve(calculation + "-" + test() + ".tsv");
    synchronized (OutsideCheck.class) {
      try {
        Files.createDirectories(folder);
        if (OPENED.add(file)) {
          Files.deleteIfExists(file);
        }
        Files.writeString(
            file,
            line,
            StandardCharsets.UTF_8,
            StandardOpenOption.CREATE,
            StandardOpenOption.APPEND);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** Finds the test class that asked: the nearest caller named as one. */
  private static String test() {
    return StackWalker.getInstance()
        .walk(
            frames ->
                frames
                    .map(frame -> frame.getClassName().replaceAll("\\$.*$", ""))
                    .filter(name -> name.endsWith("Test") || name.endsWith("Properties"))
                    .findFirst())
        .orElse("");
  }

  private static String clean(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
