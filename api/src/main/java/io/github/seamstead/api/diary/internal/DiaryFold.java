package io.github.seamstead.api.diary.internal;

import io.github.seamstead.api.diary.CutPiece;
import io.github.seamstead.api.diary.Done;
import io.github.seamstead.api.diary.PlannedPiece;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.DiaryLine;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.geometry.pattern.PatternPiece;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a diary line by line into what is done, beside the plan by which each day worked, and
 * gathers every contradiction. Not thread-safe.
 */
public final class DiaryFold {

  private final Diary diary;
  private final Contradictions faults;
  private final List<JobFault> head = new ArrayList<>();
  private final ClothLedger cloth;
  private final SeamLedger seams;
  private final FloorLedger floor;
  private final EvidenceCheck evidence;
  private final List<Double> pulls = new ArrayList<>();
  private PlanThen then;
  private Optional<LocalDate> last = Optional.empty();

  /**
   * Begins at the first line.
   *
   * @param job the job by which the first day worked
   * @param diary the diary
   * @param first the plan by which it worked
   */
  public DiaryFold(Job job, Diary diary, PlanThen first) {
    this.diary = diary;
    this.then = first;
    this.faults = new Contradictions(diary);
    JobDocument document = job.document();
    cloth = new ClothLedger(faults, document.stock());
    seams = new SeamLedger(faults);
    floor = new FloorLedger(faults, document);
    evidence = new EvidenceCheck(faults, document);
    name(document);
  }

  private void name(JobDocument document) {
    Optional<String> named = document.site().map(Site::name);
    if (diary.job().isPresent() && !diary.job().equals(named)) {
      head.add(
          new JobFault(
              "$.job",
              diary.textLines().getOrDefault("$.job", 0),
              "\"" + diary.job().get() + "\"",
              "must be the name of the job"
                  + named.map(n -> ": \"" + n + "\"").orElse(", which states none")));
    }
  }

  /**
   * Reads one line.
   *
   * @param index which line, counted from 0
   */
  public void read(int index) {
    faults.at(index);
    DiaryLine line = diary.lines().get(index);
    if (last.isPresent() && line.date().isBefore(last.get())) {
      faults.note(
          "date", line.date() + " after " + last.get(), "must not be before the line above it");
    } else {
      last = Optional.of(line.date());
    }
    cloth(line.date(), line.entry());
    floor(line, line.entry());
    evidence(line.entry());
  }

  private void cloth(LocalDate date, DiaryEntry entry) {
    if (entry instanceof DiaryEntry.Cut cut) {
      cloth.cut(date, cut, then);
    } else if (entry instanceof DiaryEntry.Spoiled spoiled) {
      cloth.spoiled(spoiled, seams, then);
    } else if (entry instanceof DiaryEntry.Found found) {
      cloth.found(found, then);
    } else if (entry instanceof DiaryEntry.ClothUsed used) {
      cloth.part("clothUsed", used.part(), false);
    } else if (entry instanceof DiaryEntry.ClothTorn torn) {
      cloth.part("clothTorn", torn.part(), true);
    } else if (entry instanceof DiaryEntry.ClothBought bought) {
      cloth.bought(bought);
    } else if (entry instanceof DiaryEntry.Joined joined) {
      seams.joined(joined, cloth.cut(), then);
    } else if (entry instanceof DiaryEntry.Undone undone) {
      seams.undone(undone, then);
    }
  }

  private void floor(DiaryLine line, DiaryEntry entry) {
    LocalDateTime when = line.date().atTime(line.time().orElse(LocalTime.NOON));
    if (entry instanceof DiaryEntry.Laid laid) {
      floor.laid(line.date(), laid, then);
    } else if (entry instanceof DiaryEntry.TileMade made) {
      floor.tileMade(when, made);
    } else if (entry instanceof DiaryEntry.TileWeighed weighed) {
      floor.tileWeighed(when, weighed);
    } else if (entry instanceof DiaryEntry.TileCracked cracked) {
      floor.tileCracked(cracked);
    } else if (entry instanceof DiaryEntry.Delivered delivered) {
      floor.delivered(delivered);
    } else if (entry instanceof DiaryEntry.WeatherSeen seen) {
      floor.weather(line.date(), seen);
    }
  }

  private void evidence(DiaryEntry entry) {
    if (entry instanceof DiaryEntry.SoilTested tested) {
      evidence.soil(tested);
    } else if (entry instanceof DiaryEntry.TrialMade trial) {
      evidence.trial(trial);
    } else if (entry instanceof DiaryEntry.Retaken retaken) {
      evidence.retaken(retaken);
      cloth.redrawn();
    } else if (entry instanceof DiaryEntry.PegsPulled pulled) {
      pulls.addAll(pulled.pulls());
    }
  }

  /**
   * Tells whether a plan made now would draw or lay pieces otherwise than the plan before.
   *
   * @return true if a line since then may have changed it
   */
  public boolean isStale() {
    return cloth.isMoved();
  }

  /**
   * Takes over a plan that was made of what is done so far.
   *
   * @param plan the plan
   */
  public void planned(PlanThen plan) {
    then = plan;
    cloth.planned();
  }

  /**
   * Gives every contradiction found so far.
   *
   * @return the faults in the order of the diary
   */
  public List<JobFault> faults() {
    List<JobFault> all = new ArrayList<>(head);
    all.addAll(faults.faults());
    return all;
  }

  /**
   * Gives what is done so far.
   *
   * @return the fixed part of the next plan
   */
  public Done done() {
    Map<String, PlannedPiece> planned = new LinkedHashMap<>();
    then.pieces()
        .forEach(
            (name, piece) ->
                piece
                    .place()
                    .ifPresent(
                        place -> planned.put(name, new PlannedPiece(piece.drawn().cut(), place))));
    return new Done(
        last,
        cloth.cut(),
        cloth.panels(),
        trims(),
        then.panels(),
        planned,
        cloth.lost(),
        cloth.spoiled(),
        seams.log(),
        floor.laid(),
        floor.tiles(),
        floor.weather(),
        floor.delivered(),
        pulls);
  }

  private Map<String, PatternPiece> trims() {
    Map<String, PatternPiece> trims = new LinkedHashMap<>();
    for (CutPiece piece : cloth.cut().values()) {
      if (piece.face().isEmpty()) {
        trims.putIfAbsent(piece.drawn().label(), piece.drawn());
      }
    }
    return trims;
  }
}
