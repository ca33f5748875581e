package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class JobValueTest {

  @TestFactory
  Stream<DynamicTest> aConstantIsToldByTheWordThatDocumentsHaveForIt() {
    return Stream.of(
        words(FrameMeasure.values(), FrameMeasure::word),
        words(LayerKind.values(), LayerKind::word),
        words(MixUse.values(), MixUse::word),
        words(HemKind.values(), HemKind::word),
        words(FixingMethod.values(), FixingMethod::word),
        words(SeamKind.values(), SeamKind::word),
        words(SheetEdge.values(), SheetEdge::word),
        words(DesignAim.values(), DesignAim::word),
        words(AggregateKind.values(), AggregateKind::word),
        words(PoleSection.values(), PoleSection::word),
        words(SizeSystem.values(), SizeSystem::word),
        words(Combine.values(), Combine::word),
        words(Paper.values(), paper -> paper.name().toLowerCase(Locale.ROOT)));
  }

  private static <E extends Enum<E>> DynamicTest words(E[] constants, Function<E, String> word) {
    return DynamicTest.dynamicTest(
        constants[0].getDeclaringClass().getSimpleName(),
        () ->
            assertThat(constants)
                .allSatisfy(one -> assertThat(JobValue.word(one)).isEqualTo(word.apply(one))));
  }
}
