package io.github.seamstead.api.plan;

import io.github.seamstead.api.diary.PlanChanges.Kind;
import io.github.seamstead.api.diary.PlanChanges.Reason;
import io.github.seamstead.api.job.DiaryEntry;
import io.github.seamstead.api.job.DiaryLine;
import io.github.seamstead.shared.quantity.Numbers;
import java.util.List;
import java.util.Optional;

/** Says a line of a diary in words, and what it can change. */
final class DiaryWords {

  private static final List<Kind> CLOTH = List.of(Kind.PIECE, Kind.UNMET);
  private static final List<Kind> SEAMS =
      List.of(Kind.SEAM, Kind.ORDER, Kind.HOURS, Kind.DATE, Kind.UNMET);
  private static final List<Kind> FLOOR = List.of(Kind.ORDER, Kind.HOURS, Kind.DATE, Kind.UNMET);
  private static final List<Kind> DRYING = List.of(Kind.DATE, Kind.UNMET);

  private DiaryWords() {}

  static Reason reason(DiaryLine line) {
    return new Reason(line.date() + ": " + words(line.entry()), touches(line.entry()));
  }

  private static String words(DiaryEntry entry) {
    return cloth(entry).or(() -> seam(entry)).or(() -> floor(entry)).orElseGet(() -> other(entry));
  }

  private static Optional<String> cloth(DiaryEntry entry) {
    if (entry instanceof DiaryEntry.Cut cut) {
      return Optional.of("cut " + String.join(", ", cut.pieces()));
    }
    if (entry instanceof DiaryEntry.Spoiled spoiled) {
      return Optional.of(
          "spoiled "
              + String.join(", ", spoiled.pieces())
              + spoiled.why().map(w -> " (" + w + ")").orElse(""));
    }
    if (entry instanceof DiaryEntry.Found found) {
      return Optional.of("found " + String.join(", ", found.pieces()));
    }
    if (entry instanceof DiaryEntry.ClothUsed used) {
      return Optional.of("cloth used: " + part(used.part()));
    }
    if (entry instanceof DiaryEntry.ClothTorn torn) {
      return Optional.of("cloth torn: " + part(torn.part()));
    }
    if (entry instanceof DiaryEntry.ClothBought bought) {
      return Optional.of(
          "cloth came: "
              + bought
                  .sheet()
                  .map(s -> s.count() + " of " + s.id())
                  .or(() -> bought.roll().map(r -> r.count() + " of " + r.id()))
                  .orElse(""));
    }
    return Optional.empty();
  }

  private static String part(DiaryEntry.ClothPart p) {
    return Numbers.fixed(p.width(), 2)
        + " m by "
        + Numbers.fixed(p.height(), 2)
        + " m of "
        + p.stock()
        + " number "
        + p.copy();
  }

  private static Optional<String> seam(DiaryEntry entry) {
    if (entry instanceof DiaryEntry.Joined joined) {
      return Optional.of("joined " + String.join(" to ", joined.edges()));
    }
    if (entry instanceof DiaryEntry.Undone undone) {
      return Optional.of("undone " + String.join(" from ", undone.edges()));
    }
    return Optional.empty();
  }

  private static Optional<String> floor(DiaryEntry entry) {
    if (entry instanceof DiaryEntry.Laid laid) {
      return Optional.of(
          "laid "
              + laid.layer()
              + laid.sector().map(s -> ", sector " + s).orElse("")
              + laid.loads().map(l -> ", " + Numbers.significant(l, 3) + " loads").orElse(""));
    }
    if (entry instanceof DiaryEntry.Delivered came) {
      return Optional.of(
          Numbers.fixed(came.mass(), 0) + " kg of " + came.material() + " delivered");
    }
    if (entry instanceof DiaryEntry.TileMade made) {
      return Optional.of("tile " + made.tile() + " made of " + made.layer());
    }
    if (entry instanceof DiaryEntry.TileWeighed weighed) {
      return Optional.of(
          "tile " + weighed.tile() + " weighed, " + Numbers.fixed(weighed.mass(), 3) + " kg");
    }
    if (entry instanceof DiaryEntry.TileCracked cracked) {
      return Optional.of(
          "tile "
              + cracked.tile()
              + " cracked by "
              + Numbers.fixed(cracked.crack() * 1000, 1)
              + " mm");
    }
    return Optional.empty();
  }

  private static String other(DiaryEntry entry) {
    if (entry instanceof DiaryEntry.SoilTested tested) {
      return "tests of " + tested.tests().soil();
    }
    if (entry instanceof DiaryEntry.TrialMade trial) {
      return "a trial sample of " + trial.mix();
    }
    if (entry instanceof DiaryEntry.Retaken) {
      return "a reading of the frame taken again";
    }
    if (entry instanceof DiaryEntry.PegsPulled pegs) {
      return pegs.pulls().size() + " pegs pulled";
    }
    if (entry instanceof DiaryEntry.WeatherSeen seen) {
      return "air of "
          + Numbers.fixed(seen.humidity() * 100, 0)
          + " % at "
          + Numbers.fixed(seen.temperature(), 0)
          + " degC"
          + (seen.days() > 1 ? " for " + seen.days() + " days" : "");
    }
    return entry instanceof DiaryEntry.Note note ? note.text() : "a line";
  }

  private static List<Kind> touches(DiaryEntry entry) {
    if (cloth(entry).isPresent()) {
      return CLOTH;
    }
    if (seam(entry).isPresent()) {
      return SEAMS;
    }
    if (entry instanceof DiaryEntry.Retaken) {
      return List.of(Kind.values());
    }
    if (entry instanceof DiaryEntry.Note) {
      return List.of();
    }
    boolean drying =
        entry instanceof DiaryEntry.TileMade
            || entry instanceof DiaryEntry.TileWeighed
            || entry instanceof DiaryEntry.TileCracked
            || entry instanceof DiaryEntry.WeatherSeen;
    return drying ? DRYING : FLOOR;
  }
}
