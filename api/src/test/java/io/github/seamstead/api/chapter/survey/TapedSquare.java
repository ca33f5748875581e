package io.github.seamstead.api.chapter.survey;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.testing.Fixture;
import java.util.ArrayList;
import java.util.List;

/** Documents of a square of 4 m, 3 m high, that was taped between all of its corners. */
final class TapedSquare {

  static final double[][] SQUARE = {{2, -2, 0}, {2, 2, 0}, {-2, 2, 0}, {-2, -2, 0}, {0, 0, 3}};
  static final String[] NAMES = {"B1", "B2", "B3", "B4", "A"};
  static final String MEASURES = "\"measures\": {\"baseSide\": \"4 m\", \"height\": \"3 m\"}, ";
  static final String LEVEL =
      "{\"from\": \"B1\", \"to\": \"B2\", \"rise\": \"0 mm\"}, {\"from\": \"B2\", \"to\": \"B3\","
          + " \"rise\": \"0 mm\"}, {\"from\": \"B3\", \"to\": \"B4\", \"rise\": \"0 mm\"}";

  static double distance(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      sum += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.sqrt(sum);
  }

  static String taped(String from, String to, double metres) {
    return "{\"from\": \"%s\", \"to\": \"%s\", \"distance\": %s}".formatted(from, to, metres);
  }

  /** All ten distances between four corners and an apex; one of them is taped too long. */
  static String readings(double[][] at, String wrong, double by) {
    List<String> list = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      for (int k = i + 1; k < 5; k++) {
        boolean off = wrong.equals(NAMES[i] + "-" + NAMES[k]);
        list.add(taped(NAMES[i], NAMES[k], distance(at[i], at[k]) + (off ? by : 0)));
      }
    }
    return String.join(", ", list);
  }

  static Fixture planned(String measures, String distances, String more) {
    return Fixture.of(
        "{\"seamstead\": 1, \"frame\": {\"sides\": 4, %s\"survey\": {\"distances\": [%s], %s}}}"
            .formatted(measures, distances, more),
        Chapter.SURVEY);
  }

  static String terms(String tolerance, String more) {
    return "\"heights\": [%s]%s, \"uncertainty\": \"2 mm\", \"heightUncertainty\": \"2 mm\", \"tolerance\": \"%s\""
        .formatted(LEVEL, more, tolerance);
  }

  private TapedSquare() {}
}
