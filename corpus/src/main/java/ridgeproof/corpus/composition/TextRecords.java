package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ridgeproof.corpus.scenario.HeaderPlan;
import ridgeproof.corpus.scenario.MissingFinger;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.Subject;
import ridgeproof.transaction.writer.RecordDraft;

/** The Type-1 and Type-2 records of a story. */
final class TextRecords {

  private static final int DOMAIN_SINCE = 300;
  private static final String NO_RESOLUTION = "00.00";

  private final Scenario scenario;

  TextRecords(Scenario scenario) {
    this.scenario = scenario;
  }

  /**
   * The Type-1 record; its list of contents is left to the writer.
   *
   * @param scaled whether a record of types 3 to 7 is in the file, whose scale fields 1.011 and
   *     1.012 are then
   */
  RecordDraft header(boolean scaled) {
    HeaderPlan plan = scenario.transaction();
    String resolution = scenario.prints().ppi() == 500 ? "19.69" : "39.37";
    Drafts drafts =
        Drafts.tagged(1, -1)
            .text(2, plan.version())
            .text(3, "")
            .text(4, plan.type())
            .text(5, plan.date())
            .text(7, plan.destination())
            .text(8, plan.originator())
            .text(9, plan.controlNumber())
            .text(11, scaled ? resolution : NO_RESOLUTION)
            .text(12, scaled ? resolution : NO_RESOLUTION);
    if (plan.versionNumber() >= DOMAIN_SINCE) {
      drafts.items(13, List.of(List.of("NORAM", ""))).text(14, plan.date() + "101500Z");
    }
    return drafts.asTagged();
  }

  /**
   * The Type-2 record with the fields that an applicant's transaction needs (EBTS, from memory).
   */
  RecordDraft particulars() {
    Subject subject = scenario.subject();
    String date = scenario.transaction().date();
    Drafts drafts =
        Drafts.tagged(2, 0)
            .text(5, "N")
            .text(18, subject.name())
            .text(20, subject.birthplace())
            .text(21, subject.citizenship())
            .text(22, subject.birthDate())
            .text(24, subject.sex())
            .text(25, subject.race())
            .text(27, subject.height())
            .text(29, subject.weight())
            .text(31, subject.eyes())
            .text(32, subject.hair())
            .text(37, subject.reason())
            .text(38, date)
            .text(73, scenario.transaction().originator());
    List<List<String>> declared = new ArrayList<>();
    for (MissingFinger missing : scenario.missing()) {
      if (!missing.undeclared()) {
        declared.add(
            List.of(String.format(Locale.ROOT, "%02d", missing.finger()), missing.reason()));
      }
    }
    if (!declared.isEmpty()) {
      drafts.items(84, declared);
    }
    return drafts.asTagged();
  }
}
