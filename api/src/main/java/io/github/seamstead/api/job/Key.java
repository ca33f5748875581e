package io.github.seamstead.api.job;

import org.jspecify.annotations.Nullable;

/**
 * A key of an object in a document, with the kind of its value. Equal only to itself.
 *
 * @param <T> what its value is read as
 */
final class Key<T> {

  private final String name;
  private final Kind<T> kind;
  private final String meaning;
  private final boolean must;
  private final @Nullable T fallback;
  private final String shown;
  private final String ground;

  Key(
      String name,
      Kind<T> kind,
      String meaning,
      boolean must,
      @Nullable T fallback,
      String shown,
      String ground) {
    this.name = name;
    this.kind = kind;
    this.meaning = meaning;
    this.must = must;
    this.fallback = fallback;
    this.shown = shown;
    this.ground = ground;
  }

  String name() {
    return name;
  }

  Kind<T> kind() {
    return kind;
  }

  String meaning() {
    return meaning;
  }

  boolean must() {
    return must;
  }

  /** The value taken when the key is left out, if any. */
  @Nullable T fallback() {
    return fallback;
  }

  /** The value taken when the key is left out, in words; empty if none is assumed. */
  String shown() {
    return shown;
  }

  /** Why that value is taken; empty if none is assumed. */
  String ground() {
    return ground;
  }
}
