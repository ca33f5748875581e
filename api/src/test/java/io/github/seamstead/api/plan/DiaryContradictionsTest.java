package io.github.seamstead.api.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.Diary;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.testing.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a diary cannot mean is told, all of it at once, each with its line. */
class DiaryContradictionsTest {

  private static List<String> faults(String lines) {
    return faults(SmallJob.diary(lines));
  }

  private static List<String> faults(Diary diary) {
    JobFaultsException thrown =
        catchThrowableOfType(
            JobFaultsException.class,
            () -> JobPlanner.plan(SmallJob.job(), diary, PlanOptions.defaults()));
    assertThat(thrown).isNotNull();
    return thrown.faults().stream().map(JobFault::text).toList();
  }

  @Test
  void clothAndPieces() {
    List<String> faults =
        faults(
            """
            {"date": "2031-05-05", "cut": {"pieces": ["1", "9", "cap 1"]}},
            {"date": "2031-05-06", "cut": {"pieces": ["1"]}},
            {"date": "2031-05-05", "note": "a day too early"},
            {"date": "2031-05-07", "spoiled": {"pieces": ["2"]}},
            {"date": "2031-05-07", "found": {"pieces": ["1"]}},
            {"date": "2031-05-07", "clothUsed":
              {"stock": "tarp", "x": "3 m", "y": "0 m", "width": "2 m", "height": "1 m"}},
            {"date": "2031-05-07", "clothTorn":
              {"stock": "tarp", "copy": 4, "x": "0 m", "y": "0 m", "width": "1 m", "height": "1 m"}},
            {"date": "2031-05-07", "clothTorn":
              {"stock": "sail", "x": "0 m", "y": "0 m", "width": "1 m", "height": "1 m"}},
            {"date": "2031-05-07", "clothBought": {"sheet":
              {"id": "tarp", "length": "4 m", "width": "2 m"}}},
            {"date": "2031-05-07", "spoiled": {"pieces": ["1"]}},
            {"date": "2031-05-07", "cut": {"pieces": ["1"]}},
            {"date": "2031-05-07", "cut": {"pieces": ["2"],
              "place": {"stock": "tarp", "x": "3.5 m", "y": "0 m"}}}
            """);
    assertThat(faults)
        .anyMatch(f -> f.startsWith("$.diary[0].cut.pieces[1]") && f.contains("\"9\""))
        .anyMatch(f -> f.startsWith("$.diary[1].cut.pieces[0]") && f.contains("cut on 2031-05-05"))
        .anyMatch(f -> f.startsWith("$.diary[2].date") && f.contains("must not be before"))
        .anyMatch(f -> f.startsWith("$.diary[3].spoiled") && f.contains("not cut"))
        .anyMatch(f -> f.startsWith("$.diary[4].found") && f.contains("never written off"))
        .anyMatch(f -> f.startsWith("$.diary[5].clothUsed") && f.contains("no more cloth"))
        .anyMatch(f -> f.startsWith("$.diary[6].clothTorn.copy") && f.contains("from 1 to 3"))
        .anyMatch(f -> f.startsWith("$.diary[7].clothTorn.stock") && f.contains("tarp"))
        .anyMatch(f -> f.startsWith("$.diary[8].clothBought.sheet.id"))
        .anyMatch(f -> f.startsWith("$.diary[10].cut") && f.contains("must state place"))
        .anyMatch(f -> f.startsWith("$.diary[11].cut.place") && f.contains("no more cloth"))
        .hasSize(11)
        .allMatch(f -> f.contains("(line "));
  }

