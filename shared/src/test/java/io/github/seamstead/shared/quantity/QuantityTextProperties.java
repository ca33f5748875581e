package io.github.seamstead.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class QuantityTextProperties {

  @Property(tries = 200, seed = "20260718")
  void everySymbolReadsBackWhatItWrote(
      @ForAll Dimension dimension, @ForAll @DoubleRange(min = -1e4, max = 1e4) double si) {
    for (String symbol : QuantityText.symbols(dimension)) {
      double inUnit = QuantityText.toUnit(si, dimension, symbol);
      // A pure number is written without its symbol, as QuantityText.write does.
      String text = Numbers.exact(inUnit) + (symbol.equals("1") ? "" : " " + symbol);
      assertThat(QuantityText.parse(text, dimension))
          .as(text)
          .isCloseTo(si, within(1e-10 * (1 + Math.abs(si)) + 1e-9));
    }
  }

  @Property(tries = 200, seed = "20260719")
  void feetAndInchesReadBackWithinHalfADivision(
      @ForAll @DoubleRange(min = -100, max = 100) double metres) {
    double back = QuantityText.parse(QuantityText.feetAndInches(metres, 16), Dimension.LENGTH);
    assertThat(back).isCloseTo(metres, within(0.0254 / 32 + 1e-12));
  }
}
