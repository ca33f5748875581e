package io.github.seamstead.geometry.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Holds the set of edges to the platform's own sorted set. */
class EdgeSetTest {

  private static final List<Integer> EDGES = List.of(3, 0, 7, 3, 2);

  private final TreeSet<Integer> expected = new TreeSet<>(EDGES);
  private final EdgeSet set = new EdgeSet(EDGES);

  @Test
  void equalsASortedSetOfThePlatform() {
    assertThat(set).containsExactlyElementsOf(expected);
    assertThat(set.equals(expected)).isTrue();
    assertThat(expected.equals(set)).isTrue();
    assertThat(set.hashCode()).isEqualTo(expected.hashCode());
    assertThat(set.first()).isEqualTo(expected.first());
    assertThat(set.last()).isEqualTo(expected.last());
    assertThat(set.comparator()).isNull();
    for (int edge = -1; edge < 9; edge++) {
      assertThat(set.contains(edge)).isEqualTo(expected.contains(edge));
      assertThat(set.headSet(edge)).containsExactlyElementsOf(expected.headSet(edge));
      assertThat(set.tailSet(edge)).containsExactlyElementsOf(expected.tailSet(edge));
      assertThat(set.subSet(-1, edge)).containsExactlyElementsOf(expected.subSet(-1, edge));
    }
    assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> set.subSet(3, 2));
  }

  @Test
  void neverChanges() {
    assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> set.add(1));
    assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> set.remove(3));
    assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(set::clear);
  }

  @Test
  void anEmptySetHasNoEnds() {
    EdgeSet empty = new EdgeSet(List.of());
    assertThatExceptionOfType(NoSuchElementException.class).isThrownBy(empty::first);
    assertThatExceptionOfType(NoSuchElementException.class).isThrownBy(empty::last);
  }
}
