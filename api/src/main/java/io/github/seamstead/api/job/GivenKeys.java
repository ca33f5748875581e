package io.github.seamstead.api.job;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Sorts the members of an object by the keys that its shape knows, and names the others.
 *
 * @param names the keys known
 * @param former what they were called before
 */
record GivenKeys(List<String> names, FormerNames former) {

  /** Gives the members by their keys; notes unknown, former and repeated keys as faults. */
  Map<String, Json> of(Json.Obj object, String path, Walk walk) {
    Map<String, Json> given = new LinkedHashMap<>();
    Set<String> repeated = new HashSet<>();
    for (Json.Member member : object.members()) {
      String at = path + "." + member.key();
      Optional<JobFault> misnamed = former.misnamed(member, at, walk);
      if (misnamed.isPresent()) {
        walk.fault(misnamed.get());
      } else if (!names.contains(member.key()) && !former.has(member.key())) {
        if (walk.isFull()) {
          // Words for a fault that is not kept would cost more than all the reading.
          walk.dropped();
          continue;
        }
        String hint =
            Nearest.to(member.key(), names)
                .map(near -> "did you mean \"" + near + "\"? ")
                .orElse("");
        walk.fault(
            at,
            member.line(),
            "the unknown key \"" + member.key() + "\"",
            hint + "known here: " + String.join(", ", names));
      } else if (given.putIfAbsent(member.key(), member.value()) != null) {
        if (repeated.add(member.key())) {
          walk.fault(at, member.line(), "the same key twice", "must stand once in its object");
        }
      } else {
        walk.seen(at, member.value());
      }
    }
    return given;
  }
}
