package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.Depth;
import ridgeproof.spec.FieldRow;

class PersonalValuesTest {

  private static final RenderOptions SHOWING = new RenderOptions(true, false, 80);

  /** Every field of a Type-2 record that tells of a person, and one that no layout knows. */
  private static final List<Integer> PERSONAL = personal();

  private static List<Integer> personal() {
    List<Integer> fields =
        new java.util.ArrayList<>(
            Reports.TABLES.layout(2).rows().stream()
                .filter(FieldRow::personal)
                .filter(row -> !row.isRange())
                .map(row -> row.number().field())
                .distinct()
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

  @Test
  void thereArePersonalFieldsToTest() {
    assertTrue(PERSONAL.size() > 50, PERSONAL.toString());
  }

  @Test
  void noFormTellsAPersonalValueUnlessAsked() {
    Map<String, String> forms = Renderings.of("file.an2", card().bytes(), RenderOptions.standard());
    forms.forEach(
        (form, text) ->
            PERSONAL.forEach(
                field -> assertFalse(text.contains(value(field)), form + " tells 2." + field)));
  }

  @Test
  void noFormTellsTheNameOfTheSubjectUnlessAsked() {
    byte[] bytes = PilotCard.ascii().particular(18, "SPECIMEN,ADA,").bytes();
    Renderings.of("file.an2", bytes, RenderOptions.standard())
        .forEach((form, text) -> assertFalse(text.contains("SPECIMEN"), form));
  }

  @Test
  void formsThatMayShowPersonalValuesShowThemWhenAsked() {
    Map<String, String> forms = Renderings.of("file.an2", card().bytes(), SHOWING);
    for (String form : List.of("html", "layout", "compare", "compare json", "compare html")) {
      assertTrue(forms.get(form).contains(value(18)), form);
    }
  }

  @Test
  void aPdfTellsPersonalValuesOnlyWhenAsked() {
    byte[] bytes = card().particular(18, "SPECIMEN,ADA,").bytes();
    String masked = PdfText.unbroken(Renderings.pdf("file.an2", bytes, RenderOptions.standard()));
    String shown = PdfText.unbroken(Renderings.pdf("file.an2", bytes, SHOWING));
    for (int field : PERSONAL) {
      assertFalse(masked.contains(value(field)), "it tells 2." + field);
      assertTrue(field == 18 || shown.contains(value(field)), "it does not tell 2." + field);
    }
    assertFalse(masked.contains("SPECIMEN"));
    assertTrue(shown.contains("SPECIMEN,ADA,"));
  }

  @Test
  void aTicketNeverTellsAPersonalValueOrTheNameOfTheFile() {
    Map<String, String> forms = Renderings.of("specimen-ada.an2", card().bytes(), SHOWING);
    for (String form : List.of("ticket", "ticket markdown", "ticket html")) {
      assertFalse(forms.get(form).contains("specimen-ada"), form);
      PERSONAL.forEach(field -> assertFalse(forms.get(form).contains(value(field)), form));
    }
  }

  @Test
  void imagesAreOnThePageOnlyWhenAsked() {
    byte[] bytes = PilotCard.ascii().bytes();
    var report = Reports.examine(bytes, Depth.IMAGES);
    var extraction =
        new ridgeproof.examination.ImageExtraction(
            Reports.TABLES, ridgeproof.imagery.DecodingLimits.standard());
    String without = HtmlReport.render(Reports.facts(bytes), report, RenderOptions.standard());
    String with =
        HtmlReport.render(
            Reports.facts(bytes),
            report,
            RenderOptions.standard(),
            image -> extraction.decode(image).pixels());
    assertFalse(without.contains("data:image"), "an image that nobody asked for");
    assertEquals(15, with.split("data:image/png;base64,", -1).length);
  }
}
