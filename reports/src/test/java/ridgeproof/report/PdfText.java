package ridgeproof.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** What a reader of a PDF gets to see, and what it may be asked to do. */
public final class PdfText {

  private static final Set<String> ACTING =
      Set.of(
          "JS",
          "JavaScript",
          "Launch",
          "URI",
          "GoToR",
          "SubmitForm",
          "ImportData",
          "OpenAction",
          "AA",
          "A",
          "Annots",
          "AcroForm",
          "EmbeddedFiles",
          "AF",
          "RichMedia",
          "XFA",
          "Metadata");

  private PdfText() {}

  public static String of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFTextStripper reader = new PDFTextStripper();
      reader.setSortByPosition(true);
      return reader.getText(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The text without the places where lines end and words part. */
  public static String unbroken(byte[] pdf) {
    return of(pdf).replaceAll("\\s", "");
  }

  /** Names of what could act, of what leads out of the document, and of hidden descriptions. */
  public static Set<String> acting(byte[] pdf) {
    Set<String> found = new TreeSet<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      collect(document.getDocument().getTrailer(), new HashSet<>(), found);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static void collect(COSBase base, Set<COSBase> seen, Set<String> found) {
    if (base instanceof COSObject reference) {
      collect(reference.getObject(), seen, found);
    } else if (base instanceof COSArray array && seen.add(array)) {
      array.forEach(item -> collect(item, seen, found));
    } else if (base instanceof COSName name && ACTING.contains(name.getName())) {
      found.add(name.getName());
    } else if (base instanceof COSDictionary dictionary && seen.add(dictionary)) {
      // The entry A of a structure element holds attributes and acts on nothing.
      boolean structure = dictionary.containsKey(COSName.P) && dictionary.containsKey(COSName.S);
      for (COSName key : dictionary.keySet()) {
        if (ACTING.contains(key.getName()) && !(structure && key.equals(COSName.A))) {
          found.add(key.getName());
        }
        collect(dictionary.getItem(key), seen, found);
      }
    }
  }
}
