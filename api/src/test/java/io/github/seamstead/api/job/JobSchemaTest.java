package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class JobSchemaTest {

  @Test
  void thePublishedSchemaIsTheOneThatTheShapesGive() throws IOException {
    try (var in = JobSchema.class.getResourceAsStream(JobSchema.RESOURCE)) {
      assertThat(in).as("the published schema").isNotNull();
      String published = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(published).isEqualTo(JobSchema.text());
    }
  }

  static Stream<Shape<?>> shapes() {
    return JobShapes.jobDocument().reachable().stream();
  }

  @Test
  void everySectionIsReached() {
    assertThat(shapes().map(Shape::type).map(Class::getSimpleName))
        .contains(
            "Site", "Frame", "TapedDistance", "Cover", "Lining", "StockSheet", "MixSpec", "Plant");
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void aShapeHasTheKeysOfItsRecordInOrder(Shape<?> shape) {
    List<String> components =
        Arrays.stream(shape.type().getRecordComponents()).map(RecordComponent::getName).toList();
    assertThat(shape.names()).isEqualTo(components);
  }
}
