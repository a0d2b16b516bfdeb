package ridgeproof.examination;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import ridgeproof.examination.cause.CauseLog;
import ridgeproof.examination.cause.CauseRule;
import ridgeproof.examination.cause.card.CardCauses;
import ridgeproof.examination.cause.card.InvertedImages;
import ridgeproof.examination.cause.card.OtherHandCause;
import ridgeproof.examination.cause.card.StrangersPrintsCause;
import ridgeproof.examination.cause.print.BrokenScanCause;
import ridgeproof.examination.cause.print.ImpressionTypesCause;
import ridgeproof.examination.cause.print.KeptRetakeCause;
import ridgeproof.examination.cause.print.PrintQualityCause;
import ridgeproof.examination.cause.print.RidgePeriodCause;
import ridgeproof.examination.cause.print.SameImageCause;
import ridgeproof.examination.cause.print.ScaleCauses;
import ridgeproof.examination.cause.print.SharedByImagesCause;
import ridgeproof.examination.cause.transport.Reading;
import ridgeproof.examination.cause.transport.TransportCauses;
import ridgeproof.examination.cause.value.DateCauses;
import ridgeproof.examination.cause.value.FollowingCauses;
import ridgeproof.examination.cause.value.MisreadFieldCause;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.finding.Finding;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.ByteSource;

/** The causes that are looked for, those that reach furthest first: the file, the card, a print. */
final class CauseSet {

  private static final List<CauseRule> RULES =
      List.of(
          new DateCauses(),
          new ScaleCauses(),
          new RidgePeriodCause(),
          new InvertedImages(),
          new BrokenScanCause(),
          new CardCauses(),
          new OtherHandCause(),
          new SharedByImagesCause(),
          new FollowingCauses(),
          new MisreadFieldCause(),
          new SameImageCause(),
          new KeptRetakeCause(),
          new ImpressionTypesCause(),
          new StrangersPrintsCause(),
          new PrintQualityCause());

  private CauseSet() {}

  /** Every row of the catalogue that some cause can report. */
  static Set<String> ids() {
    Set<String> ids = new TreeSet<>(TransportCauses.ids());
    RULES.forEach(rule -> ids.addAll(rule.ids()));
    return ids;
  }

  /**
   * @param found what reading and the rules found
   * @param structure reads other bytes and runs the rules that open no image
   */
  static CauseLog establish(
      ExaminationInput examinee, List<Finding> found, Function<ByteSource, Reading> structure) {
    CauseLog causes = new CauseLog(examinee.tables());
    Transaction transaction = examinee.transaction();
    new TransportCauses(structure, examinee.tables().fileSignatures())
        .establish(new Reading(transaction, transaction.findings()), found, causes);
    RULES.forEach(rule -> rule.establish(examinee, found, causes));
    return causes;
  }
}
