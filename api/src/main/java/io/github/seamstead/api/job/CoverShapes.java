package io.github.seamstead.api.job;

import io.github.seamstead.shared.quantity.Dimension;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The shapes of the cover section. */
final class CoverShapes {

  private CoverShapes() {}

  static Shape<Fabric> fabric() {
    Shape<Fabric> s = Shape.of(Fabric.class, "a coated fabric");
    Key<String> name =
        s.assumed(
            "name",
            Kinds.text(),
            "what it is",
            "coated fabric",
            "coated fabric",
            "the document does not name it");
    Key<Double> massPerArea =
        s.required(
            "massPerArea",
            Quantities.of(Dimension.MASS_PER_AREA, "g/m2", 20, 5000),
            "mass of the fabric per area");
    Key<Double> thickness =
        s.assumed(
            "thickness",
            Quantities.length("mm", 0.01, 20),
            "thickness of the fabric",
            0.0006,
            "0.6 mm",
            "common practice: coated polyester of lorry-curtain weight");
    return s.makes(v -> new Fabric(v.get(name), v.get(massPerArea), v.get(thickness)));
  }

  static Shape<Seam> seam() {
    Shape<Seam> s = Shape.of(Seam.class, "the joint between neighbouring panels");
    Key<SeamKind> kind =
        s.assumed(
            "kind",
            Kinds.choice(SeamKind.class, SeamKind::word),
            "how the panels are joined",
            SeamKind.FIN,
            "fin",
            "common practice: stapled through both allowances, good sides together");
    Key<Double> allowance =
        s.required(
            "allowance", Quantities.length("mm", 0, 500), "fabric added along each side edge");
    return s.makes(v -> new Seam(v.get(kind), v.get(allowance)));
  }

  static Shape<Hem> hem() {
    Shape<Hem> s = Shape.of(Hem.class, "the lower edge");
    Key<HemKind> kind = hemKind(s);
    Key<Double> allowance = hemAllowance(s);
    Key<List<FaceHem>> faces =
        s.or(
            "faces",
            Kinds.list(faceHem(), 1, 64),
            "faces whose lower edge differs, such as those that keep the band of a sheet",
            List.of());
    s.rule(
        (v, faults) -> {
          Set<Integer> met = new HashSet<>();
          for (int i = 0; i < v.get(faces).size(); i++) {
            int face = v.get(faces).get(i).face();
            if (!met.add(face)) {
              faults.note(
                  "faces[" + i + "].face",
                  "face " + face + " a second time",
                  "must stand once in the list");
            }
          }
        });
    return s.makes(v -> new Hem(v.get(kind), v.get(allowance), v.get(faces)));
  }

  private static Shape<FaceHem> faceHem() {
    Shape<FaceHem> s =
        Shape.of(FaceHem.class, "the lower edge of one face, where it differs from the others");
    Key<Integer> face =
        s.required(
            "face", Kinds.count(1, 64), "the face, counted counter-clockwise seen from above");
    Key<HemKind> kind = hemKind(s);
    Key<Double> allowance = hemAllowance(s);
    return s.makes(v -> new FaceHem(v.get(face), v.get(kind), v.get(allowance)));
  }

  private static Key<HemKind> hemKind(Shape<?> s) {
    return s.required(
        "kind", Kinds.choice(HemKind.class, HemKind::word), "turned, reinforced or raw");
  }

  private static Key<Double> hemAllowance(Shape<?> s) {
    return s.assumed(
        "allowance",
        Quantities.length("mm", 0, 1000),
        "fabric added along the lower edge",
        0.0,
        "0 mm",
        "no allowance stated");
  }

  static Shape<Point> point() {
    Shape<Point> s =
        Shape.of(
            Point.class,
            "a point in the plane of a face: x along the base from its left corner, y up the face");
    Key<Double> x =
        s.required(
            "x",
            Quantities.length("m", -200, 200),
            "along the base edge from the left corner seen from outside");
    Key<Double> y =
        s.required("y", Quantities.length("m", -200, 200), "up the face from the base edge");
    return s.makes(v -> new Point(v.get(x), v.get(y)));
  }

  static Shape<FaceOpening> faceOpening() {
    Shape<FaceOpening> s = Shape.of(FaceOpening.class, "a door or a vent in one face");
    Key<String> id = s.required("id", Kinds.id(), "its name");
    Key<Integer> face =
        s.required(
            "face",
            Kinds.count(1, 64),
            "the face it is in, counted counter-clockwise seen from above");
    Key<List<Point>> outline =
        s.required("outline", Kinds.list(point(), 3, 50), "its corners in the plane of the face");
    Key<Double> flap =
        s.assumed(
            "flap",
            Quantities.length("mm", 0, 500),
            "how much the flap laps over the opening all round",
            0.15,
            "150 mm",
            "common practice: a lap that driven rain does not cross");
    Key<Double> patch =
        s.assumed(
            "patch",
            Quantities.length("mm", 0, 500),
            "width of the reinforcement round the opening",
            0.05,
            "50 mm",
            "common practice: one staple row and its edge distance on each side");
    return s.makes(
        v -> new FaceOpening(v.get(id), v.get(face), v.get(outline), v.get(flap), v.get(patch)));
  }

