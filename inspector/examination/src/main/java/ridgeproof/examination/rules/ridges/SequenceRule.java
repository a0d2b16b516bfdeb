package ridgeproof.examination.rules.ridges;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.examination.rules.Rule;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Measure;
import ridgeproof.finding.Observed;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.FingerMatchResult.Verdict;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.ridges.segmentation.Slap;
import ridgeproof.spec.layout.FingerPosition;
import ridgeproof.spec.limit.PixelLimits;

/** Every print is of the finger whose name it bears. */
final class SequenceRule implements Rule {

  private static final String ELSEWHERE = "RP-SEQ-001";
  private static final String UNTOLD = "RP-SEQ-007";
  private static final String NO_MATCH = "RP-SEQ-008";
  private static final String LOWERED = "RP-SEQ-009";
  private static final String OTHER_HAND = "RP-SEQ-010";

  private static final Map<SequenceError.Kind, String> RULES =
      Map.of(
          SequenceError.Kind.FOUND_ELSEWHERE, ELSEWHERE,
          SequenceError.Kind.ROTATED, "RP-SEQ-011",
          SequenceError.Kind.SHIFTED, "RP-SEQ-012",
          SequenceError.Kind.EXCHANGED, "RP-SEQ-002",
          SequenceError.Kind.THUMBS_EXCHANGED, "RP-SEQ-003",
          SequenceError.Kind.HANDS_EXCHANGED, "RP-SEQ-004",
          SequenceError.Kind.ROLLED_TWICE, "RP-SEQ-005",
          SequenceError.Kind.PLAIN_TWICE, "RP-SEQ-006");

  @Override
  public Set<String> ids() {
    Set<String> ids = new HashSet<>(RULES.values());
    ids.addAll(List.of(UNTOLD, NO_MATCH, LOWERED, OTHER_HAND));
    return ids;
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    examinee.sequence().ifPresent(sequence -> check(examinee, sequence, log));
  }

  private static void check(
      ExaminationInput examinee, SequenceComparison sequence, FindingLog log) {
    Set<FingerPosition> told = new HashSet<>();
    for (SequenceError irregularity : sequence.answers().irregularities()) {
      told.addAll(irregularity.positions());
      FingerPosition first = irregularity.positions().get(0);
      log.add(
          RULES.get(irregularity.kind()),
          place(sequence, first, irregularity.kind() != SequenceError.Kind.PLAIN_TWICE),
          Observed.of(observed(irregularity, examinee)),
          "each print in the position of its own finger",
          evidence(irregularity, sequence.answers().threshold()));
    }
    for (FingerMatchResult answer : sequence.answers().answers()) {
      if (!told.contains(answer.position())) {
        checkAnswer(examinee, sequence, answer, log);
      }
    }
    checkThreshold(examinee, sequence, log);
    if (sequence.answers().irregularities().isEmpty()) {
      checkHands(examinee, log);
    }
  }

  private static void checkAnswer(
      ExaminationInput examinee,
      SequenceComparison sequence,
      FingerMatchResult answer,
      FindingLog log) {
    Location place = place(sequence, answer.position(), false);
    String rule = rule(examinee, sequence, answer);
    if (!rule.isEmpty()) {
      log.add(
          rule,
          place,
          Observed.of(observed(answer, examinee)),
          "a plain print that matches the rolled print of the same finger",
          evidence(answer, sequence.answers().threshold()));
    }
  }

  private static String rule(
      ExaminationInput examinee, SequenceComparison sequence, FingerMatchResult answer) {
    if (answer.verdict() == Verdict.CONTRADICTED) {
      return ELSEWHERE;
    }
    return switch (answer.reason()) {
      case MATCHES_OWN_ROLL, MOST_LIKE_OWN_ROLL, NO_PLAIN_PRINT, NO_ROLL -> "";
      case MATCHES_NO_ROLL ->
          isClear(sequence.rolls().get(answer.position()), examinee)
                  && isClear(sequence.plains().get(answer.position()), examinee)
              ? NO_MATCH
              : UNTOLD;
      default -> UNTOLD;
    };
  }

