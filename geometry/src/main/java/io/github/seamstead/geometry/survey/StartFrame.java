package io.github.seamstead.geometry.survey;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The regular frame at which an adjustment starts: the ideal one if it is known, else the one whose
 * four measures (base radius, apex height, opening radius and height) are medians over what the
 * readings say, so that half of them may be wrong. The base lies in {@code z = 0} with its middle
 * at the origin and corner {@code B<i>} at the azimuth {@code 2 pi i / n} from the x axis, as in
 * the ideal frame; corners go counter-clockwise and the top is above: that is the convention by
 * which mirror twins are told apart.
 */
final class StartFrame {

  private final int sides;
  private final double baseRadius;
  private final double apexHeight;
  private final double openingRadius;
  private final double openingHeight;

  private StartFrame(int sides, double baseRadius, double apexHeight, double r, double h) {
    this.sides = sides;
    this.baseRadius = baseRadius;
    this.apexHeight = apexHeight;
    this.openingRadius = r;
    this.openingHeight = h;
  }

  static StartFrame of(SurveyShape shape, List<Reading> readings) {
    if (shape.ideal().isPresent()) {
      SurveyShape.Ideal ideal = shape.ideal().get();
      return new StartFrame(
          shape.sides(),
          ideal.baseRadius(),
          ideal.apexHeight(),
          ideal.openingRadius(),
          ideal.openingHeight());
    }
    return new Guess(shape.sides(), readings).frame();
  }

  double[] place(Node node) {
    double turn = 2 * Math.PI * node.number() / sides;
    return switch (node.kind()) {
      case BASE ->
          new double[] {baseRadius * StrictMath.cos(turn), baseRadius * StrictMath.sin(turn), 0};
      case OPENING ->
          new double[] {
            openingRadius * StrictMath.cos(turn),
            openingRadius * StrictMath.sin(turn),
            openingHeight
          };
      case APEX -> new double[] {0, 0, apexHeight};
      case CENTRE -> new double[] {0, 0, 0};
    };
  }

  /** Gathers what each reading says of each measure. */
  private static final class Guess {

    private final int sides;
    private final List<Reading> readings;

    Guess(int sides, List<Reading> readings) {
      this.sides = sides;
      this.readings = readings;
    }

    StartFrame frame() {
      double mean = readings.stream().mapToDouble(r -> Math.abs(r.value())).average().orElse(1);
      double usual = Math.max(mean, 1e-3);
      double radius = baseRadius(usual);
      double apex = apexHeight(radius);
      double openingRadius = openingRadius(radius);
      double openingHeight = openingHeight(radius, openingRadius);
      return new StartFrame(sides, radius, apex, openingRadius, openingHeight);
    }

    private double baseRadius(double usual) {
      List<Double> says = radii(Node.Kind.BASE);
      if (says.isEmpty()) {
        Optional<Double> hip = median(lengths(Node.Kind.APEX, Node.Kind.BASE));
        Optional<Double> height = median(heights(Node.Kind.APEX));
        if (hip.isPresent()) {
          double h = height.isPresent() ? height.get() : hip.get() / 2;
          says.add(leg(hip.get(), h));
        }
      }
      return median(says).orElse(usual);
    }

    private double apexHeight(double radius) {
      List<Double> says = heights(Node.Kind.APEX);
      for (double hip : lengths(Node.Kind.APEX, Node.Kind.BASE)) {
        says.add(leg(hip, radius));
      }
      return median(says).orElse(radius);
    }

    private double openingRadius(double radius) {
      List<Double> says = radii(Node.Kind.OPENING);
      Optional<Double> pole = median(poles());
      Optional<Double> centre = median(lengths(Node.Kind.OPENING, Node.Kind.CENTRE));
      if (says.isEmpty() && pole.isPresent() && centre.isPresent()) {
        double squares = radius * radius + centre.get() * centre.get() - pole.get() * pole.get();
        says.add(Math.max(squares / (2 * radius), 0.05 * radius));
      }
      return median(says).orElse(radius / 4);
    }

