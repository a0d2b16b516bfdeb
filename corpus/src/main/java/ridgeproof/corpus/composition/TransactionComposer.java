package ridgeproof.corpus.composition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ridgeproof.corpus.scenario.FieldChange;
import ridgeproof.corpus.scenario.FileDamage;
import ridgeproof.corpus.scenario.PalmPlan;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.ScenarioError;
import ridgeproof.spec.layout.RecordTypeRow.Encoding;
import ridgeproof.transaction.record.CharacterEncoding;
import ridgeproof.transaction.writer.RecordDraft;
import ridgeproof.transaction.writer.TransactionWriter;

/**
 * Turns stories into files: the same story gives the same bytes on every machine. Safe to share
 * between threads.
 */
public final class TransactionComposer {

  private static final int TYPE_4 = 4;

  private final SubjectCache people;

  /**
   * @param people those that the stories are about; shared, so that a finger is grown once
   */
  public TransactionComposer(SubjectCache people) {
    this.people = people;
  }

  /**
   * Composes one file.
   *
   * @throws ScenarioError when the story changes or damages what is not there
   */
  public ComposedTransaction compose(Scenario scenario) {
    DraftedTransaction draft = draft(scenario);
    List<CapturedPrint> prints = draft.prints();
    List<RecordDraft> records = draft.records();
    byte[] sound = new TransactionWriter(CharacterEncoding.ASCII).write(records);
    byte[] bytes =
        scenario.damages().isEmpty()
            ? sound
            : new DamagedBytes(sound, records).after(checked(scenario, records.size()));
    return new ComposedTransaction(
        scenario,
        bytes,
        prints.stream()
            .map(p -> new ComposedTransaction.Label(p.box(), p.defects(), p.mistake()))
            .toList());
  }

  /**
   * Everything but the bytes: the records of a story, its fields changed as it says, undamaged.
   *
   * @throws ScenarioError when the story changes what is not there
   */
  public DraftedTransaction draft(Scenario scenario) {
    List<CapturedPrint> prints = new CaptureSession(scenario, people).prints();
    List<RecordDraft> records = records(scenario, prints);
    changeFields(scenario, records);
    return new DraftedTransaction(scenario, records, prints);
  }

  /** The image of one box, captured again under another version of the story, and its record. */
  public Optional<DraftedPrint> capture(Scenario scenario, int box, int idc) {
    return new CaptureSession(scenario, people)
        .print(box)
        .map(print -> new DraftedPrint(print, new PrintRecords(scenario).fingerprint(print, idc)));
  }

  private List<RecordDraft> records(Scenario scenario, List<CapturedPrint> prints) {
    TextRecords texts = new TextRecords(scenario);
    PrintRecords printRecords = new PrintRecords(scenario);
    PlaceholderRecords placeholders = new PlaceholderRecords(scenario);
    boolean scaled = scenario.prints().record() == TYPE_4 && !prints.isEmpty();
    List<RecordDraft> records = new ArrayList<>();
    records.add(texts.header(scaled));
    records.add(texts.particulars());
    int idc = 0;
    for (CapturedPrint print : prints) {
      records.add(printRecords.fingerprint(print, ++idc));
    }
    for (PalmPlan palm : scenario.palms()) {
      records.add(printRecords.palm(palm, people, ++idc));
    }
    if (scenario.face()) {
      records.add(placeholders.face(++idc));
    }
    if (scenario.signature()) {
      records.add(placeholders.signature(++idc));
    }
    for (int i = 0; i < prints.size(); i++) {
      if (scenario.minutiae().contains(prints.get(i).box())) {
        records.add(MinutiaeRecord.of(prints.get(i), i + 1));
      }
    }
    return records;
  }

  private static void changeFields(Scenario scenario, List<RecordDraft> records) {
    for (FieldChange change : scenario.changes()) {
      int index = change.record() - 1;
      RecordDraft record = index < records.size() ? records.get(index) : null;
      if (record == null
          || record.encoding() != Encoding.TAGGED
          || !change.field().startsWith(record.type() + ".")) {
        throw new ScenarioError(
            scenario.name() + ": record " + change.record() + " has no field " + change.field());
      }
      records.set(
          index,
          change.removes()
              ? record.without(change.number())
              : record.with(change.number(), change.value()));
    }
  }

  private static List<FileDamage> checked(Scenario scenario, int records) {
    for (FileDamage damage : scenario.damages()) {
      if (damage.record() > records || damage.other() > records) {
        throw new ScenarioError(
            scenario.name() + ": " + damage.kind() + " in a file of " + records + " records");
      }
    }
    return scenario.damages();
  }
}
