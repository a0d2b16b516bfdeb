package ridgeproof.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import ridgeproof.report.TextSanitizer;

/** The fonts of the PDF, and which characters they can draw from left to right. */
final class ReportFonts implements AutoCloseable {

  private static final int ASCII_END = 0x80;

  /**
   * A font as the style sheet asks for it.
   *
   * @param weight as CSS 2.1 counts it
   */
  record Face(String family, int weight, String resource) {

    InputStream open() {
      return ReportFonts.class.getResourceAsStream(resource);
    }
  }

  /** Liberation, under the SIL Open Font License 1.1. */
  static final List<Face> FACES =
      List.of(
          new Face("Report Sans", 400, "/liberation/LiberationSans-Regular.ttf"),
          new Face("Report Sans", 700, "/liberation/LiberationSans-Bold.ttf"),
          new Face("Report Mono", 400, "/liberation/LiberationMono-Regular.ttf"));

  private final Map<Face, TrueTypeFont> fonts = new LinkedHashMap<>();
  private final List<CmapLookup> glyphs = new ArrayList<>();

  ReportFonts() {
    for (Face face : FACES) {
      try (InputStream in = face.open()) {
        TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
        // Ligatures cost time and hide letters from a search.
        font.setEnableGsub(false);
        fonts.put(face, font);
        glyphs.add(font.getUnicodeCmapLookup());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  TrueTypeFont font(Face face) {
    return fonts.get(face);
  }

  /** The text with an escape in place of each character that cannot be drawn. */
  String drawable(String text) {
    StringBuilder drawable = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              if (c < ASCII_END || canDraw(c)) {
                drawable.appendCodePoint(c);
              } else {
                drawable.append(TextSanitizer.escape(c));
              }
            });
    return drawable.toString();
  }

  private boolean canDraw(int c) {
    return switch (Character.getDirectionality(c)) {
      // Nothing here puts lines in the order of their reading.
      case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
          Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
          Character.DIRECTIONALITY_ARABIC_NUMBER ->
          false;
      default -> glyphs.stream().allMatch(font -> font.getGlyphId(c) > 0);
    };
  }

  @Override
  public void close() {
    for (TrueTypeFont font : fonts.values()) {
      try {
        font.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
