package io.github.seamstead.api.job;

import java.util.Map;
import java.util.stream.Collectors;

/** The finished shapes by the record they are read as: made once, never changed after. */
final class Shapes {

  static final Shape<JobDocument> DOCUMENT = JobShapes.jobDocument();
  static final Shape<JoinLogDocument> JOIN_LOG = JoinLogShapes.joinLogDocument();

  private static final Map<Class<?>, Shape<?>> ALL =
      DOCUMENT.reachable().stream().collect(Collectors.toUnmodifiableMap(Shape::type, s -> s));

  private Shapes() {}

  /** Gives the shape of a record of the job document. */
  @SuppressWarnings("unchecked") // a shape is filed under its own type
  static <R> Shape<R> of(Class<R> type) {
    Shape<?> shape = ALL.get(type);
    if (shape == null) {
      throw new IllegalArgumentException(type.getSimpleName() + " is no part of a job document");
    }
    return (Shape<R>) shape;
  }
}
