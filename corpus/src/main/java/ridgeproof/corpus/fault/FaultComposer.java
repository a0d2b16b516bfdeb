package ridgeproof.corpus.fault;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ridgeproof.corpus.composition.DraftedTransaction;
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

  /** A clean file, before anything happens to it. */
  public byte[] clean(String base) {
    return new Workpiece(this, draft(base)).bytes();
  }

  /**
   * The file with the fault.
   *
   * @throws ScenarioError naming the fault, when a step of it cannot be done
   */
  public byte[] compose(Fault fault) {
    Workpiece workpiece = new Workpiece(this, draft(fault.base()));
    for (String step : fault.change().split(";")) {
      try {
        apply(step.strip(), workpiece);
      } catch (RuntimeException e) {
        throw new ScenarioError(fault.id() + ": " + step.strip() + ": " + e);
      }
    }
    return workpiece.bytes();
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
