package ridgeproof.report;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StatedVersionTest {

  private static Map<String, String> forms(String version) {
    String card = new String(PilotCard.ascii().bytes(), StandardCharsets.ISO_8859_1);
    String changed = card.replaceFirst("1\\.002:[0-9]{4}", "1.002:" + version);
    return Renderings.of("file.an2", changed.getBytes(StandardCharsets.ISO_8859_1))
        .with(RenderOptions.standard());
  }

  @Test
  void everyReportThatShowsTheVersionSaysWhatIsStatedAndWhatIsRead() {
    Map<String, String> forms = forms("0");
    for (String form : List.of("text", "html", "ticket", "ticket markdown", "ticket html")) {
      String text = forms.get(form).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
      assertTrue(text.contains("stated 0, read as 0502"), form);
    }
    assertTrue(forms.get("json").contains("\"statedVersion\" : \"0\""));
    assertTrue(forms.get("json").contains("\"version\" : \"0502\""));
  }

  @Test
  void aVersionThatIsMissingIsSaidToBeAssumed() {
    assertTrue(
        forms("").get("text").replaceAll("\\s+", " ").contains("version not stated, read as 0502"));
  }

  @Test
  void aVersionThatIsReadAsStatedStandsAlone() {
    forms("0500")
        .forEach(
            (form, text) -> {
              assertFalse(text.contains(", read as 0"), form);
              assertFalse(text.contains("statedVersion"), form);
            });
  }
}
