package io.github.seamstead.api.chapter.markout;

import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.geometry.markout.BaselineRow;
import io.github.seamstead.geometry.markout.CheckLength;
import io.github.seamstead.geometry.markout.TwoTapeRow;

/** Marking-out tables as data. */
final class MarkoutFacts {

  private MarkoutFacts() {}

  static Facts<MarkoutPart> markout() {
    return new Facts<MarkoutPart>()
        .text("shape", "the shape to cut", m -> m.shape().id())
        .number("division_m", "the tape's division", m -> m.tables().division().step())
        .whole(
            "baselineEdge",
            "the edge of the shape that lies on the baseline, counted from 0",
            m -> m.tables().baselineEdge())
        .number(
            "baseline_m",
            "between the two marks from which both tapes start",
            m -> m.tables().template().edgeLength(m.tables().baselineEdge()))
        .flag("fits", "whether the marked template fits", m -> m.tables().baselineFit().fits())
        .flag(
            "twoTapesFit",
            "whether the template marked by two tapes fits",
            m -> m.tables().twoTapeFit().fits())
        .many("offsets", "by baseline and offset", offset(), m -> m.tables().baseline())
        .many("twoTapes", "by two tapes", twoTapes(), m -> m.tables().twoTapes())
        .many("checks", "lengths to check by", check(), m -> m.tables().checks());
  }

  private static Facts<BaselineRow> offset() {
    return new Facts<BaselineRow>()
        .whole("corner", "its number", BaselineRow::corner)
        .number("along_m", "along the baseline, rounded to the tape", BaselineRow::markedStation)
        .number("off_m", "square off the baseline, rounded", BaselineRow::markedOffset)
        .number("error_m", "how far rounding moves it", BaselineRow::error);
  }

  private static Facts<TwoTapeRow> twoTapes() {
    return new Facts<TwoTapeRow>()
        .whole("corner", "its number", TwoTapeRow::corner)
        .number("fromA_m", "from the first mark, rounded", TwoTapeRow::markedFirst)
        .number("fromB_m", "from the second mark, rounded", TwoTapeRow::markedSecond)
        .flag("left", "whether it lies left of the way from A to B", TwoTapeRow::left)
        .number("error_m", "how far rounding moves it", TwoTapeRow::error);
  }

  private static Facts<CheckLength> check() {
    return new Facts<CheckLength>()
        .whole("from", "a corner", CheckLength::from)
        .whole("to", "another corner", CheckLength::to)
        .number("length_m", "the distance, rounded", CheckLength::marked);
  }
}
