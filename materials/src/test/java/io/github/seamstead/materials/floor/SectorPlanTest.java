package io.github.seamstead.materials.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.seamstead.shared.uncertainty.Range;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class SectorPlanTest {

  private static final EarthQuantity COAT = Demo.FLOOR.earth().get(2);
  private static final BatchPlan PLAN = BatchPlan.of(COAT, Demo.MIXER);

  @Test
  void sevenSectorsFromTheFarSideToTheDoor() {
    SectorPlan plan = SectorPlan.of(Demo.FOOTPRINT, 0);
    assertThat(plan.door()).isEqualTo(1);
    assertThat(plan.inOrder()).extracting(Sector::number).containsExactly(4, 5, 3, 6, 2, 7, 1);
    assertThat(plan.area()).isCloseTo(Demo.FOOTPRINT.area(), within(1e-9));
    Sector sector = plan.sectors().get(0);
    assertThat(sector.screedLength())
        .isCloseTo(2.4 / (2 * Math.tan(Math.PI / 7)) - 0.12, within(1e-9));
    assertThat(sector.jointLength()).isGreaterThan(sector.screedLength());
    assertThat(sector.labelPoint().getY()).isNegative();
  }

  @Test
  void loadsAreSharedOutWithoutGaps() {
    SectorPlan plan = SectorPlan.of(Demo.FOOTPRINT, 3);
    List<SectorBatches> rows = plan.batches(PLAN);
    double loads = rows.stream().mapToDouble(SectorBatches::loads).sum();
    assertThat(loads)
        .isCloseTo(PLAN.quantity().dryMass().likely() / PLAN.batch().dryMass(), within(1e-9));
    assertThat((int) Math.ceil(loads)).isEqualTo(PLAN.likelyCount());
    int last = 0;
    for (SectorBatches row : rows) {
      assertThat(row.firstLoad()).isBetween(last, last + 1);
      last = row.lastLoad();
    }
    assertThat(last).isEqualTo(PLAN.likelyCount());
  }

  @Test
  void aSlowCrewIsWarned() {
    SectorPlan plan = SectorPlan.of(Demo.FOOTPRINT, 0);
    Range open = new Range(3600, 7200, 10_800);
    JointTiming fast = JointTiming.of(plan, PLAN, 300, open);
    JointTiming slow = JointTiming.of(plan, PLAN, 3600, open);
    assertThat(fast.joints()).hasSize(7);
    assertThat(fast.warning()).isEmpty();
    assertThat(slow.warning().orElseThrow()).contains("will dry before it is joined");
    assertThat(slow.longestWait()).isCloseTo(12 * fast.longestWait(), within(1e-6));
    double loadsASector = PLAN.quantity().dryMass().likely() / PLAN.batch().dryMass() / 7;
    assertThat(fast.longestWait())
        .as("a joint waits for three sectors, its own two and the one between")
        .isCloseTo(3 * loadsASector * 300, within(0.02 * fast.longestWait()));
  }

  @Test
  void aCentreThatCannotSeeAnEdgeIsRefused() {
    Footprint l = Footprint.of(new double[] {0, 4, 4, 1, 1, 0}, new double[] {0, 0, 1, 1, 5, 5});
    assertThatThrownBy(() -> SectorPlan.of(l, Vector2D.of(3, 0.5), 0, 1))
        .hasMessageContaining("cannot be screeded from it");
    assertThatThrownBy(() -> SectorPlan.of(Demo.FOOTPRINT, 7)).hasMessageContaining("door edge");
    SectorPlan corner = SectorPlan.of(l, Vector2D.of(0.5, 0.5), 0, 1);
    assertThat(corner.area()).isCloseTo(l.area(), within(1e-9));
  }
}
