package ridgeproof.corpus.scenario;

import java.util.List;
import ridgeproof.corpus.paper.Paper;

/**
 * One story of a transaction: who, what is captured, what goes wrong, and what an examination has
 * to say of it. Written as TOML; {@code corpus/README.md} describes every key.
 *
 * @param name the name of its file without the extension
 * @param story one line for a table
 * @param text what a technician would want to know of it
 * @param seed everything that is left to chance
 * @param skin creases, wear and what else age leaves on prints; none unless given
 * @param paper what a box of the card shows besides prints; nothing unless given
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
    SkinPlan skin,
    Paper paper,
    List<MissingFinger> missing,
    List<PrintDefect> defects,
    List<Mistake> mistakes,
    List<PalmPlan> palms,
    boolean face,
    boolean signature,
    List<Integer> minutiae,
    List<FieldChange> changes,
    List<FileDamage> damages,
    Expectation expects) {

  public Scenario {
    name = Defaults.orElse(name, "");
    story = Defaults.required("story", story);
    text = Defaults.orElse(text, "");
    transaction = Defaults.orElse(transaction, HeaderPlan.standard());
    subject = Defaults.orElse(subject, Subject.standard());
    prints = Defaults.orElse(prints, PrintPlan.of(BoxSet.ROLLED_CARD));
    skin = Defaults.orElse(skin, SkinPlan.smooth());
    paper = Defaults.orElse(paper, Paper.none());
    missing = Defaults.list(missing);
    defects = Defaults.list(defects);
    mistakes = Defaults.list(mistakes);
    palms = Defaults.list(palms);
    minutiae = Defaults.list(minutiae);
    changes = Defaults.list(changes);
    damages = Defaults.list(damages);
    expects = Defaults.orElse(expects, Expectation.nothing());
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
    return copy(newName, newSeed, newSubject, newDefects, newMistakes, damages);
  }

  private Scenario copy(
      String newName,
      long newSeed,
      Subject newSubject,
      List<PrintDefect> newDefects,
      List<Mistake> newMistakes,
      List<FileDamage> newDamages) {
    return new Scenario(
        newName,
        story,
        text,
        newSeed,
        transaction,
        newSubject,
        prints,
        skin,
        paper,
        missing,
        newDefects,
        newMistakes,
        palms,
        face,
        signature,
        minutiae,
        changes,
        newDamages,
        expects);
  }

  /** The same with nothing that befalls the bytes of the file. */
  public Scenario withoutDamages() {
    return copy(name, seed, subject, defects, mistakes, List.of());
  }

  /** The person: the subject's own seed, or else that of the story. */
  public long person() {
    return subject.person() == 0 ? seed : subject.person();
  }

  public boolean isMissing(int finger) {
    return missing.stream().anyMatch(entry -> entry.finger() == finger && !entry.imaged());
  }
}
