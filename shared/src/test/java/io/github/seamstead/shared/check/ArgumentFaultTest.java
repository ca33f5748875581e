package io.github.seamstead.shared.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

class ArgumentFaultTest {

  @Test
  void aCheckTellsItsPartsAndTheWhole() {
    ArgumentFault fault =
        catchThrowableOfType(ArgumentFault.class, () -> Args.positive("base side", -2, "m"));
    assertThat(fault).hasMessage("base side: given -2 m, must be greater than 0 m");
    assertThat(fault.name()).isEqualTo("base side");
    assertThat(fault.given()).isEqualTo("-2 m");
    assertThat(fault.allowed()).isEqualTo("must be greater than 0 m");
    assertThat(fault.unit()).isEqualTo("m");
    assertThat(fault.advice()).isEmpty();
  }

  @Test
  void aConditionOfOneArgumentTellsItsParts() {
    ArgumentFault fault =
        catchThrowableOfType(
            ArgumentFault.class,
            () -> Args.require(false, "set-backs", "1 m and 2 m", "must leave 0.1 m", "saw less"));
    assertThat(fault).hasMessage("set-backs: given 1 m and 2 m, must leave 0.1 m; saw less");
    assertThat(fault.name()).isEqualTo("set-backs");
    assertThat(fault.given()).isEqualTo("1 m and 2 m");
    assertThat(fault.allowed()).isEqualTo("must leave 0.1 m");
    assertThat(fault.advice()).isEqualTo("saw less");
  }

  @Test
  void aFindingAsksForALimitOrAdvises() {
    ArgumentFault limited = ArgumentFault.finding("the corners lie on one line", "must enclose");
    assertThat(limited).hasMessage("the corners lie on one line, must enclose");
    assertThat(limited.advice()).isEmpty();
    ArgumentFault advised = ArgumentFault.finding("the readings do not settle", "measure again");
    assertThat(advised).hasMessage("the readings do not settle; measure again");
    assertThat(advised.name()).isEmpty();
    assertThat(advised.given()).isEqualTo("the readings do not settle");
    assertThat(advised.advice()).isEqualTo("measure again");
    ArgumentFault bare = ArgumentFault.finding("height and slope contradict");
    assertThat(bare.given()).isEqualTo("height and slope contradict");
    assertThat(bare.allowed()).isEqualTo("must not contradict each other or the rest");
  }

  @Test
  void theCauseIsKept() {
    Exception cause = new Exception("x");
    assertThat(ArgumentFault.finding("a", "b").causedBy(cause)).hasCause(cause);
  }

  @Test
  void whatHoldsPasses() {
    Args.require(true, "length", "1 m", "must be short");
    Args.agree(true, "a and b differ", "measure again");
  }
}
