package io.github.seamstead.page.build;

import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.job.Site;
import io.github.seamstead.api.json.JsonWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The demo jobs for the page, with the diary of those that have one. */
final class Demos {

  private Demos() {}

  static String json(Path jobs) throws IOException {
    List<Map<String, Object>> demos = new ArrayList<>();
    for (Path file : files(jobs)) {
      String name = file.getFileName().toString().replace(".json", "");
      String text = Files.readString(file);
      Map<String, Object> demo = new LinkedHashMap<>();
      demo.put("name", name);
      demo.put("title", JobReader.parse(text).document().site().map(Site::name).orElse(name));
      demo.put("job", text);
      Path diary = jobs.resolve("diaries").resolve(name + "-diary.json");
      if (Files.exists(diary)) {
        demo.put("diary", Files.readString(diary));
      }
      demos.add(demo);
    }
    return JsonWriter.text(demos);
  }

  private static List<Path> files(Path jobs) throws IOException {
    try (Stream<Path> all = Files.list(jobs)) {
      return all.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }
}
