package io.github.seamstead.api.chapter.soil;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.Run;
import io.github.seamstead.api.job.MixSpec;
import io.github.seamstead.materials.soil.Suitability;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Why soils give no mixes: each reason once, with all mixes that it stops. */
final class MixRefusals {

  private final Map<String, List<String>> mixesByReason = new LinkedHashMap<>();

  void add(MixSpec spec, SoilPart soil, Suitability judged) {
    String reason =
        soil.sample().id()
            + " as "
            + judged.use().label()
            + ": "
            + judged.verdict().label()
            + ". "
            + judged.reasons().get(0);
    mixesByReason.computeIfAbsent(reason, none -> new ArrayList<>()).add(spec.id());
  }

  void tell(Run run) {
    mixesByReason.forEach(
        (reason, mixes) ->
            run.unmet(
                Chapter.MIX,
                String.join(", ", mixes)
                    + (mixes.size() == 1 ? ": no mix" : ": no mixes")
                    + " and no orders. "
                    + reason));
  }
}