    private double openingHeight(double radius, double openingRadius) {
      List<Double> says = heights(Node.Kind.OPENING);
      for (double pole : poles()) {
        says.add(leg(pole, radius - openingRadius));
      }
      for (Reading reading : readings) {
        if (reading instanceof Reading.Distance d
            && joins(d, Node.Kind.OPENING, Node.Kind.BASE)
            && d.from().number() != d.to().number()) {
          double turn = 2 * Math.PI * (d.from().number() - d.to().number()) / sides;
          double square =
              radius * radius
                  + openingRadius * openingRadius
                  - 2 * radius * openingRadius * StrictMath.cos(turn);
          says.add(leg(d.value(), Math.sqrt(Math.max(square, 0))));
        } else if (reading instanceof Reading.Distance d
            && joins(d, Node.Kind.OPENING, Node.Kind.CENTRE)) {
          says.add(leg(d.value(), openingRadius));
        }
      }
      return median(says).orElse(radius / 2);
    }

    /** Radii from chords within a ring and from the centre or the plumb line of the apex. */
    private List<Double> radii(Node.Kind ring) {
      List<Double> says = new ArrayList<>();
      for (Reading reading : readings) {
        boolean level = reading instanceof Reading.LevelDistance;
        if (!level && !(reading instanceof Reading.Distance)) {
          continue;
        }
        if (joins(reading, ring, ring)) {
          int steps = reading.nodes().get(0).number() - reading.nodes().get(1).number();
          says.add(reading.value() / (2 * Math.abs(StrictMath.sin(Math.PI * steps / sides))));
        } else if ((joins(reading, ring, Node.Kind.CENTRE) && (level || ring == Node.Kind.BASE))
            || (joins(reading, ring, Node.Kind.APEX) && level)) {
          says.add(reading.value());
        }
      }
      return says;
    }

    private List<Double> heights(Node.Kind top) {
      List<Double> says = new ArrayList<>();
      for (Reading reading : readings) {
        boolean ground = joins(reading, top, Node.Kind.BASE);
        boolean centre = joins(reading, top, Node.Kind.CENTRE);
        boolean straightUp = reading instanceof Reading.Distance && centre && top == Node.Kind.APEX;
        if (straightUp || (reading instanceof Reading.HeightDifference && (ground || centre))) {
          says.add(Math.abs(reading.value()));
        }
      }
      return says;
    }

    /** Poles from an opening corner down to the base corner below it. */
    private List<Double> poles() {
      List<Double> says = new ArrayList<>();
      for (Reading reading : readings) {
        if (reading instanceof Reading.Distance d
            && joins(d, Node.Kind.OPENING, Node.Kind.BASE)
            && d.from().number() == d.to().number()) {
          says.add(d.value());
        }
      }
      return says;
    }

    private List<Double> lengths(Node.Kind a, Node.Kind b) {
      List<Double> says = new ArrayList<>();
      for (Reading reading : readings) {
        if (reading instanceof Reading.Distance && joins(reading, a, b)) {
          says.add(reading.value());
        }
      }
      return says;
    }

    private static boolean joins(Reading reading, Node.Kind a, Node.Kind b) {
      Node.Kind from = reading.nodes().get(0).kind();
      Node.Kind to = reading.nodes().get(1).kind();
      return (from == a && to == b) || (from == b && to == a);
    }

    /** The other leg of a right triangle, kept off zero where a wrong reading makes it vanish. */
    private static double leg(double hypotenuse, double otherLeg) {
      double square = hypotenuse * hypotenuse - otherLeg * otherLeg;
      return Math.sqrt(Math.max(square, 0.01 * hypotenuse * hypotenuse));
    }

    private static Optional<Double> median(List<Double> values) {
      if (values.isEmpty()) {
        return Optional.empty();
      }
      List<Double> sorted = new ArrayList<>(values);
      Collections.sort(sorted);
      int middle = sorted.size() / 2;
      double upper = sorted.get(middle);
      double lower = sorted.get((sorted.size() - 1) / 2);
      return Optional.of((lower + upper) / 2);
    }
  }
}
