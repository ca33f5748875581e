package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.seamstead.assembly.ring.Facing;
import io.github.seamstead.materials.soil.BendTest;
import io.github.seamstead.materials.soil.SqueezeTest;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written is read again, number by number. */
class DiaryProperties {

  private static Arbitrary<Double> from(double least, double most) {
    return Arbitraries.doubles().between(least, most).ofScale(9);
  }

  private static Arbitrary<String> id() {
    return Arbitraries.strings().alpha().numeric().ofMinLength(1).ofMaxLength(8);
  }

  private static Arbitrary<String> text() {
    return Arbitraries.strings()
        .ofMinLength(1)
        .ofMaxLength(20)
        .filter(s -> !s.isBlank())
        .filter(s -> s.chars().noneMatch(c -> Character.isSurrogate((char) c)));
  }

  private static Arbitrary<List<String>> names() {
    return text().list().ofMinSize(1).ofMaxSize(4);
  }

  private static Arbitrary<DiaryEntry> cloth() {
    Arbitrary<DiaryEntry.ClothPart> part =
        Combinators.combine(
                id(),
                Arbitraries.integers().between(1, 9),
                from(-3, 12),
                from(-3, 12),
                from(0.001, 5),
                from(0.001, 5))
            .as(DiaryEntry.ClothPart::new);
    Arbitrary<DiaryEntry.CutPlace> place =
        Combinators.combine(
                id(),
                Arbitraries.integers().between(1, 9),
                from(-3, 12),
                from(-3, 12),
                from(-6, 6),
                Arbitraries.of(true, false))
            .as(DiaryEntry.CutPlace::new);
    return Arbitraries.oneOf(
        names().map(n -> new DiaryEntry.Cut(n, Optional.empty())),
        Combinators.combine(text(), place)
            .as((n, p) -> new DiaryEntry.Cut(List.of(n), Optional.of(p))),
        Combinators.combine(names(), text().optional()).as(DiaryEntry.Spoiled::new),
        names().map(DiaryEntry.Found::new),
        part.map(DiaryEntry.ClothUsed::new),
        part.map(DiaryEntry.ClothTorn::new),
        Combinators.combine(id(), from(0.5, 9), from(0.5, 3), Arbitraries.of(SheetEdge.values()))
            .as(
                (i, l, w, e) ->
                    new DiaryEntry.ClothBought(
                        Optional.of(
                            new StockSheet(
                                i,
                                l,
                                w,
                                List.of(),
                                2,
                                List.of(),
                                List.of(e),
                                List.of(),
                                List.of(),
                                Optional.of(3.5),
                                2)),
                        Optional.empty())));
  }

  private static Arbitrary<DiaryEntry> seams() {
    Arbitrary<List<String>> edges = text().list().ofSize(2);
    return Arbitraries.oneOf(
        Combinators.combine(edges, Arbitraries.of(Facing.values()), edges.optional())
            .as(DiaryEntry.Joined::new),
        edges.map(DiaryEntry.Undone::new),
        from(1, 5000).list().ofMinSize(1).ofMaxSize(5).map(DiaryEntry.PegsPulled::new));
  }

  private static Arbitrary<DiaryEntry> floor() {
    return Arbitraries.oneOf(
        Combinators.combine(text(), Arbitraries.integers().between(1, 9), from(0.1, 9).optional())
            .as((l, s, n) -> new DiaryEntry.Laid(l, Optional.of(s), n)),
        text().map(l -> new DiaryEntry.Laid(l, Optional.empty(), Optional.empty())),
        Combinators.combine(id(), from(1, 5000)).as(DiaryEntry.Delivered::new),
        Combinators.combine(id(), text(), from(0.005, 0.15), from(0.01, 0.9), from(0.001, 0.1))
            .as(DiaryEntry.TileMade::new),
        Combinators.combine(id(), from(0.1, 90)).as(DiaryEntry.TileWeighed::new),
        Combinators.combine(id(), from(0.0002, 0.09)).as(DiaryEntry.TileCracked::new),
        Combinators.combine(
                from(-30, 50), from(0, 1), from(0.02, 20), Arbitraries.integers().between(1, 60))
            .as(DiaryEntry.WeatherSeen::new),
        text().map(DiaryEntry.Note::new));
  }

  private static Arbitrary<DiaryEntry> evidence() {
    Arbitrary<DiaryEntry> measures =
        Combinators.combine(from(0.1, 20), from(0.01, 1.5))
            .as(
                (side, slope) -> {
                  Map<FrameMeasure, Double> m = new EnumMap<>(FrameMeasure.class);
                  m.put(FrameMeasure.BASE_SIDE, side);
                  m.put(FrameMeasure.FACE_SLOPE, slope);
                  return new DiaryEntry.Retaken(
                      Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(m));
                });
    Arbitrary<DiaryEntry> distance =
        from(0.2, 9)
            .map(
                d ->
                    new DiaryEntry.Retaken(
                        Optional.of(
                            new TapedDistance(
                                "B1",
                                "T2",
                                new WrittenQuantity(d, Optional.empty(), d + " m"),
                                false)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    Arbitrary<DiaryEntry> soil =
        Combinators.combine(
                id(),
                Arbitraries.of(SqueezeTest.Outcome.values()),
                Arbitraries.of(BendTest.Outcome.values()).optional(),
                from(0, 0.15),
                from(0, 0.5).optional())
            .as(
                (i, squeeze, bend, ribbon, moisture) ->
                    new DiaryEntry.SoilTested(
                        new SoilTests(
                            i,
                            Optional.of(squeeze),
                            Optional.empty(),
                            Optional.empty(),
                            bend,
                            Optional.of(ribbon),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(new ShrinkageBar(0.14, 0.011)),
                            moisture)));
    return Arbitraries.oneOf(measures, distance, soil);
  }

  @Provide
  Arbitrary<Diary> diaries() {
    Arbitrary<DiaryEntry> entries = Arbitraries.oneOf(cloth(), seams(), floor(), evidence());
    Arbitrary<DiaryLine> lines =
        Combinators.combine(
                Arbitraries.integers().between(0, 4000),
                Arbitraries.integers().between(0, 1439).optional(),
                entries)
            .as(
                (day, minute, entry) ->
                    new DiaryLine(
                        LocalDate.of(2030, 1, 1).plusDays(day),
                        minute.map(m -> LocalTime.of(m / 60, m % 60)),
                        entry));
    return Combinators.combine(
            text().optional(),
            Arbitraries.integers().between(1, 9).optional(),
            Arbitraries.integers().between(0, 999).optional(),
            lines.list().ofMinSize(1).ofMaxSize(12))
        .as((job, effort, seed, all) -> new Diary(job, effort, seed, all, Map.of()));
  }

  @Property(seed = "20310519", tries = 300)
  void whatIsWrittenIsReadAgain(@ForAll("diaries") Diary diary) {
    String text = DiaryWriter.text(diary);
    Diary read = DiaryReader.parse(text.getBytes(StandardCharsets.UTF_8));
    assertThat(read.lines()).isEqualTo(diary.lines());
    assertThat(new Diary(read.job(), read.effort(), read.seed(), read.lines(), Map.of()))
        .isEqualTo(diary);
    assertThat(DiaryWriter.text(read)).isEqualTo(text);
  }
}
