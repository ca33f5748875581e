package io.github.seamstead.api.job;

import io.github.seamstead.assembly.ring.Facing;
import java.util.List;

/** The shapes of the joinlog section. */
final class JoinLogShapes {

  private JoinLogShapes() {}

  static Key<Facing> facing(Shape<?> s) {
    return s.or(
        "facing",
        Kinds.constant(Facing.class),
        "how the pieces lay; good sides together if left out",
        Facing.GOOD_TOGETHER);
  }

  static Key<List<String>> marks(Shape<?> s) {
    return s.optional(
        "marks",
        Kinds.list(Kinds.text(), 2, 2),
        "the joint names read on the two edges, with their check marks");
  }

  static Shape<JoinEntry> joinEntry() {
    Shape<JoinEntry> s = Shape.of(JoinEntry.class, "one seam made or undone");
    Key<List<String>> join =
        s.optional(
            "join", Kinds.list(Kinds.text(), 2, 2), "the two edges joined, such as 3R and 4L");
    Key<List<String>> undo =
        s.optional("undo", Kinds.list(Kinds.text(), 2, 2), "the two edges taken apart again");
    Key<Facing> facing = facing(s);
    Key<List<String>> marks = marks(s);
    s.rule(
        (v, faults) -> {
          if (v.has(join) == v.has(undo)) {
            faults.note(
                "",
                v.has(join) ? "both join and undo" : "neither join nor undo",
                "must state one of: join, undo");
          }
        });
    return s.makes(v -> new JoinEntry(v.find(join), v.find(undo), v.get(facing), v.find(marks)));
  }

  static Shape<JoinLogDocument> joinLogDocument() {
    Shape<JoinLogDocument> s =
        Shape.of(JoinLogDocument.class, "what the crew joined so far, in order");
    s.required(
        "seamstead",
        Forms.version(),
        "version of the form of the document; the newest is " + Forms.NEWEST);
    Key<List<JoinEntry>> log =
        s.required(
            "log", Kinds.list(joinEntry(), 1, 5000), "seams in the order in which they were made");
    return s.makes(v -> new JoinLogDocument(Forms.NEWEST, v.get(log)));
  }
}
