package io.github.seamstead.api.book.front;

import io.github.seamstead.api.page.Drawing;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The weeks as a bar: work black, waiting hatched, what waiting may last besides in a dashed box.
 */
final class WeeksSketch {

  private static final double WIDTH = 178;
  private static final double ROW = 7;
  private static final double BAR = 4.2;

  private WeeksSketch() {}

  static Drawing of(WorkPlan plan) {
    List<WorkPlan.Stretch> stretches = plan.calendar();
    double end = stretches.stream().mapToDouble(s -> s.late().orElse(s.dry())).max().orElse(7) / 7;
    double weeks = Math.max(2, Math.ceil(Math.min(end, plan.likely() / 7 * 1.7)));
    boolean cover = stretches.stream().anyMatch(stretch -> stretch.day().work().isCover());
    boolean floor = stretches.stream().anyMatch(stretch -> !stretch.day().work().isCover());
    List<String> names = new ArrayList<>();
    if (cover) {
      names.add("cover");
    }
    if (floor) {
      names.add("floor");
    }
    int rows = names.size();
    double height = rows * ROW + 17.5;
    Sketch s = new Sketch(WIDTH, height);
    double left = 16;
    double perWeek = (WIDTH - left - 6) / weeks;
    double foot = rows * ROW + 6;
    int every = weeks > 40 ? 10 : weeks > 26 ? 4 : weeks > 13 ? 2 : 1;
    for (int week = 0; week <= weeks; week++) {
      double x = left + week * perWeek;
      s.line(Vector2D.of(x, 2), Vector2D.of(x, foot), 0.18, "");
      if (week % every == 0 && week < weeks) {
        s.text(Vector2D.of(x, foot + 3.5), Integer.toString(week), 0, false);
      }
    }
    s.text(Vector2D.of(left, foot + 9), "weeks from the start", "start", 0, false, Sketch.LETTER);
    for (int row = 0; row < rows; row++) {
      s.text(Vector2D.of(1, 6 + row * ROW), names.get(row), "start", 0, false, Sketch.LETTER);
    }
    for (WorkPlan.Stretch stretch : stretches) {
      double y = 4 + (stretch.day().work().isCover() || !cover ? 0 : ROW);
      double from = left + stretch.from() / 7 * perWeek;
      double until = left + stretch.until() / 7 * perWeek;
      double dry = left + stretch.dry() / 7 * perWeek;
      double last = left + weeks * perWeek;
      double late =
          stretch.late().isPresent()
              ? Math.min(last, left + stretch.late().get() / 7 * perWeek)
              : last;
      if (late > dry + 0.3) {
        box(s, dry, late, y, "none", "1 0.8");
      }
      if (dry > until + 0.2) {
        box(s, until, Math.min(dry, last), y, Sketch.HATCH, "");
      }
      box(s, from, Math.min(until, last), y, "#111", "");
    }
    return s.drawing(
        "start-weeks",
        "The weeks",
        String.join(" and ", names)
            + " over the weeks from the start. Black is work, hatched is"
            + " waiting as likely, a dashed box is how much longer waiting may last.");
  }

  private static void box(Sketch s, double from, double to, double y, String fill, String dash) {
    s.shape(
        List.of(
            Vector2D.of(from, y),
            Vector2D.of(to, y),
            Vector2D.of(to, y + BAR),
            Vector2D.of(from, y + BAR)),
        Sketch.THIN,
        dash,
        fill);
  }
}
