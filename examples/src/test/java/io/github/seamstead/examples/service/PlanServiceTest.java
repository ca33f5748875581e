package io.github.seamstead.examples.service;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.api.results.Results;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(240)
class PlanServiceTest {

  private static final Path JOBS = Path.of("jobs");
  private final HttpClient client = HttpClient.newHttpClient();
  private PlanService service;

  @BeforeEach
  void start() throws IOException {
    service = new PlanService(0, 2);
  }

  @AfterEach
  void stop() {
    service.close();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + service.port() + path))
        .timeout(Duration.ofSeconds(60));
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws Exception {
    return client.send(request.build(), BodyHandlers.ofString());
  }

  private String post(String query, String job) throws Exception {
    HttpResponse<String> answer =
        send(request("/plans" + query).POST(BodyPublishers.ofString(job)));
    assertThat(answer.statusCode()).isIn(200, 202);
    return answer.headers().firstValue("Location").orElseThrow();
  }

  private static JsonNode json(HttpResponse<String> answer) throws IOException {
    return new ObjectMapper().readTree(answer.body());
  }

  private HttpResponse<String> done(String place) throws Exception {
    HttpResponse<String> answer = send(request(place).GET());
    while (answer.statusCode() == 202) {
      Thread.sleep(50);
      answer = send(request(place).GET());
    }
    return answer;
  }

  @Test
  void plansOfSeveralUsersRunAtOnceAndEachIsItsOwn() throws Exception {
    List<Path> jobs = List.of(JOBS.resolve("class-model.json"), JOBS.resolve("clay-bank.json"));
    List<String> places = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      places.add(post("?seconds=60", Files.readString(jobs.get(i % 2))));
    }
    assertThat(places).doesNotHaveDuplicates();
    for (int i = 0; i < places.size(); i++) {
      Results alone =
          Results.of(JobPlanner.plan(JobReader.read(jobs.get(i % 2)), PlanOptions.defaults()));
      HttpResponse<String> answer = done(places.get(i));
      assertThat(answer.statusCode()).isEqualTo(200);
      assertThat(Results.parse(answer.body())).isEqualTo(alone);
    }
  }

  /** With one worker the second plan waits for the first, so it is stopped before it can end. */
  @Test
  void aPlanIsStoppedAndItsResultsSayIt() throws Exception {
    service.close();
    service = new PlanService(0, 1);
    String job = Files.readString(JOBS.resolve("seed-loft.json"));
    String first = post("?effort=9&seconds=120", job);
    String second = post("", job);
    assertThat(send(request(second).DELETE()).statusCode()).isEqualTo(202);
    assertThat(send(request(first).DELETE()).statusCode()).isIn(200, 202);
    Results results = Results.parse(done(second).body());
    assertThat(results.notPlanned())
        .anySatisfy(
            left ->
                assertThat(left.reason()).isEqualTo("the run was cancelled before it was done"));
    assertThat(done(first).statusCode()).isEqualTo(200);
  }

  @Test
  void aTimeLimitEndsTheSearchOfALayout() throws Exception {
    String place =
        post("?effort=9&seconds=0.001", Files.readString(JOBS.resolve("seed-loft.json")));
    Results results = Results.parse(done(place).body());
    assertThat(results.root().one("layout").findText("stopped")).hasValue("time_limit");
  }

  @Test
  void aWrongJobIsAnsweredWithAllItsFaults() throws Exception {
    HttpResponse<String> answer =
        send(
            request("/plans")
                .POST(
                    BodyPublishers.ofString(
                        "{\"seamstead\": 2, \"frame\": {\"sides\": 2}, \"flor\": {}}")));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(json(answer).path("faults").findValuesAsText("path"))
        .contains("$.frame.sides", "$.flor");
    String good = Files.readString(JOBS.resolve("class-model.json"));
    HttpResponse<String> tooMuch =
        send(request("/plans?effort=1000").POST(BodyPublishers.ofString(good)));
    assertThat(tooMuch.statusCode()).isEqualTo(400);
    assertThat(tooMuch.body()).contains("effort");
  }

  @Test
  void whatIsNotThereIsNotFound() throws Exception {
    assertThat(send(request("/plans/7").GET()).statusCode()).isEqualTo(404);
    assertThat(send(request("/plans/7").DELETE()).statusCode()).isEqualTo(404);
    assertThat(send(request("/plans").GET()).statusCode()).isEqualTo(404);
  }
}
