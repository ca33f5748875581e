package io.github.seamstead.geometry.layout.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.work.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.junit.jupiter.api.Test;

class InteriorPointTest {

  @Test
  void theLastVariableComesDownToWhatHoldsIt() {
    InteriorPoint program = new InteriorPoint(2);
    program.add(0, 1, -3);
    program.add(0, -1, -5);
    program.add(1, 1, 0, -1, 0, 0, 0, 0, 2);
    program.add(1, -1, -9);
    assertThat(program.minimise(1)).isTrue();
    assertThat(program.value(0)).isCloseTo(-3, within(1e-8));
    assertThat(program.value(1)).isCloseTo(-1, within(1e-8));
  }

  @Test
  void constraintsThatContradictEachOtherAreToldOf() {
    InteriorPoint program = new InteriorPoint(2);
    program.add(0, 1, 1);
    program.add(0, -1, 1);
    program.add(1, 1, -1);
    assertThat(program.minimise(1)).isFalse();
  }

  /** Against the simplex method of a general library. */
  @Property(tries = 40, seed = "7203341866520917734")
  void theLeastIsThatOfTheSimplexMethod(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    RandomGenerator random = Seeds.stream(seed, "interior-point", 0);
    int n = 3 + random.nextInt(6);
    InteriorPoint program = new InteriorPoint(n);
    List<LinearConstraint> all = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double low = -random.nextDouble();
      double high = -random.nextDouble();
      program.add(k, 1, low);
      program.add(k, -1, high);
      all.add(new LinearConstraint(unit(n, k, 1), Relationship.GEQ, low));
      all.add(new LinearConstraint(unit(n, k, -1), Relationship.GEQ, high));
    }
    for (int r = 0; r < 3 * n; r++) {
      int i = random.nextInt(n);
      int j = (i + 1 + random.nextInt(n - 1)) % n;
      double a = 2 * random.nextDouble() - 1;
      double b = 2 * random.nextDouble() - 1;
      double bound = -0.5 * random.nextDouble();
      program.add(i, a, j, b, i, 0, j, 0, bound);
      double[] row = unit(n, i, a);
      row[j] += b;
      all.add(new LinearConstraint(row, Relationship.GEQ, bound));
    }
    double least =
        new SimplexSolver()
            .optimize(
                new LinearObjectiveFunction(unit(n, n - 1, 1), 0),
                new LinearConstraintSet(all),
                new NonNegativeConstraint(false))
            .getValue();
    assertThat(program.minimise(1)).isTrue();
    assertThat(program.value(n - 1)).isCloseTo(least, within(1e-7));
    for (LinearConstraint constraint : all) {
      double left = 0;
      for (int k = 0; k < n; k++) {
        left += constraint.getCoefficients().getEntry(k) * program.value(k);
      }
      assertThat(left).isGreaterThan(constraint.getValue() - 1e-10);
    }
  }

  private static double[] unit(int n, int k, double value) {
    double[] row = new double[n];
    row[k] = value;
    return row;
  }
}
