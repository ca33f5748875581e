package io.github.seamstead.api.chapter.frame;

import io.github.seamstead.api.chapter.Chapter;
import io.github.seamstead.api.chapter.internal.BookContext;
import io.github.seamstead.api.chapter.internal.Words;
import io.github.seamstead.api.page.Table;
import io.github.seamstead.geometry.frame.Drainage;
import io.github.seamstead.geometry.frame.FabricOffset;
import io.github.seamstead.geometry.frame.FrameMeasures;

/** The ideal frame: its measures in a table, from above and from the side. */
final class FramePages {

  private FramePages() {}

  static void write(BookContext book, FramePart part) {
    FrameMeasures m = part.measures();
    Words w = book.words();
    book.figure(FrameDrawings.plan(part.pyramid(), book.doorFace(), w));
    book.figure(FrameDrawings.elevation(part.pyramid(), w));
    Table table = new Table("Measures on the centre lines of the poles", "measure", "#value");
    table.row("sides", Integer.toString(part.pyramid().sides()));
    table.row("base side", w.length(part.pyramid().baseSide()));
    table.row("centre to a base corner", w.length(m.circumradius()));
    table.row("centre to the middle of a side", w.length(m.inradius()));
    table.row("across the flats", w.length(m.acrossFlats()));
    table.row("across the corners", w.length(m.acrossCorners()));
    table.row("base perimeter", w.length(m.perimeter()));
    table.row("height of the frame", w.length(m.frameHeight()));
    table.row("hip pole", w.length(m.hipLength()));
    table.row("height of a face along its middle", w.length(m.faceHeight()));
    if (part.pyramid().isTruncated()) {
      table.row("opening side", w.length(m.openingSide()));
      table.row("height to the point where the hips would meet", w.length(m.apexHeight()));
    }
    table.row("slope of a face", w.angle(m.faceSlope()));
    table.row("slope of a hip", w.angle(m.hipSlope()));
    table.row("angle between neighbouring faces", w.angle(m.hipDihedral()));
    table.row("base angle of a face", w.angle(m.baseAngle()));
    table.row("apex angle of a face", w.angle(m.apexAngle()));
    table.row("one face", w.area(m.faceArea()));
    table.row("all faces", w.area(m.coverArea()));
    table.row("floor inside the base line", w.area(m.baseArea()));
    table.row("room inside", w.volume(m.volume()));
    book.table(table);
    book.note(
        "Hips are flatter than faces: judge laps and standing water by the slope of the hip, "
            + w.angle(m.hipSlope())
            + ". A lap that rises "
            + w.small(Drainage.TABLE_RISE)
            + " is "
            + w.atLeast(part.drainage().lapForRise(Drainage.TABLE_RISE))
            + " long along a hip.");
    part.solution().reasons().forEach(book::note);
    Table surface =
        new Table(
            "Surfaces of the cloth", "surface", "#off the centre lines", "#base side", "#area");
    part.fabric().ifPresent(fabric -> surface(w, surface, "cover", fabric));
    part.lining().ifPresent(lining -> surface(w, surface, "lining", lining));
    book.table(surface);
    part.members().ifPresent(members -> MembersSection.write(book, members));
    part.bars().ifPresent(bars -> MembersSection.bars(book, bars));
    book.end(Chapter.FRAME);
  }

  private static void surface(Words w, Table table, String name, FabricOffset offset) {
    double off = offset.distance();
    table.row(
        name,
        w.small(Math.abs(off)) + (off < 0 ? " inside" : " outside"),
        w.length(offset.surface().baseSide()),
        w.area(offset.surface().measures().coverArea()));
  }
}