  private static boolean isClear(SeenFinger print, ExaminationInput examinee) {
    PixelLimits limits = examinee.tables().pixelLimits();
    return print != null
        && print.analysis().score().value() >= limits.value("clear-print-score")
        && print
            .analysis()
            .measures()
            .filter(found -> found.minutiae().count() >= limits.value("clear-print-minutiae"))
            .isPresent();
  }

  private static List<Measure> evidence(SequenceError irregularity, double threshold) {
    List<Measure> evidence = new ArrayList<>();
    evidence.add(Measure.against("similarity", irregularity.score(), "", threshold));
    if (irregularity.odds() > 0) {
      evidence.add(EvidenceStrength.measure(irregularity.odds()));
    }
    return evidence;
  }

  private static List<Measure> evidence(FingerMatchResult answer, double threshold) {
    List<Measure> evidence = new ArrayList<>();
    evidence.add(
        Measure.against("similarity with its rolled print", answer.ownScore(), "", threshold));
    answer
        .other()
        .ifPresent(
            other ->
                evidence.add(
                    Measure.against(
                        "similarity with the rolled print of finger " + other.code(),
                        answer.otherScore(),
                        "",
                        threshold)));
    if (answer.odds() > 0) {
      evidence.add(EvidenceStrength.measure(answer.odds()));
    }
    return evidence;
  }

  private static String observed(FingerMatchResult answer, ExaminationInput examinee) {
    if (answer.verdict() == Verdict.CONTRADICTED) {
      return "the plain print matches the rolled " + name(answer.other().orElseThrow(), examinee);
    }
    return switch (answer.reason()) {
      case TOO_FEW_MINUTIAE -> "too few minutiae to compare";
      case MATCHES_NO_ROLL -> "the plain print matches none of the rolled prints";
      case PLACE_UNCERTAIN -> "the image of the plain print shows fewer prints than fingers";
      default -> "the plain print matches several rolled prints";
    };
  }

  private static String observed(SequenceError irregularity, ExaminationInput examinee) {
    String names =
        irregularity.positions().stream()
            .map(finger -> name(finger, examinee))
            .collect(Collectors.joining(", "));
    boolean all = irregularity.mutual() || irregularity.positions().size() < 2;
    // Remedies have the words in parentheses.
    return names + (all ? "" : "; some only as a group");
  }

  /** The threshold that a profile lowered is in every report. */
  private static void checkThreshold(
      ExaminationInput examinee, SequenceComparison sequence, FindingLog log) {
    double usual = examinee.tables().pixelLimits().value("finger-match");
    if (sequence.answers().threshold() < usual) {
      log.add(
          LOWERED,
          Location.file(),
          Observed.of(
              String.format(
                  Locale.ROOT, "a match from similarity %.0f", sequence.answers().threshold())),
          String.format(Locale.ROOT, "%.0f, unless the agency asks for another value", usual));
    }
  }

  private static void checkHands(ExaminationInput examinee, FindingLog log) {
    for (ExaminedImage image : examinee.images()) {
      Optional<Slap> slap = image.ridges().flatMap(RidgeAnalysis::slap);
      Optional<FingerPosition.Hand> apparent = slap.flatMap(Slap::apparentHand);
      if (apparent.isPresent()
          && slap.get().segments().stream()
              .noneMatch(segment -> segment.position().hand() == apparent.get())) {
        log.add(
            OTHER_HAND,
            image.location(),
            Observed.of(
                "heights and widths of a "
                    + apparent.get().name().toLowerCase(Locale.ROOT)
                    + " hand"),
            "the hand named by the position");
      }
    }
  }

  private static Location place(
      SequenceComparison sequence, FingerPosition finger, boolean rollFirst) {
    SeenFinger roll = sequence.rolls().get(finger);
    SeenFinger plain = sequence.plains().get(finger);
    SeenFinger print = rollFirst && roll != null || plain == null ? roll : plain;
    return print == null ? Location.file() : print.image().location(finger);
  }

  private static String name(FingerPosition finger, ExaminationInput examinee) {
    return examinee.tables().positionName(finger.code());
  }
}
