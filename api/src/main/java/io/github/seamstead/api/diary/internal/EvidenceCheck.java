package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.FrameMeasure;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.SurveyReadings;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether the evidence of a diary belongs to something that the job states. */
final class EvidenceCheck {

  private final Contradictions faults;
  private final JobDocument job;

  EvidenceCheck(Contradictions faults, JobDocument job) {
    this.faults = faults;
    this.job = job;
  }

  void soil(DiaryEntry.SoilTested entry) {
    List<String> soils = job.soils().stream().map(s -> s.id()).toList();
    if (!soils.contains(entry.tests().soil())) {
      faults.unknown("soilTested.soil", "soil", entry.tests().soil(), soils);
    }
  }

  void trial(DiaryEntry.TrialMade entry) {
    List<String> mixes = job.trialMixes().stream().map(t -> t.mix()).toList();
    if (!mixes.contains(entry.mix())) {
      faults.note(
          "trialMade.mix",
          "\"" + entry.mix() + "\"",
          mixes.isEmpty()
              ? "must be a mix under trialMixes of the job; write its first sample there"
              : "must be a mix under trialMixes of the job: " + String.join(", ", mixes));
    }
  }

  void retaken(DiaryEntry.Retaken entry) {
    Optional<Frame> frame = job.frame();
    Set<FrameMeasure> stated = frame.flatMap(Frame::measures).map(m -> m.keySet()).orElse(Set.of());
    entry
        .measures()
        .ifPresent(
            m ->
                m.keySet().stream()
                    .filter(measure -> !stated.contains(measure))
                    .forEach(
                        measure ->
                            faults.unknown(
                                "retaken.measures",
                                "measure",
                                measure.word(),
                                stated.stream().map(FrameMeasure::word).sorted().toList())));
    Optional<SurveyReadings> survey = frame.flatMap(Frame::survey);
    if (survey.isEmpty() && entry.measures().isEmpty()) {
      faults.note(
          "retaken",
          "a reading of the survey",
          "must be a measure of the frame: the job has no survey");
      return;
    }
    int sides = frame.map(Frame::sides).orElse(0);
    entry.distance().ifPresent(d -> nodes("distance", List.of(d.from(), d.to()), sides));
    entry.height().ifPresent(h -> nodes("height", List.of(h.from(), h.to()), sides));
    entry.plumb().ifPresent(p -> nodes("plumb", List.of(p.hung(), p.mark(), p.towards()), sides));
  }

  private void nodes(String key, List<String> nodes, int sides) {
    for (String node : nodes) {
      boolean corner = node.startsWith("B") || node.startsWith("T");
      if (corner && Integer.parseInt(node.substring(1)) > sides) {
        faults.note(
            "retaken." + key,
            "the node " + node,
            "must be a node of the frame, which has " + sides + " sides");
      }
    }
  }
}
