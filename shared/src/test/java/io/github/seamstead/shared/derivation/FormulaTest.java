package io.github.seamstead.shared.derivation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.seamstead.shared.derivation.Formula.Binary;
import io.github.seamstead.shared.derivation.Formula.Literal;
import io.github.seamstead.shared.derivation.Formula.Negation;
import io.github.seamstead.shared.derivation.Formula.Symbol;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaTest {

  @Test
  void bindsAsTheNotationSays() {
    assertThat(Formula.parse("a - b - c").root())
        .isEqualTo(
            new Binary('-', new Binary('-', new Symbol("a"), new Symbol("b")), new Symbol("c")));
    assertThat(Formula.parse("-a^2").root())
        .isEqualTo(new Negation(new Binary('^', new Symbol("a"), new Literal(2, "2"))));
    assertThat(Formula.parse("a^b^c").root())
        .isEqualTo(
            new Binary('^', new Symbol("a"), new Binary('^', new Symbol("b"), new Symbol("c"))));
  }

  @Test
  void listsSymbols() {
    assertThat(Formula.parse("atan2(y_1, x) * 180 / pi + min(a, 1e-3)").symbols())
        .containsExactly("a", "x", "y_1");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2r | unexpected 'r' at character 2",
        "a + | unexpected end",
        "(a | expected ')'",
        "foo(a) | unknown function foo",
        "sin(a, b) | sin takes 1 argument(s), given 2",
        "a $ b | unexpected '$'",
        "1.2.3 | unexpected '.'",
        "1e | not a number: 1e",
      })
  void refusesOtherText(String text, String why) {
    assertThatThrownBy(() -> Formula.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(why);
  }
}
