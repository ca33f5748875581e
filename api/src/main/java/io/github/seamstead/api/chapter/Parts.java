package io.github.seamstead.api.chapter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the chapters of a plan found, by the type of the part. Immutable.
 *
 * <p>A chapter that was not planned has no part. Chapters that plan several things alike (soils,
 * layers) have one part for each, in the order of the job document.
 */
public final class Parts {

  private final Map<Class<?>, List<?>> parts;

  /**
   * Keeps the parts.
   *
   * @param parts the parts of each type; each list holds values of its key's type
   */
  public Parts(Map<Class<?>, List<?>> parts) {
    Map<Class<?>, List<?>> copy = new LinkedHashMap<>();
    parts.forEach((type, list) -> copy.put(type, list.stream().map(type::cast).toList()));
    this.parts = copy;
  }

  /**
   * Gives all parts of a type.
   *
   * @param <P> the type
   * @param type the type
   * @return the parts in the order of the document; empty if none was planned
   */
  public <P> List<P> all(Class<P> type) {
    return parts.getOrDefault(type, List.of()).stream().map(type::cast).toList();
  }

  /**
   * Gives the part of a type of which there is at most one.
   *
   * @param <P> the type
   * @param type the type
   * @return the part, or the first of several; empty if none was planned
   */
  public <P> Optional<P> one(Class<P> type) {
    return all(type).stream().findFirst();
  }

  /**
   * Tells whether nothing was planned.
   *
   * @return whether there is no part at all
   */
  public boolean isEmpty() {
    return parts.values().stream().allMatch(List::isEmpty);
  }
}
