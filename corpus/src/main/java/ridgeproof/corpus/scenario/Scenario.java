package ridgeproof.corpus.scenario;

import java.util.List;

/**
 * One story of a transaction: who, what is captured, what goes wrong, and what an examination has
 * to say of it. Written as TOML; {@code corpus/README.md} describes every key.
 *
 * @param name the name of its file without the extension
 * @param story one line for a table
 * @param text what a technician would want to know of it
 * @param seed everything that is left to chance
 * @param missing fingers that the subject does not have or cannot print
 * @param defects what went wrong with single images
 * @param mistakes what went wrong with the set
 * @param minutiae boxes whose minutiae are given in a Type-9 record each
 * @param changes fields that are changed by hand before lengths are computed
 * @param damages what befalls the bytes afterwards
 * @param expects what an examination reports now
 */
public record Scenario(
    String name,
    String story,
    String text,
    long seed,
    HeaderPlan transaction,
    Subject subject,
    PrintPlan prints,
    List<MissingFinger> missing,
    List<PrintDefect> defects,
    List<Mistake> mistakes,
    List<PalmPlan> palms,
    boolean face,
    boolean signature,
    List<Integer> minutiae,
    List<FieldChange> changes,
    List<Damage> damages,
    Expectation expects) {

  public Scenario {
    name = Given.orElse(name, "");
    story = Given.required("story", story);
    text = Given.orElse(text, "");
    transaction = Given.orElse(transaction, HeaderPlan.standard());
    subject = Given.orElse(subject, Subject.standard());
    prints = Given.orElse(prints, PrintPlan.of(CardKind.ROLLED_CARD));
    missing = Given.list(missing);
    defects = Given.list(defects);
    mistakes = Given.list(mistakes);
    palms = Given.list(palms);
    minutiae = Given.list(minutiae);
    changes = Given.list(changes);
    damages = Given.list(damages);
    expects = Given.orElse(expects, Expectation.nothing());
  }

  /** The same under another name. */
  public Scenario named(String other) {
    return copy(other, seed, subject, defects, mistakes);
  }

  /** The same with other defects. */
  public Scenario withDefects(List<PrintDefect> others) {
    return copy(name, seed, subject, others, mistakes);
  }

  /** The same with other mistakes. */
  public Scenario withMistakes(List<Mistake> others) {
    return copy(name, seed, subject, defects, others);
  }

  /** The same captured of another person, with other luck. */
  public Scenario of(Subject other, long otherSeed) {
    return copy(name, otherSeed, other, defects, mistakes);
  }

  private Scenario copy(
      String newName,
      long newSeed,
      Subject newSubject,
      List<PrintDefect> newDefects,
      List<Mistake> newMistakes) {
    return new Scenario(
        newName,
        story,
        text,
        newSeed,
        transaction,
        newSubject,
        prints,
        missing,
        newDefects,
        newMistakes,
        palms,
        face,
        signature,
        minutiae,
        changes,
        damages,
        expects);
  }

  /** The person: the subject's own seed, or else that of the story. */
  public long person() {
    return subject.person() == 0 ? seed : subject.person();
  }

  public boolean isMissing(int finger) {
    return missing.stream().anyMatch(entry -> entry.finger() == finger && !entry.imaged());
  }
}
