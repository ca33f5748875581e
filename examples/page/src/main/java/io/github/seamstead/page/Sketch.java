package io.github.seamstead.page;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.PlanOptions;
import io.github.seamstead.api.chapter.Recall;
import io.github.seamstead.api.chapter.Series;
import io.github.seamstead.api.chapter.floor.FloorPart;
import io.github.seamstead.api.chapter.frame.FramePart;
import io.github.seamstead.api.chapter.soil.SoilPart;
import io.github.seamstead.api.job.Cover;
import io.github.seamstead.api.job.FaceOpening;
import io.github.seamstead.api.job.Frame;
import io.github.seamstead.api.job.Job;
import io.github.seamstead.api.job.JobDocument;
import io.github.seamstead.api.job.JobFault;
import io.github.seamstead.api.job.JobFaultsException;
import io.github.seamstead.api.job.JobReader;
import io.github.seamstead.api.json.JsonReader;
import io.github.seamstead.api.json.JsonWriter;
import io.github.seamstead.api.plan.JobPlan;
import io.github.seamstead.api.plan.JobPlanner;
import io.github.seamstead.geometry.frame.RegularPyramid;
import io.github.seamstead.materials.floor.BatchPart;
import io.github.seamstead.materials.floor.BatchPlan;
import io.github.seamstead.materials.floor.Footprint;
import io.github.seamstead.materials.soil.Texture;
import io.github.seamstead.shared.quantity.Numbers;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The numbers behind the pictures that follow while one types: cheap stages alone. */
final class Sketch {

  /** Each try leaves at least one section aside. */
  private static final int MOST_TRIES = 8;

  /** What was worked out for one key press is most often wanted for the next. */
  private static final Recall RECALL = Recall.of(50);

  private Sketch() {}

  static Map<String, Object> of(Request request) {
    Map<String, Object> said = new LinkedHashMap<>();
    Optional<Map<String, Object>> document = document(request.text("job"));
    for (int i = 0; i < MOST_TRIES && document.isPresent(); i++) {
      try {
        Job job = JobReader.parse(JsonWriter.text(document.get()));
        draw(job, said);
        return said;
      } catch (JobFaultsException e) {
        if (!leaveOut(document.get(), e.faults())) {
          return said;
        }
      }
    }
    return said;
  }

