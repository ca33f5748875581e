package io.github.seamstead.examples.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A printed page: its text, and how far down it reaches.
 *
 * @param text all its text
 * @param filled how much of its height is used, 0 to 1, the footer not counted
 * @param lies whether the page is wider than high
 */
record PrintedPage(String text, double filled, boolean lies) {

  private static final double FOOTER = 0.94;

  static List<PrintedPage> of(byte[] pdf) throws IOException {
    List<PrintedPage> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        Reader reader = new Reader();
        reader.setStartPage(i);
        reader.setEndPage(i);
        String text = reader.getText(document);
        PDRectangle box = document.getPage(i - 1).getMediaBox();
        pages.add(new PrintedPage(text, reader.lowest, box.getWidth() > box.getHeight()));
      }
    }
    return pages;
  }

  /** Notes the lowest line above the footer. */
  private static final class Reader extends PDFTextStripper {

    private double lowest;

    @Override
    protected void processTextPosition(TextPosition text) {
      // Of an upright letter: one that is turned has its axes turned with it.
      double at = text.getDir() == 0 ? text.getYDirAdj() / text.getPageHeight() : 0;
      if (at < FOOTER && !text.getUnicode().isBlank()) {
        lowest = Math.max(lowest, at);
      }
      super.processTextPosition(text);
    }
  }
}
