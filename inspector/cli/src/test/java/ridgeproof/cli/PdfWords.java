package ridgeproof.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Every word that a PDF holds: on its pages, and in all that no page shows, such as its metadata,
 * bookmarks and the descriptions of its pictures.
 */
final class PdfWords {

  private final StringBuilder words = new StringBuilder();
  private final Set<COSBase> seen = new HashSet<>();

  private PdfWords() {}

  static String of(byte[] pdf) {
    PdfWords found = new PdfWords();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setSortByPosition(true);
      found.words.append(reader.getText(document)).append('\n');
      for (PDPage page : document.getPages()) {
        for (Object token : new PDFStreamParser(page).parse()) {
          if (token instanceof COSDictionary properties) {
            found.collect(properties);
          }
        }
      }
      found.collect(document.getDocument().getTrailer());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found.words.toString();
  }

  private void collect(COSBase base) throws IOException {
    if (base instanceof COSObject reference) {
      collect(reference.getObject());
    } else if (base instanceof COSString text) {
      words.append(text.getString()).append('\n');
    } else if (base instanceof COSName name) {
      words.append(name.getName()).append('\n');
    } else if (base instanceof COSArray array && seen.add(array)) {
      for (COSBase item : array) {
        collect(item);
      }
    } else if (base instanceof COSDictionary dictionary && seen.add(dictionary)) {
      for (COSName key : dictionary.keySet()) {
        collect(key);
        collect(dictionary.getItem(key));
      }
      if (dictionary instanceof COSStream stream
          && COSName.METADATA.equals(stream.getCOSName(COSName.TYPE))) {
        byte[] metadata = stream.createInputStream().readAllBytes();
        words.append(new String(metadata, StandardCharsets.UTF_8)).append('\n');
      }
    }
  }
}
