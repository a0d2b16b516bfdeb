package ridgeproof.corpus.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ridgeproof.corpus.finger.SeededRandom;
import ridgeproof.corpus.impression.CaptureDefect;
import ridgeproof.corpus.paper.Paper;
import ridgeproof.corpus.scenario.BoxSet;
import ridgeproof.corpus.scenario.FileDamage;
import ridgeproof.corpus.scenario.HeaderPlan;
import ridgeproof.corpus.scenario.Mistake;
import ridgeproof.corpus.scenario.PrintDefect;
import ridgeproof.corpus.scenario.PrintPlan;
import ridgeproof.corpus.scenario.Scenario;
import ridgeproof.corpus.scenario.SkinPlan;
import ridgeproof.corpus.scenario.Subject;
import ridgeproof.spec.layout.FingerPosition;

/** Draws the story of one subject of a batch: who, which set, and what goes wrong. */
public final class SubjectPlan {

  private static final List<String> NAMES =
      List.of("ADA", "BRUNO", "CARLA", "DARIO", "EDDA", "FINN", "GRETA", "HUGO", "IDA", "JORIS");
  private static final List<String> VERSIONS = List.of("0300", "0400", "0500", "0501", "0502");
  private static final int SEGMENTS_SINCE = 400;
  private static final double MIN_STRENGTH = 0.3;
  private static final int YOUNGEST = 18;
  private static final int OLDEST = 86;

  private final long seed;
  private final double defectRate;
  private final double mistakeRate;
  private final boolean aged;

  /**
   * @param seed another gives other people
   * @param defectRate the probability of a defect in one image
   * @param mistakeRate the probability of a mistake in one file
   */
  public SubjectPlan(long seed, double defectRate, double mistakeRate) {
    this(seed, defectRate, mistakeRate, false);
  }

  /**
   * @param aged whether skin is drawn by age, and cards of rolls are of paper half of the time
   */
  public SubjectPlan(long seed, double defectRate, double mistakeRate, boolean aged) {
    this.aged = aged;
    this.seed = seed;
    this.defectRate = defectRate;
    this.mistakeRate = mistakeRate;
  }

  /** The story of one subject, counted from 1; it does not depend on how many there are. */
  public Scenario scenario(int subject) {
    SeededRandom dice = new SeededRandom(seed, subject);
    long own = seed * 1_000_003 + subject;
    BoxSet set = dice.chance(0.5) ? BoxSet.ROLLED_CARD : BoxSet.FLATS;
    String version = VERSIONS.get(dice.below(VERSIONS.size()));
    boolean tagged = dice.chance(0.5);
    boolean segments = tagged && Integer.parseInt(version) >= SEGMENTS_SINCE;
    int record = tagged ? 14 : 4;
    List<Integer> boxes = boxes(set, version);
    String name = "SPECIMEN," + NAMES.get(dice.below(NAMES.size()));
    List<PrintDefect> defects = defects(boxes, dice);
    List<Mistake> mistakes = new ArrayList<>();
    List<FileDamage> damages = new ArrayList<>();
    if (dice.chance(mistakeRate)) {
      drawMistake(set, dice, mistakes, damages);
    }
    SeededRandom years = new SeededRandom(own, 43);
    SkinPlan skin = aged ? SkinPlan.ofAge(YOUNGEST + years.below(OLDEST - YOUNGEST)) : null;
    boolean ink = aged && set == BoxSet.ROLLED_CARD && years.chance(0.5);
    String control = String.format(Locale.ROOT, "BATCH-%06d", subject);
    return new Scenario(
        String.format(Locale.ROOT, "subject-%06d", subject),
        "Subject " + subject + " of a batch",
        null,
        own,
        new HeaderPlan(version, null, null, null, null, control),
        Subject.of(own, name),
        new PrintPlan(set, boxes, record, 0, null, 0, segments, false, null),
        skin,
        ink ? Paper.ofCard(years) : null,
        List.of(),
        defects,
        mistakes,
        List.of(),
        false,
        false,
        List.of(),
        List.of(),
        damages,
        null);
  }

  /** Both thumbs in one image came with the edition of 2007; before, each stands alone. */
  private static List<Integer> boxes(BoxSet set, String version) {
    boolean old = Integer.parseInt(version) < SEGMENTS_SINCE;
    return set == BoxSet.FLATS && old ? List.of(11, 12, 13, 14) : set.boxes();
  }

  private List<PrintDefect> defects(List<Integer> boxes, SeededRandom dice) {
    List<PrintDefect> defects = new ArrayList<>();
    for (int box : boxes) {
      List<CaptureDefect> kinds =
          Arrays.stream(CaptureDefect.values())
              .filter(kind -> kind.befalls(FingerPosition.isRolledBox(box)))
              .toList();
      if (dice.chance(defectRate)) {
        double strength = Math.rint(100 * dice.between(MIN_STRENGTH, 1)) / 100;
        defects.add(new PrintDefect(box, kinds.get(dice.below(kinds.size())), strength));
      }
    }
    return defects;
  }

  private static void drawMistake(
      BoxSet set, SeededRandom dice, List<Mistake> mistakes, List<FileDamage> damages) {
    int box = 1 + dice.below(10);
    int finger = 1 + (box + dice.below(9)) % 10;
    switch (dice.below(set == BoxSet.ROLLED_CARD ? 7 : 5)) {
      case 0 -> mistakes.add(new Mistake(Mistake.Kind.HANDS_EXCHANGED, 0, 0));
      case 1 -> mistakes.add(new Mistake(Mistake.Kind.RETAKE_KEPT, 13 + dice.below(2), 0));
      case 2 ->
          damages.add(
              new FileDamage(FileDamage.Kind.TAIL_CUT, 0, 0, 0, 100 + dice.below(9000), ""));
      case 3 -> damages.add(new FileDamage(FileDamage.Kind.RECORDS_SWAPPED, 3, 4, 0, 0, ""));
      case 4 -> damages.add(new FileDamage(FileDamage.Kind.BYTES_ADDED, 0, 0, 0, 2, ""));
      case 5 -> mistakes.add(new Mistake(Mistake.Kind.FINGER_TWICE, box, finger));
      default -> mistakes.add(new Mistake(Mistake.Kind.FINGERS_EXCHANGED, box, finger));
    }
  }
}
