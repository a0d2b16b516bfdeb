package ridgeproof.corpus.fault;

/** What a step of a fault does. */
@FunctionalInterface
interface Verb {

  void apply(Workpiece workpiece, StepWords words);
}
