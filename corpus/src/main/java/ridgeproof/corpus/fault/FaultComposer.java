package ridgeproof.corpus.fault;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.composition.DraftedTransaction;
import ridgeproof.corpus.composition.FileEncoding;
import ridgeproof.corpus.composition.SubjectCache;
import ridgeproof.corpus.composition.TransactionComposer;
import ridgeproof.corpus.scenario.ScenarioError;

/**
 * Makes the files of the catalogue: a clean file is captured once, each fault changes a copy. Safe
 * to share between threads.
 */
public final class FaultComposer {

  private final TransactionComposer composer = new TransactionComposer(new SubjectCache());
  private final Map<String, DraftedTransaction> drafts = new ConcurrentHashMap<>();
  private final FileEncoding encoding;

  /** By id of a fault, the steps that are done instead of its own. */
  private final Map<String, String> otherSteps;

  /** Files in the traditional encoding. */
  public FaultComposer() {
    this(FileEncoding.TRADITIONAL, Map.of());
  }

  private FaultComposer(FileEncoding encoding, Map<String, String> otherSteps) {
    this.encoding = encoding;
    this.otherSteps = otherSteps;
  }

  /** The same files in XML: what befalls the whole file befalls its XML. */
  public static FaultComposer inXml() {
    Map<String, String> steps = new HashMap<>();
    FaultCatalogue.inXml().values().stream()
        .filter(row -> !row.change().isEmpty())
        .forEach(row -> steps.put(row.id(), row.change()));
    return new FaultComposer(FileEncoding.XML, steps);
  }

  /** A clean file, before anything happens to it. */
  public byte[] clean(String base) {
    return new Workpiece(this, draft(base)).file();
  }

  /**
   * The file with the fault.
   *
   * @throws ScenarioError naming the fault, when a step of it cannot be done
   */
  public byte[] compose(Fault fault) {
    Workpiece workpiece = new Workpiece(this, draft(fault.base()));
    for (String step : otherSteps.getOrDefault(fault.id(), fault.change()).split(";")) {
      try {
        apply(step.strip(), workpiece);
      } catch (RuntimeException e) {
        throw new ScenarioError(fault.id() + ": " + step.strip() + ": " + e);
      }
    }
    return workpiece.file();
  }

  /** A file in the encoding that files are sent in. */
  byte[] encoded(byte[] file) {
    return encoding.of(file);
  }

  private static void apply(String step, Workpiece workpiece) {
    String[] words = step.split(" ");
    Verb verb = Verbs.ALL.get(words[0]);
    if (verb == null) {
      throw new IllegalArgumentException("no such verb");
    }
    verb.apply(workpiece, new StepWords(Arrays.asList(words).subList(1, words.length)));
  }

  DraftedTransaction draft(String base) {
    return drafts.computeIfAbsent(base, name -> composer.draft(FaultCatalogue.base(name)));
  }

  TransactionComposer composer() {
    return composer;
  }
}