  @Test
  void seams() {
    List<String> faults =
        faults(
            """
            {"date": "2031-05-05", "cut": {"pieces": ["1", "2"]}},
            {"date": "2031-05-05", "joined": {"edges": ["1R", "2L"]}},
            {"date": "2031-05-05", "joined": {"edges": ["2R", "3L"]}},
            {"date": "2031-05-05", "joined": {"edges": ["2R", "7L"]}},
            {"date": "2031-05-06", "spoiled": {"pieces": ["2"]}}
            """);
    assertThat(faults)
        .anyMatch(f -> f.startsWith("$.diary[2].joined.edges[1]") && f.contains("panel 3"))
        .anyMatch(f -> f.startsWith("$.diary[3].joined.edges[1]") && f.contains("from 1L to 6R"))
        .anyMatch(f -> f.startsWith("$.diary[4].spoiled") && f.contains("undone before"))
        .hasSize(3);
  }

  @Test
  void floorAndTiles() {
    List<String> faults =
        faults(
            """
            {"date": "2031-05-05", "laid": {"layer": "coat", "sector": 1}},
            {"date": "2031-05-05", "laid": {"layer": "levelling"}},
            {"date": "2031-05-05", "laid": {"layer": "levelling", "sector": 2}},
            {"date": "2031-05-05", "laid": {"layer": "levelling", "sector": 3, "loads": 2}},
            {"date": "2031-05-05", "laid": {"layer": "coat", "sector": 7}},
            {"date": "2031-05-05", "laid": {"layer": "tiles"}},
            {"date": "2031-05-05", "laid": {"layer": "coat", "sector": 1, "loads": 90}},
            {"date": "2031-05-05", "delivered": {"material": "lime", "mass": "10 kg"}},
            {"date": "2031-05-05", "tileWeighed": {"tile": "t", "mass": "2 kg"}},
            {"date": "2031-05-05", "tileMade":
              {"tile": "t", "layer": "coat", "thickness": "25 mm", "area": "0.04 m2",
               "scale": "1 g"}},
            {"date": "2031-05-06", "tileWeighed": {"tile": "t", "mass": "2 kg"}},
            {"date": "2031-05-06", "tileWeighed": {"tile": "t", "mass": "1.9 kg"}},
            {"date": "2031-05-06", "weather":
              {"temperature": "18 degC", "humidity": "60 %", "airSpeed": "1 m/s"}},
            {"date": "2031-05-07", "weather":
              {"temperature": "18 degC", "humidity": "60 %", "airSpeed": "1 m/s", "days": 2}},
            {"date": "2031-05-07", "soilTested": {"soil": "bank", "ribbon": "40 mm"}},
            {"date": "2031-05-07", "retaken": {"measures": {"hipEdge": "2.3 m"}}},
            {"date": "2031-05-07", "retaken":
              {"height": {"from": "B1", "to": "B2", "rise": "1 mm"}}}
            """);
    assertThat(faults)
        .extracting(f -> f.substring(0, f.indexOf(' ')))
        .containsExactly(
            "$.diary[0].laid.layer",
            "$.diary[2].laid",
            "$.diary[3].laid",
            "$.diary[4].laid.sector",
            "$.diary[5].laid.layer",
            "$.diary[6].laid.loads",
            "$.diary[7].delivered.material",
            "$.diary[8].tileWeighed.tile",
            "$.diary[11].tileWeighed",
            "$.diary[13].weather",
            "$.diary[14].soilTested.soil",
            "$.diary[15].retaken.measures",
            "$.diary[16].retaken");
  }

  @Test
  void theHeadOfTheDiary() {
    Diary lines = SmallJob.diary("{\"date\": \"2031-05-05\", \"note\": \"begun\"}");
    Diary other =
        new Diary(
            java.util.Optional.of("Boat house"),
            java.util.Optional.of(3),
            java.util.Optional.of(2),
            lines.lines(),
            lines.textLines());
    assertThat(faults(other))
        .anyMatch(f -> f.startsWith("$.job") && f.contains("Hen house"))
        .anyMatch(f -> f.startsWith("$.effort") && f.contains("plan on with it"))
        .anyMatch(f -> f.startsWith("$.seed"))
        .hasSize(3);
  }
}
