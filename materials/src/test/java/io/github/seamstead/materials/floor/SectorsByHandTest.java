package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.derivation.StepRecorder;
import io.github.seamstead.shared.testing.DerivationChecks;
import io.github.seamstead.shared.uncertainty.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

/** Sectors, sheets and heights on outlines whose parts are known. */
class SectorsByHandTest {

  @Test
  void aTurnThatBringsTheDoorDownMovesNothingElse() {
    for (int door = 0; door < 7; door++) {
      SectorPlan plan = SectorPlan.of(Footprint.regular(7, 2), door);
      Vector2D at = plan.doorDown(plan.sectors().get(door).labelPoint());
      assertThat(at.getX()).as("door %s", door).isCloseTo(0, within(1e-12));
      assertThat(at.getY()).isNegative();
      Vector2D a = plan.centre().add(Vector2D.of(0.3, 1.1));
      Vector2D b = plan.centre().add(Vector2D.of(-0.8, 0.4));
      Vector2D turnedA = plan.doorDown(a);
      Vector2D turnedB = plan.doorDown(b);
      assertThat(turnedA.distance(turnedB)).isCloseTo(a.distance(b), within(1e-12));
      assertThat(turnedA.norm()).isCloseTo(a.distance(plan.centre()), within(1e-12));
      // Turned, not mirrored.
      assertThat(turnedA.signedArea(turnedB))
          .isCloseTo(
              a.subtract(plan.centre()).signedArea(b.subtract(plan.centre())), within(1e-12));
    }
  }

  @Test
  void anEdgeIsCutIntoEqualParts() {
    Footprint five = Footprint.regular(5, 2);
    for (int perEdge = 1; perEdge <= 4; perEdge++) {
      for (int door = 0; door < 5; door++) {
        SectorPlan plan = SectorPlan.of(five, Vector2D.ZERO, door, perEdge);
        int all = 5 * perEdge;
        assertThat(plan.sectors())
            .allSatisfy(s -> assertThat(s.area()).isCloseTo(five.area() / all, within(1e-9)));
        // The door's sector is the middle one of its edge, or the one behind the middle.
        int index = plan.door() - 1;
        assertThat(index / perEdge).isEqualTo(door);
        assertThat(index % perEdge).isEqualTo(perEdge / 2);
        assertThat(plan.sectors().get(index).order()).isEqualTo(all);
      }
    }
    assertThatThrownBy(() -> SectorPlan.of(five, Vector2D.ZERO, 5, 1))
        .hasMessageContaining("door edge");
    assertThatThrownBy(() -> SectorPlan.of(five, Vector2D.ZERO, -1, 1))
        .hasMessageContaining("door edge");
  }

  /** From 25 edges on sectors take some in a row: at most 16, which tile the floor. */
  @Test
  void manyEdgesShareSectors() {
    for (int edges = 20; edges <= 64; edges++) {
      Footprint floor = Footprint.regular(edges, 0.5);
      for (int door : new int[] {0, edges / 2, edges - 1}) {
        SectorPlan plan = SectorPlan.of(floor, door);
        int count = plan.sectors().size();
        assertThat(plan.area()).isCloseTo(floor.area(), within(1e-9));
        assertThat(plan.sectors()).extracting(Sector::number).doesNotHaveDuplicates();
        assertThat(plan.sectors().stream().mapToInt(Sector::order).sorted().toArray())
            .containsExactly(IntStream.rangeClosed(1, count).toArray());
        assertThat(plan.sectors().get(plan.door() - 1).order()).isEqualTo(count);
        if (edges <= 24) {
          assertThat(count).isEqualTo(edges);
        } else {
          assertThat(count).as("%s edges", edges).isBetween(8, 16);
          assertThat(plan.sectors().get(count - 1).number()).isEqualTo(count);
          // The door edge lies in the door's sector.
          Vector2D middle =
              floor.corners().get(door).lerp(floor.corners().get((door + 1) % edges), 0.5);
          Vector2D inside = middle.multiply(0.999);
          assertThat(plan.sectors().get(plan.door() - 1).outline().contains(inside)).isTrue();
        }
      }
      assertThatThrownBy(() -> SectorPlan.of(floor, floor.corners().size()))
          .hasMessageContaining("door edge");
    }
    // Where a number of equal sectors divides the edges, it is taken.
    assertThat(SectorPlan.of(Footprint.regular(36, 0.5), 0).sectors()).hasSize(12);
    assertThat(SectorPlan.of(Footprint.regular(48, 0.5), 0).sectors()).hasSize(16);
    assertThat(SectorPlan.of(Footprint.regular(30, 0.5), 0).sectors()).hasSize(15);
  }

