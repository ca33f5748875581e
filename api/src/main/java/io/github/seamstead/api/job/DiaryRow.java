package io.github.seamstead.api.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/** One line of a diary as the document writes it: a day, and one key that says what happened. */
record DiaryRow(
    LocalDate date,
    Optional<LocalTime> time,
    Optional<DiaryEntry.Cut> cut,
    Optional<DiaryEntry.Spoiled> spoiled,
    Optional<DiaryEntry.Found> found,
    Optional<DiaryEntry.ClothPart> clothUsed,
    Optional<DiaryEntry.ClothPart> clothTorn,
    Optional<DiaryEntry.ClothBought> clothBought,
    Optional<DiaryEntry.Delivered> delivered,
    Optional<DiaryEntry.Joined> joined,
    Optional<DiaryEntry.Undone> undone,
    Optional<DiaryEntry.Laid> laid,
    Optional<DiaryEntry.TileMade> tileMade,
    Optional<DiaryEntry.TileWeighed> tileWeighed,
    Optional<DiaryEntry.TileCracked> tileCracked,
    Optional<SoilTests> soilTested,
    Optional<DiaryEntry.TrialMade> trialMade,
    Optional<DiaryEntry.Retaken> retaken,
    Optional<DiaryEntry.PegsPulled> pegsPulled,
    Optional<DiaryEntry.WeatherSeen> weather,
    Optional<String> note) {

  /** The entry that the row holds; it has exactly one. */
  DiaryLine line() {
    Optional<DiaryEntry> entry =
        Optional.<DiaryEntry>empty()
            .or(() -> cut)
            .or(() -> spoiled)
            .or(() -> found)
            .or(() -> clothUsed.map(DiaryEntry.ClothUsed::new))
            .or(() -> clothTorn.map(DiaryEntry.ClothTorn::new))
            .or(() -> clothBought)
            .or(() -> delivered)
            .or(() -> joined)
            .or(() -> undone)
            .or(() -> laid)
            .or(() -> tileMade)
            .or(() -> tileWeighed)
            .or(() -> tileCracked)
            .or(() -> soilTested.map(DiaryEntry.SoilTested::new))
            .or(() -> trialMade)
            .or(() -> retaken)
            .or(() -> pegsPulled)
            .or(() -> weather)
            .or(() -> note.map(DiaryEntry.Note::new));
    return new DiaryLine(date, time, entry.orElseThrow());
  }

  /** Writes a line as a row. */
  static DiaryRow of(DiaryLine line) {
    DiaryEntry e = line.entry();
    return new DiaryRow(
        line.date(),
        line.time(),
        as(DiaryEntry.Cut.class, e),
        as(DiaryEntry.Spoiled.class, e),
        as(DiaryEntry.Found.class, e),
        as(DiaryEntry.ClothUsed.class, e).map(DiaryEntry.ClothUsed::part),
        as(DiaryEntry.ClothTorn.class, e).map(DiaryEntry.ClothTorn::part),
        as(DiaryEntry.ClothBought.class, e),
        as(DiaryEntry.Delivered.class, e),
        as(DiaryEntry.Joined.class, e),
        as(DiaryEntry.Undone.class, e),
        as(DiaryEntry.Laid.class, e),
        as(DiaryEntry.TileMade.class, e),
        as(DiaryEntry.TileWeighed.class, e),
        as(DiaryEntry.TileCracked.class, e),
        as(DiaryEntry.SoilTested.class, e).map(DiaryEntry.SoilTested::tests),
        as(DiaryEntry.TrialMade.class, e),
        as(DiaryEntry.Retaken.class, e),
        as(DiaryEntry.PegsPulled.class, e),
        as(DiaryEntry.WeatherSeen.class, e),
        as(DiaryEntry.Note.class, e).map(DiaryEntry.Note::text));
  }

  private static <T extends DiaryEntry> Optional<T> as(Class<T> type, DiaryEntry entry) {
    return type.isInstance(entry) ? Optional.of(type.cast(entry)) : Optional.empty();
  }
}
