package io.github.seamstead.api.jackson;

import com.fasterxml.jackson.core.Version;
import com.fasterxml.jackson.core.util.VersionUtil;
import com.fasterxml.jackson.databind.Module;
import com.fasterxml.jackson.databind.module.SimpleDeserializers;
import com.fasterxml.jackson.databind.module.SimpleSerializers;
import io.github.seamstead.api.Seamstead;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.JobWriter;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.results.Results;
import io.github.seamstead.api.results.ResultsJson;

/**
 * Teaches an {@code ObjectMapper} to write and read a {@link Job} as its document and {@link
 * Results} as theirs, also within objects of your own. A {@link JobPlan} is written as its results.
 *
 * <p>A job that has faults is a {@code JsonMappingException} whose cause is the {@code
 * JobFaultsException} with all of them.
 *
 * <pre>{@code
 * ObjectMapper mapper = new ObjectMapper().registerModule(new SeamsteadModule());
 * Job job = mapper.readValue(Files.readString(Path.of("jobs/class-model.json")), Job.class);
 * mapper.readValue(mapper.writeValueAsString(job), Job.class).equals(job); // true
 * }</pre>
 */
public final class SeamsteadModule extends Module {

  /** Makes the module. */
  public SeamsteadModule() {}

  @Override
  public String getModuleName() {
    return "Seamstead";
  }

  @Override
  public Version version() {
    return VersionUtil.parseVersion(Seamstead.version(), "io.github.seamstead", "seamstead-api");
  }

  @Override
  public void setupModule(SetupContext context) {
    SimpleSerializers serializers = new SimpleSerializers();
    serializers.addSerializer(Job.class, new DataWriter<>(Job.class, JobWriter::text));
    serializers.addSerializer(Results.class, new DataWriter<>(Results.class, Results::text));
    serializers.addSerializer(JobPlan.class, new DataWriter<>(JobPlan.class, ResultsJson::text));
    context.addSerializers(serializers);
    SimpleDeserializers deserializers = new SimpleDeserializers();
    deserializers.addDeserializer(Job.class, new DataReader<>(JobReader::parse));
    deserializers.addDeserializer(Results.class, new DataReader<>(Results::parse));
    context.addDeserializers(deserializers);
  }
}