  private static Optional<Map<String, Object>> document(String text) {
    try {
      Map<String, Object> document = new LinkedHashMap<>();
      if (JsonReader.read(text) instanceof Map<?, ?> read) {
        read.forEach((key, value) -> document.put(String.valueOf(key), value));
      }
      return Optional.of(document);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Takes the sections with faults away; false if there is none to take. */
  private static boolean leaveOut(Map<String, Object> document, Collection<JobFault> faults) {
    int before = document.size();
    for (JobFault fault : faults) {
      String[] steps = fault.path().split("[.\\[\\]]+", 3);
      if (steps.length > 1) {
        document.remove(steps[1]);
      }
    }
    return document.size() < before;
  }

  private static void draw(Job job, Map<String, Object> said) {
    job.document().stock().ifPresent(stock -> said.put("sheets", SheetSketch.of(stock)));
    JobPlan plan =
        JobPlanner.plan(
            job,
            PlanOptions.defaults()
                .on(Runnable::run)
                .only(Chapter.FRAME, Chapter.SOIL, Chapter.MIX, Chapter.FLOOR),
            new Series(RECALL, Series.alone().supposed(), true, false));
    plan.frame().ifPresent(frame -> frame(frame, job.document(), said));
    plan.floor().ifPresent(floor -> floor(floor, said));
    if (!plan.soils().isEmpty()) {
      said.put("texture", plan.soils().stream().map(Sketch::texture).toList());
    }
  }

  private static void frame(FramePart part, JobDocument document, Map<String, Object> said) {
    RegularPyramid pyramid = part.pyramid();
    int sides = pyramid.sides();
    List<Object> vertices = new ArrayList<>();
    List<Object> edges = new ArrayList<>();
    ring(vertices, edges, "base", sides, pyramid::baseCorner);
    if (pyramid.isTruncated()) {
      ring(vertices, edges, "top", sides, pyramid::topCorner);
      for (int hip = 0; hip < sides; hip++) {
        edges.add(List.of(hip, sides + hip, "hip"));
      }
    } else {
      vertices.add(point(pyramid.apex()));
      for (int hip = 0; hip < sides; hip++) {
        edges.add(List.of(hip, sides, "hip"));
      }
    }
    for (double height : document.frame().map(Frame::purlins).orElse(List.of())) {
      purlin(pyramid, height, vertices, edges);
    }
    said.put("frame", Map.of("vertices", vertices, "edges", edges));
    said.put("face", face(pyramid, document.cover().flatMap(Cover::door)));
  }

  private static void purlin(
      RegularPyramid pyramid, double height, List<Object> vertices, List<Object> edges) {
    Vector3D top = pyramid.isTruncated() ? pyramid.topCorner(1) : pyramid.apex();
    if (height <= 0 || height >= top.getZ()) {
      return;
    }
    double share = height / top.getZ();
    ring(
        vertices,
        edges,
        "purlin",
        pyramid.sides(),
        hip ->
            pyramid
                .baseCorner(hip)
                .lerp(pyramid.isTruncated() ? pyramid.topCorner(hip) : pyramid.apex(), share));
  }

  /** A ring of edges through a corner on each hip. */
  private static void ring(
      List<Object> vertices,
      List<Object> edges,
      String kind,
      int sides,
      IntFunction<Vector3D> corner) {
    int first = vertices.size();
    for (int hip = 1; hip <= sides; hip++) {
      vertices.add(point(corner.apply(hip)));
      edges.add(List.of(first + hip - 1, first + hip % sides, kind));
    }
  }

  private static Map<String, Object> face(RegularPyramid pyramid, Optional<FaceOpening> door) {
    Map<String, Object> face = new LinkedHashMap<>();
    face.put(
        "corners",
        pyramid.faceOutline().vertices().stream()
            .map(corner -> List.of(corner.getX(), corner.getY()))
            .toList());
    door.ifPresent(
        opening ->
            face.put("door", opening.outline().stream().map(p -> List.of(p.getX(), p.getY())).toList()));
    face.put("text", pyramid.sides() + " faces");
    return face;
  }

  private static List<Double> point(Vector3D at) {
    return List.of(at.getX(), at.getY(), at.getZ());
  }

  private static void floor(FloorPart floor, Map<String, Object> said) {
    Footprint footprint = floor.buildUp().footprint();
    Map<String, Object> sectors = new LinkedHashMap<>();
    sectors.put("outline", points(footprint.corners()));
    sectors.put("parts", floor.sectors().sectors().stream().map(s -> points(s.outline().vertices())).toList());
    sectors.put("gaps", footprint.gaps().stream().map(gap -> points(gap.vertices())).toList());
    sectors.put("text", floor.sectors().sectors().size() + " sectors");
    said.put("sectors", sectors);
    said.put("buckets", floor.batches().stream().map(Sketch::buckets).toList());
  }

  private static Map<String, Object> buckets(BatchPlan plan) {
    List<Object> parts = new ArrayList<>();
    List<String> words = new ArrayList<>();
    for (BatchPart part : plan.batch().parts()) {
      parts.add(Map.of("name", part.part().name(), "buckets", part.buckets()));
      words.add(Numbers.plain(part.buckets()) + " " + part.part().name());
    }
    return Map.of(
        "id", plan.quantity().layer().name(), "parts", parts, "text", String.join(", ", words));
  }

  private static List<Object> points(List<Vector2D> points) {
    return points.stream().<Object>map(p -> List.of(p.getX(), p.getY())).toList();
  }

  private static Map<String, Object> texture(SoilPart soil) {
    Texture texture = soil.finding().texture().mean();
    return Map.of(
        "id", soil.sample().id(),
        "sand", texture.sandRatio(),
        "silt", texture.siltRatio(),
        "clay", texture.clayRatio(),
        "name", texture.usdaClass().label());
  }
}
