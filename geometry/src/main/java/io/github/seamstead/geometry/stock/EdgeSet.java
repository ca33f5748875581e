package io.github.seamstead.geometry.stock;

import java.util.AbstractSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.SortedSet;
import org.jspecify.annotations.Nullable;

/** A few edges of a stock item in ascending order, once each. Immutable. */
@SuppressWarnings("JdkObsolete") // A stock item has shown its edges as this type from the start.
final class EdgeSet extends AbstractSet<Integer> implements SortedSet<Integer> {

  private final List<Integer> edges;

  EdgeSet(Collection<Integer> edges) {
    this.edges = edges.stream().sorted().distinct().toList();
  }

  @Override
  public Iterator<Integer> iterator() {
    return edges.iterator();
  }

  @Override
  public int size() {
    return edges.size();
  }

  @Override
  public @Nullable Comparator<? super Integer> comparator() {
    return null;
  }

  @Override
  public SortedSet<Integer> subSet(Integer from, Integer to) {
    if (from > to) {
      throw new IllegalArgumentException("given edges from " + from + " to " + to);
    }
    return new EdgeSet(edges.stream().filter(edge -> edge >= from && edge < to).toList());
  }

  @Override
  public SortedSet<Integer> headSet(Integer to) {
    return new EdgeSet(edges.stream().filter(edge -> edge < to).toList());
  }

  @Override
  public SortedSet<Integer> tailSet(Integer from) {
    return new EdgeSet(edges.stream().filter(edge -> edge >= from).toList());
  }

  @Override
  public Integer first() {
    if (edges.isEmpty()) {
      throw new NoSuchElementException("no edge is reinforced");
    }
    return edges.get(0);
  }

  @Override
  public Integer last() {
    if (edges.isEmpty()) {
      throw new NoSuchElementException("no edge is reinforced");
    }
    return edges.get(edges.size() - 1);
  }
}
