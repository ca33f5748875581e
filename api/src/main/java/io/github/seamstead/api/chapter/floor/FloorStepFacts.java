package io.github.seamstead.api.chapter.floor;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.materials.floor.FloorStep;

/** The steps of the floor's work as data. */
final class FloorStepFacts {

  private FloorStepFacts() {}

  static Facts<FloorStep> step() {
    return new Facts<FloorStep>()
        .text("title", "what is done", FloorStep::title)
        .texts("work", "how it is done", FloorStep::work)
        .many("quantities", "what the plan says of it", quantity(), FloorStep::quantities)
        .text("tools", "what must be at hand", FloorStep::tools)
        .text("hands", "how many people it takes", FloorStep::hands)
        .text("check", "what must be true before the next step", FloorStep::check)
        .text("ifLeftOut", "what goes wrong without it", FloorStep::ifLeftOut);
  }

  private static Facts<FloorStep.Quantity> quantity() {
    return new Facts<FloorStep.Quantity>()
        .text("name", "what it is", FloorStep.Quantity::name)
        .text("unit", "the unit of the value", q -> unit(q.kind()))
        .range("value", "the number, in that unit", FloorStep.Quantity::value);
  }

  private static String unit(FloorStep.Kind kind) {
    return switch (kind) {
      case THICKNESS, LENGTH -> "m";
      case AREA -> "m2";
      case VOLUME, LIQUID -> "m3";
      case MASS -> "kg";
      case HOURS -> "h";
      case COUNT -> "1";
    };
  }
}