  static Shape<Cap> cap() {
    Shape<Cap> s = Shape.of(Cap.class, "the cone cap over the opening at the top");
    Key<Double> overlap =
        s.assumed(
            "overlap",
            Quantities.length("mm", 10, 2000),
            "how far the cap comes down over the cover",
            0.3,
            "300 mm",
            "common practice: a lap that driven rain does not climb");
    Key<Double> lap =
        s.assumed(
            "lap",
            Quantities.length("mm", 5, 500),
            "lap of the joints of the cap",
            0.06,
            "60 mm",
            "common practice: one staple row and its edge distance on each side");
    return s.makes(v -> new Cap(v.get(overlap), v.get(lap)));
  }

  static Shape<Skirt> skirt() {
    Shape<Skirt> s = Shape.of(Skirt.class, "a strip on the ground round the base");
    Key<Double> drop =
        s.required(
            "drop",
            Quantities.length("mm", 10, 3000),
            "how far the skirt hangs below the base edge");
    Key<Double> overlap =
        s.assumed(
            "overlap",
            Quantities.length("mm", 0, 1000),
            "how far the skirt goes up under the cover",
            0.15,
            "150 mm",
            "common practice: a lap that splash does not climb");
    return s.makes(v -> new Skirt(v.get(drop), v.get(overlap)));
  }

  static Shape<Lining> lining() {
    Shape<Lining> s = Shape.of(Lining.class, "the lining inside the frame");
    Key<Fabric> fabric = s.required("fabric", fabric(), "what the lining is made of");
    Key<Double> airGap =
        s.required(
            "airGap", Quantities.length("mm", 1, 1000), "clear gap between cover and lining");
    Key<Double> allowance =
        s.assumed(
            "allowance",
            Quantities.length("mm", 0, 500),
            "fabric added along each side edge",
            0.04,
            "40 mm",
            "common practice: one staple row and its edge distance");
    return s.makes(v -> new Lining(v.get(fabric), v.get(airGap), v.get(allowance)));
  }

  static Shape<Cover> cover() {
    Shape<Cover> s = Shape.of(Cover.class, "the cover over the frame");
    Key<Fabric> fabric = s.required("fabric", fabric(), "what the cover is made of");
    Key<Seam> seam = s.required("seam", seam(), "the joint between neighbouring panels");
    Key<Hem> hem = s.required("hem", hem(), "the lower edge");
    Key<Double> topTurnIn =
        s.assumed(
            "topTurnIn",
            Quantities.length("mm", 0, 1000),
            "fabric added at the edge of the opening at the top",
            0.0,
            "0 mm",
            "no turn-in stated");
    Key<FaceOpening> door = s.optional("door", faceOpening(), "the door");
    Key<List<FaceOpening>> vents =
        s.or("vents", Kinds.list(faceOpening(), 1, 20), "vents", List.of());
    Key<Cap> cap = s.optional("cap", cap(), "the cap over the opening at the top");
    Key<Skirt> skirt = s.optional("skirt", skirt(), "the strip on the ground round the base");
    Key<Lining> lining = s.optional("lining", lining(), "the lining inside the frame");
    Key<Fixings> fixings = s.optional("fixings", JoinShapes.fixings(), "what holds seams and hem");
    Key<Joining> joining = s.optional("joining", JoinShapes.joining(), "how the crew joins");
    Key<Double> spliceLap =
        s.assumed(
            "spliceLap",
            Quantities.length("mm", 5, 500),
            "how much two parts of one panel lap where the stock is too small",
            0.1,
            "100 mm",
            "common practice: two staple rows and their edge distances");
    Key<Boolean> staggerSplices =
        s.assumed(
            "staggerSplices",
            Kinds.flag(),
            "whether splices of neighbouring panels are kept apart",
            true,
            "true",
            "common practice: four layers never meet at one point");
    Key<Boolean> keepTogether =
        s.assumed(
            "keepTogether",
            Kinds.flag(),
            "whether neighbouring faces stay in one piece where a sheet takes them and no more"
                + " cloth is used",
            true,
            "true",
            "common practice: a seam that is not made does not leak");
    Key<List<Integer>> moreSplices =
        s.or(
            "moreSplices",
            Kinds.list(Kinds.count(1, 64), 1, 64),
            "faces whose panels are put together from a band more than the cloth asks for, so that"
                + " smaller pieces of cloth do for them",
            List.of());
    return s.makes(
        v ->
            new Cover(
                v.get(fabric),
                v.get(seam),
                v.get(hem),
                v.get(topTurnIn),
                v.find(door),
                v.get(vents),
                v.find(cap),
                v.find(skirt),
                v.find(lining),
                v.find(fixings),
                v.find(joining),
                v.get(spliceLap),
                v.get(staggerSplices),
                v.get(keepTogether),
                v.get(moreSplices)));
  }
}
