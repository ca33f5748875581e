package io.github.seamstead.api.chapter.cover;

import io.github.seamstead.api.chapter.internal.Corners;
import io.github.seamstead.api.chapter.internal.Facts;
import io.github.seamstead.geometry.pattern.Fold;
import io.github.seamstead.geometry.pattern.Notch;
import io.github.seamstead.geometry.pattern.Panel;
import io.github.seamstead.geometry.pattern.PieceHole;
import io.github.seamstead.geometry.pattern.Splice;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** The cover as data. */
final class CoverFacts {

  private CoverFacts() {}

  private static Facts<LiningPart> lining() {
    return new Facts<LiningPart>()
        .whole("count", "how many panels", LiningPart::count)
        .points(
            "cut_m",
            "corners of the line to cut",
            l -> Corners.data(l.panel().parts().get(0).cut()))
        .number("clothArea_m2", "cloth in all panels", LiningPart::clothArea)
        .number("clothMass_kg", "mass of all panels", LiningPart::clothMass);
  }

  static Facts<CoverPart> cover() {
    return new Facts<CoverPart>()
        .number("clothArea_m2", "cloth in all pieces", CoverPart::clothArea)
        .number("clothMass_kg", "mass of all pieces", CoverPart::clothMass)
        .many("panels", "the panels in the order of the faces", panel(), CoverPart::panels)
        .many("shapes", "the shapes to cut", shape(), CoverPart::cuts)
        .maybe("lining", "the lining", lining(), CoverPart::lining)
        .many("misfits", "what is cut and no longer fits", misfit(), CoverPart::misfits);
  }

  private static Facts<Misfit> misfit() {
    return new Facts<Misfit>()
        .text("name", "the panel, or the piece beside the panels", Misfit::name)
        .numbers(
            "edgesShort_m",
            "for each edge the length it should have less the length it has",
            m -> m.difference().edges())
        .numbers(
            "cornersOff_m",
            "for each corner how far it is off when laid on as well as it goes",
            m -> m.difference().corners())
        .number("tolerance_m", "the least difference that counts", Misfit::tolerance)
        .text("text", "the same in words", Misfit::text);
  }

  private static Facts<Panel> panel() {
    return new Facts<Panel>()
        .text("id", "its name", Panel::id)
        .whole("faces", "over how many neighbouring faces it goes in one piece", Panel::faces)
        .points(
            "face_m",
            "corners of the finished face, or of the faces laid flat together",
            p -> Corners.data(p.face()))
        .number("faceArea_m2", "area of the finished faces", p -> p.face().area())
        .number("clothArea_m2", "cloth in its pieces", Panel::clothArea)
        .many("splices", "where it is put together of parts", splice(), Panel::splices);
  }

  private static Facts<Splice> splice() {
    return new Facts<Splice>()
        .text("joint", "its name", Splice::joint)
        .text("under", "the part below", Splice::under)
        .text("over", "the part that laps over", Splice::over)
        .number("length_m", "its length", Splice::length)
        .number("lap_m", "its lap", Splice::lap);
  }

  private static Facts<PieceHole> hole() {
    return new Facts<PieceHole>()
        .text("name", "which opening", PieceHole::name)
        .points("finished_m", "corners of the finished opening", h -> Corners.data(h.finished()))
        .points("cut_m", "corners of the line to cut", h -> Corners.data(h.cut()));
  }

  private static Facts<Notch> notch() {
    return new Facts<Notch>()
        .whole("edge", "the edge of the finished outline, counted from 0", Notch::edge)
        .whole("ordinal", "its place along the seam, from the base", Notch::ordinal)
        .number("fromBase_m", "along the seam, from the base", Notch::fromBase)
        .points(
            "stitchToCut_m", "its two ends", n -> List.of(point(n.onStitch()), point(n.onCut())))
        .flag("doubled", "whether it is the double one", Notch::doubled);
  }

  /** A fold and the shape whose pattern it is part of. */
  private record NamedFold(CutShape shape, Fold fold) {}

  private static List<NamedFold> folds(CutShape shape) {
    return shape.pattern().folds().stream().map(f -> new NamedFold(shape, f)).toList();
  }

  private static Facts<NamedFold> fold() {
    return new Facts<NamedFold>()
        .text("name", "what it is called", f -> f.shape().name(f.fold()))
        .number("length_m", "from foot to top", f -> f.fold().length())
        .points(
            "footToTop_m",
            "its two ends",
            f -> List.of(point(f.fold().lower()), point(f.fold().upper())));
  }

  private static List<Double> point(Vector2D point) {
    return List.of(point.getX(), point.getY());
  }

  private static Facts<CutShape> shape() {
    return new Facts<CutShape>()
        .text("id", "its name", CutShape::id)
        .text("kind", "what the piece is", s -> s.pattern().kind().name().toLowerCase(Locale.ROOT))
        .whole("count", "how many are cut", s -> s.pieces().size())
        .texts("labels", "the label of each", s -> s.pieces().stream().map(p -> p.label()).toList())
        .points("cut_m", "corners of the line to cut", s -> Corners.data(s.pattern().cut()))
        .points(
            "stitch_m", "corners of the finished outline", s -> Corners.data(s.pattern().stitch()))
        .number("grain_rad", "its upward direction, from the first axis", s -> s.pattern().grain())
        .many("holes", "openings in it", hole(), s -> s.pattern().holes())
        .many("folds", "hips within it, bent and neither cut nor sewn", fold(), CoverFacts::folds)
        .many("notches", "match marks of its seams", notch(), s -> s.pattern().notches())
        .number("clothArea_m2", "cloth in one", s -> s.pattern().clothArea());
  }
}
