package io.github.seamstead.shared.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.function.Supplier;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ArgsTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0, -0.0, -2})
  void positiveRefusesAllButPositiveFiniteNumbers(double value) {
    assertThatThrownBy(() -> Args.positive("base side", value, "m"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("base side: given ")
        .hasMessageEndingWith(" m, must be greater than 0 m");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e-300})
  void notNegativeRefusesNegativeAndUnusableNumbers(double value) {
    refused(() -> Args.notNegative("kerf", value, "m"), "must be 0 m or more");
  }

  @Test
  void messagesSayWhatWasGivenAndWhatIsAllowed() {
    refused(
        () -> Args.within("humidity", 1.2, 0, 1, ""), "humidity: given 1.2, must be from 0 to 1");
    refused(
        () -> Args.between("slope", 2, 0, 1.5, "rad"),
        "slope: given 2 rad, must be more than 0 rad and less than 1.5 rad");
    refused(() -> Args.within("sides", 2, 3, 64), "sides: given 2, must be from 3 to 64");
    refused(() -> Args.finite("x", Double.NaN, "m"), "x: given NaN m, must be a finite number");
    refused(() -> Args.notBlank("name", " "), "name: given an empty text, must not be empty");
    refused(() -> Args.notEmpty("sheets", List.of()), "sheets: given none, must have at least one");
  }

  @Test
  void noiseIsNotToldUnlessItIsTheFault() {
    refused(() -> Args.within("x", 0.1 + 0.2, 1, 2, "m"), "given 0.3 m, must be from 1 m to 2 m");
    refused(
        () -> Args.within("x", 25.0000000001, 0, 25, "m"),
        "given 25.0000000001 m, must be from 0 m to 25 m");
  }

  @Test
  void whatHoldsIsNotPutIntoWords() {
    Supplier<String> never =
        () -> {
          throw new AssertionError("asked for words");
        };
    Args.require(true, never);
    Args.require(true, "x", never, "must be more");
    Args.agree(true, never, "must be more");
    refused(() -> Args.require(false, () -> "found"), "found");
    refused(
        () -> Args.require(false, "x", () -> "1 m", "must be more"), "x: given 1 m, must be more");
    refused(() -> Args.agree(false, () -> "found", "must be more"), "found, must be more");
  }

  @Test
  void returnsWhatIsAllowed() {
    assertThat(Args.positive("x", Double.MIN_VALUE, "m")).isEqualTo(Double.MIN_VALUE);
    assertThat(Args.notNegative("x", 0, "m")).isZero();
    assertThat(Args.within("x", 1.0, 0, 1, "")).isEqualTo(1);
    assertThat(Args.between("x", 0.5, 0, 1, "")).isEqualTo(0.5);
    assertThat(Args.within("n", 3, 3, 64)).isEqualTo(3);
    assertThat(Args.notEmpty("x", List.of("a"))).containsExactly("a");
  }

  private static void refused(ThrowingCallable call, String message) {
    assertThatThrownBy(call)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }
}
