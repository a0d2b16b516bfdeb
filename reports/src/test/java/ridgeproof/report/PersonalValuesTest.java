package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.Depth;
import ridgeproof.report.page.HtmlReport;
import ridgeproof.spec.layout.FieldNumber;

class PersonalValuesTest {

  private static final RenderOptions SHOWING = new RenderOptions(true, false, 80);

  /** Every field of a Type-2 record whose first item is not public, and one without a row. */
  private static final List<Integer> PERSONAL = personal();

  private static List<Integer> personal() {
    List<Integer> fields =
        new ArrayList<>(
            Reports.TABLES.layout(2).rows().stream()
                .filter(row -> !row.isRange())
                .map(row -> row.number().field())
                .distinct()
                .filter(
                    field -> !Reports.TABLES.layout(2).isPublic(new FieldNumber(2, field), 1, 200))
                .toList());
    fields.add(1777);
    return fields;
  }

  private static String value(int field) {
    return "QZ" + field + "q";
  }

  private static PilotCard card() {
    PilotCard card = PilotCard.ascii();
    PERSONAL.forEach(field -> card.particular(field, value(field)));
    return card.particular(84, "3\u001f" + value(84));
  }

  private static final Renderings CARD = Renderings.of("file.an2", card().bytes());
  private static final Renderings NAMED =
      Renderings.of("file.an2", card().particular(18, "SPECIMEN,ADA,").bytes());

  @Test
  void thereArePersonalFieldsToTest() {
    assertTrue(PERSONAL.size() > 50, PERSONAL.toString());
  }

  @Test
  void noFormTellsAPersonalValueUnlessAsked() {
    CARD.with(RenderOptions.standard())
        .forEach(
            (form, text) ->
                PERSONAL.forEach(
                    field -> assertFalse(text.contains(value(field)), form + " tells 2." + field)));
  }

  @Test
  void noFormTellsTheNameOfTheSubjectUnlessAsked() {
    NAMED
        .with(RenderOptions.standard())
        .forEach((form, text) -> assertFalse(text.contains("SPECIMEN"), form));
  }

  @Test
  void formsThatMayShowPersonalValuesShowThemWhenAsked() {
    Map<String, String> forms = CARD.with(SHOWING);
    for (String form : List.of("html", "layout", "compare", "compare json", "compare html")) {
      assertTrue(forms.get(form).contains(value(18)), form);
    }
  }

  @Test
  void aPdfTellsPersonalValuesOnlyWhenAsked() {
    String masked = PdfText.unbroken(NAMED.pdf(RenderOptions.standard()));
    String shown = PdfText.unbroken(NAMED.pdf(SHOWING.withEveryFinding(true)));
    for (int field : PERSONAL) {
      assertFalse(masked.contains(value(field)), "it tells 2." + field);
      assertTrue(field == 18 || shown.contains(value(field)), "it does not tell 2." + field);
    }
    assertFalse(masked.contains("SPECIMEN"));
    assertTrue(shown.contains("SPECIMEN,ADA,"));
  }

  @Test
  void aTicketNeverTellsAPersonalValueOrTheNameOfTheFile() {
    FileFacts named = new FileFacts("specimen-ada.an2", 1, "0".repeat(64));
    Map<String, String> forms =
        new Renderings(named, CARD.report(), CARD.comparison()).with(SHOWING);
    for (String form : List.of("ticket", "ticket markdown", "ticket html")) {
      assertFalse(forms.get(form).contains("specimen-ada"), form);
      PERSONAL.forEach(field -> assertFalse(forms.get(form).contains(value(field)), form));
    }
  }

  @Test
  void imagesAreOnThePageOnlyWhenAsked() {
    byte[] bytes = PilotCard.ascii().bytes();
    FindingsReport report = Reports.examine(bytes, Depth.IMAGES);
    String without = HtmlReport.render(Reports.facts(bytes), report, RenderOptions.standard());
    String with =
        HtmlReport.render(
            Reports.facts(bytes),
            report,
            RenderOptions.standard(),
            image -> Renderings.EXTRACTION.decode(image).pixels());
    assertFalse(without.contains("data:image"), "an image that nobody asked for");
    assertEquals(15, with.split("data:image/png;base64,", -1).length);
  }
}
