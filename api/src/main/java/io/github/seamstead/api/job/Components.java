package io.github.seamstead.api.job;

/**
 * Reads components of records by name. The one place that looks at records from outside, so that
 * what is compiled for a platform without such a view can do it another way.
 */
final class Components {

  private Components() {}

  /**
   * Reads a component.
   *
   * @param value a record
   * @param name of the component
   * @return its value
   */
  static Object of(Object value, String name) {
    try {
      return value.getClass().getMethod(name).invoke(value);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(
          value.getClass().getSimpleName() + " has no component " + name, e);
    }
  }
}
