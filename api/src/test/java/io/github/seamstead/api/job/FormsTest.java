package io.github.seamstead.api.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import io.github.seamstead.api.Seamstead;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormsTest {

  private static String soil(int version, String depth) {
    return """
    {
      "seamstead": %d,
      "soils": [
        { "id": "bank", "jar": { "sandTop": "60 mm", "siltTop": "75 mm", "total": "90 mm", "%s": "180 mm" } }
      ]
    }
    """
        .formatted(version, depth);
  }

  @Test
  void bothVersionsAreReadAsTheSameJobAndTheNewestIsWritten() {
    Job first = JobReader.parse(soil(1, "fall"));
    Job second = JobReader.parse(soil(2, "waterDepth"));
    assertThat(first).isEqualTo(second);
    assertThat(first.lines()).containsKey("$.soils[0].jar.fall");
    assertThat(JobWriter.text(first)).contains("\"seamstead\": 2").contains("\"waterDepth\"");
  }

  @Test
  void aKeyOfTheOtherVersionSaysWhichVersionItNeeds() {
    assertThatThrownBy(() -> JobReader.parse(soil(1, "waterDepth")))
        .hasMessageStartingWith(
            "$.soils[0].jar.waterDepth (line 4): given the key \"waterDepth\" in version 1 of the"
                + " form; needs version 2: write \"seamstead\": 2, or call it \"fall\"");
    assertThatThrownBy(() -> JobReader.parse(soil(2, "fall")))
        .hasMessageStartingWith(
            "$.soils[0].jar.fall (line 4): given the key \"fall\" of an earlier version; must be"
                + " called \"waterDepth\" since version 2 of the form");
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 1000})
  void aLaterVersionIsTheOnlyFaultNamed(int version) {
    assertThatThrownBy(() -> JobReader.parse(soil(version, "newKey")))
        .hasMessage(
            "$.seamstead (line 2): given "
                + version
                + "; must be 1 or 2; version "
                + version
                + " of the form needs a later release of the library than "
                + Seamstead.version());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "1.5", "1e999", "\"2\"", "null"})
  void whatIsNoVersionIsAFault(String version) {
    String text = soil(1, "fall").replace("\"seamstead\": 1", "\"seamstead\": " + version);
    assertThatThrownBy(() -> JobReader.parse(text))
        .hasMessageContaining("$.seamstead (line 2)")
        .hasMessageContaining("must be a whole number from 1 to 2");
  }

  @ParameterizedTest
  @CsvSource({"1,fall,true", "2,waterDepth,true", "3,waterDepth,false", "2,depth,false"})
  void theSchemaTakesBothNames(int version, String key, boolean good) {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(JobSchema.text());
    assertThat(schema.validate(soil(version, key), InputFormat.JSON).isEmpty()).isEqualTo(good);
  }

  @Test
  void theLibraryNamesTheVersionOfItsBuild() throws IOException {
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<version>" + Seamstead.version() + "</version>");
  }
}