  /** Thirty corners on a horseshoe: an edge round the bend cannot be seen, and it is named. */
  @Test
  void aBendOfManyEdgesIsRefusedToo() {
    List<Vector2D> corners = new ArrayList<>();
    for (int i = 0; i <= 20; i++) {
      double angle = Math.PI * 1.5 * i / 20;
      corners.add(Vector2D.of(5 * Math.cos(angle), 5 * Math.sin(angle)));
    }
    for (int i = 20; i >= 0; i--) {
      double angle = Math.PI * 1.5 * i / 20;
      corners.add(Vector2D.of(4 * Math.cos(angle), 4 * Math.sin(angle)));
    }
    Footprint horseshoe = Footprint.of(corners);
    assertThat(horseshoe.screedCentre()).isEmpty();
    assertThatThrownBy(() -> SectorPlan.of(horseshoe, 0))
        .hasMessageContaining("cannot be screeded from it")
        .hasMessageMatching("(?s).*edge ([1-9]|[1-3][0-9]|4[0-2]) cannot.*");
    // The first edge that a post in the bend cannot see is named by its number.
    Vector2D bend = Vector2D.of(4.5, 0.5);
    int first = 1;
    while (Footprint.seesEdge(
        bend, horseshoe.corners().get(first - 1), horseshoe.corners().get(first))) {
      first++;
    }
    int named = first;
    assertThatThrownBy(() -> SectorPlan.of(horseshoe, bend, 0, 1))
        .hasMessageContaining("edge " + named + " cannot");
  }

  @Test
  void theMiddleIsKeptWhereItSeesAll() {
    Footprint ell = Footprint.of(new double[] {0, 6, 6, 2, 2, 0}, new double[] {0, 0, 2, 2, 6, 6});
    Vector2D place = ell.screedCentre().orElseThrow();
    // Only the square at the inner corner sees both arms.
    assertThat(place.getX()).isBetween(0.0, 2.0);
    assertThat(place.getY()).isBetween(0.0, 2.0);
    Footprint square = Footprint.of(new double[] {0, 4, 4, 0}, new double[] {0, 0, 4, 4});
    assertThat(square.screedCentre().orElseThrow().distance(Vector2D.of(2, 2))).isLessThan(1e-12);
    assertThat(Footprint.runsClockwise(square.corners())).isFalse();
  }

  @Test
  void theAreaOfARegularFloorCanBeFollowed() {
    StepRecorder steps = new StepRecorder();
    // A hexagon of 2 m: six triangles of sqrt(3).
    double area = Footprint.regularArea(6, 2, steps);
    assertThat(area).isCloseTo(6 * Math.sqrt(3), within(1e-12));
    DerivationChecks.assertFollowsTo(steps.derivation("materials.floor.regular-area", "A"), area);
  }

