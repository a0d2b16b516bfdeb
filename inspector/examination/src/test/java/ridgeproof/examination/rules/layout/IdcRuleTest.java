package ridgeproof.examination.rules.layout;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ridgeproof.examination.SampleCard;
import ridgeproof.examination.SampleRecords;
import ridgeproof.transaction.writer.RecordDraft;

class IdcRuleTest {

  private static RecordDraft view(int idc, String kind, String mark) {
    return RecordDraft.tagged(10, List.of(SampleCard.text(10, 1, "")))
        .with(2, "%02d".formatted(idc))
        .with(3, kind)
        .with(40, mark);
  }

  private static boolean reported(RecordDraft... views) {
    SampleCard card = SampleCard.rolled();
    for (RecordDraft view : views) {
      card = card.plus(view);
    }
    return SampleRecords.reports(card, "RP-TXN-008");
  }

  @Test
  void twoViewsOfOneMarkMayHaveOneIdc() {
    assertFalse(reported(view(30, "TATTOO", "TAT L ARM"), view(30, "TATTOO", "TAT L ARM")));
    assertFalse(reported(view(30, "TATTOO", "TAT L ARM"), view(31, "SCAR", "SC CHIN")));
  }

  @Test
  void twoMarksHaveAnIdcEach() {
    assertTrue(reported(view(30, "TATTOO", "TAT L ARM"), view(30, "TATTOO", "TAT R ARM")));
    assertTrue(reported(view(30, "TATTOO", "TAT L ARM"), view(30, "SCAR", "TAT L ARM")));
  }

  @Test
  void twoPrintsHaveAnIdcEach() {
    assertTrue(reported(SampleCard.taggedPrint(30, 3, 1), SampleCard.taggedPrint(30, 3, 1)));
  }
}