  /** Every layer's top is measured down from the finished floor. */
  @Test
  void heightsAreMeasuredFromTheTop() {
    FloorMix gravel = Demo.GRAVEL;
    BuildUp floor =
        BuildUp.level(
            Demo.FOOTPRINT,
            List.of(
                EarthLayer.capillaryBreak(0.1, gravel),
                Demo.SHEET,
                EarthLayer.dryPack(Demo.BASE),
                new MembraneLayer("second sheet", 2, 25, 0.15, 0.1),
                EarthLayer.coat("first coat", 0.025, Demo.COAT),
                FinishLayer.linseedOil(),
                FinishLayer.wax()));
    List<FloorStep> steps = FloorSteps.of(floor, SectorPlan.of(Demo.FOOTPRINT, 0));
    List<FloorStep.Quantity> heights = step(steps, "Set the levels").quantities();
    assertThat(heights).hasSize(3);
    // 25 mm of coat and 50 mm of pack over the gravel.
    assertThat(heights)
        .extracting(q -> Math.round(q.value().likely() * 1e6) / 1e3)
        .containsExactly(75.0, 25.0, 0.0);
    assertThat(step(steps, "Lay the damp-proof sheet: damp-proof sheet")).isNotNull();
    assertThat(step(steps, "Lay the damp-proof sheet: second sheet").quantities().get(1).value())
        .isEqualTo(Range.exactly(floor.membranes().get(1).rolls()));
    FloorStep oil = step(steps, "Oil it: linseed oil");
    assertThat(oil.quantities())
        .extracting(FloorStep.Quantity::name)
        .containsExactly("coat 1", "coat 2", "coat 3", "coat 4");
    assertThat(oil.quantities().get(0).value().likely())
        .isCloseTo(0.2 * floor.footprint().area() / 1000, within(1e-12));
    FloorStep wax = step(steps, "Wax it: wax");
    assertThat(wax.quantities()).hasSize(1);
    FloorStep pack = step(steps, "Ram the dry pack");
    Range loose = pack.quantities().get(1).value();
    double pack50 = 0.05 * 1880 * (0.28 / 1080 + 0.72 / 1290);
    assertThat(loose.likely()).as("as spread").isCloseTo(pack50, within(1e-12));
  }

  private static FloorStep step(List<FloorStep> steps, String title) {
    return steps.stream().filter(s -> s.title().startsWith(title)).findFirst().orElseThrow();
  }

  /**
   * A right triangle of 4 m by 4 m under strips of 1 m without laps or upstands: the strips are as
   * long as the widest part under them, 1 to 4 m. Longest first into rolls of 5 m: 4 + 1, 3 + 2.
   */
  @Test
  void stripsOfATriangle() {
    Footprint triangle = Footprint.of(new double[] {0, 4, 4}, new double[] {0, 0, 4});
    MembraneQuantity sheet = MembraneQuantity.of(new MembraneLayer("sheet", 1, 5, 0, 0), triangle);
    assertThat(sheet.strips()).hasSize(4);
    for (int i = 0; i < 4; i++) {
      assertThat(sheet.strips().get(i)).isCloseTo(i + 1.0, within(1e-9));
    }
    assertThat(sheet.rolls()).isEqualTo(2);
    assertThat(sheet.areaWithLaps()).isCloseTo(10, within(1e-9));
    // Turned up by 0.25 m a strip reaches so far beyond the outline on both sides of itself.
    MembraneQuantity turned =
        MembraneQuantity.of(new MembraneLayer("sheet", 1.5, 25, 0, 0.25), triangle);
    // From -0.25 in steps of 1.5 m: under each the highest within 0.25 m beyond it, and 0.5 m.
    assertThat(turned.strips()).hasSize(3);
    assertThat(turned.strips().get(0)).isCloseTo(1.25 + 0.25 + 0.5, within(1e-9));
    assertThat(turned.strips().get(1)).isCloseTo(2.75 + 0.25 + 0.5, within(1e-9));
    assertThat(turned.strips().get(2)).isCloseTo(4 + 0.5, within(1e-9));
  }

  /** Loads of a sector run on from those of the sector before it. */
  @Test
  void loadsAreNumberedAcrossSectors() {
    Footprint square = Footprint.of(new double[] {0, 4, 4, 0}, new double[] {0, 0, 4, 4});
    FloorMix earth =
        new FloorMix(
            "earth", List.of(MixPart.of("earth", 1, 1000, 0.1)), Range.exactly(1600), 0.1, 0.004);
    EarthQuantity coat = EarthQuantity.of(EarthLayer.coat("coat", 0.025, earth), 16, 0);
    // 640 kg by loads of 40 kg, four for each quarter.
    BatchPlan plan = BatchPlan.of(coat, new Mixer(0.040, 500, 0.010, 0.5));
    List<SectorBatches> rows = SectorPlan.of(square, 0).batches(plan);
    assertThat(rows).extracting(SectorBatches::firstLoad).containsExactly(1, 5, 9, 13);
    assertThat(rows).extracting(SectorBatches::lastLoad).containsExactly(4, 8, 12, 16);
    assertThat(rows).allSatisfy(row -> assertThat(row.loads()).isCloseTo(4, within(1e-9)));
  }
}
