package ridgeproof.examination.rules.transaction;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminationInput;
import ridgeproof.examination.facts.Positions;
import ridgeproof.examination.rules.Rule;
import ridgeproof.examination.submission.AppliedProfile;
import ridgeproof.examination.submission.InferredProfile;
import ridgeproof.examination.submission.PrintSet;
import ridgeproof.examination.submission.TransactionKind;
import ridgeproof.finding.FindingLog;
import ridgeproof.finding.Location;
import ridgeproof.finding.Observed;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.submission.TransactionNeed;
import ridgeproof.spec.table.Source;

/** Each finger that the submission needs is printed or annotated as missing. */
final class CompletenessRule implements Rule {

  private static final String ONE = "RP-TXN-004";
  private static final String UNUSUAL_WAY = "RP-TXN-010";
  private static final String SEVERAL = "RP-TXN-040";
  private static final String NONE = "RP-TXN-041";
  private static final String NO_ACCEPTED_WAY = "RP-TXN-042";
  private static final String UNSETTLED = "RP-TXN-043";

  private static final int FINGERS = 10;

  /** From so many fingers of a hand on they are told in one finding. */
  private static final int A_GROUP = 3;

  /** With more fingers gone than a hand has, what is missing besides is no news. */
  private static final int A_HAND = 5;

  private static final String NO_FINGER = "no image of any finger";
  private static final String NEEDED =
      "a print of each finger, or an annotation that explains its absence";

  @Override
  public Set<String> ids() {
    return Set.of(ONE, UNUSUAL_WAY, SEVERAL, NONE, NO_ACCEPTED_WAY, UNSETTLED);
  }

  @Override
  public void check(ExaminationInput examinee, FindingLog log) {
    examinee.profile().ifPresent(profile -> new Check(examinee, profile, log).run());
  }

  /** One file against one profile. */
  private static final class Check {

    private final ExaminationInput examinee;
    private final SubmissionProfile profile;
    private final FindingLog log;
    private final SpecTables tables;
    private final Positions positions;
    private final PrintSet set;
    private final Optional<TransactionNeed> need;

    Check(ExaminationInput examinee, SubmissionProfile profile, FindingLog log) {
      this.examinee = examinee;
      this.profile = profile;
      this.log = log;
      tables = examinee.tables();
      positions = new Positions(tables);
      set = new PrintSet(examinee.transaction(), examinee.images(), tables);
      need =
          AppliedProfile.namesPrints(examinee.options())
              ? Optional.empty()
              : new TransactionKind(examinee.transaction(), tables).need();
    }

    void run() {
      if (set.fingersOf(profile).size() < FINGERS) {
        profile.prints().stream()
            .filter(print -> !set.has(print))
            .forEach(print -> reportPosition(print.position()));
        return;
      }
      Set<Integer> absent = set.absent(profile);
      List<NeededPrint> others =
          profile.prints().stream()
              .filter(print -> !set.has(print) && !isExplained(print, absent))
              .toList();
      if (isUnsettled()) {
        reportUnsettled(absent, others);
        return;
      }
      reportAbsent(absent);
      if (AppliedProfile.namesPrints(examinee.options())) {
        others.forEach(print -> reportPosition(print.position()));
        return;
      }
      List<NeededPrint> rolls = others.stream().filter(p -> p.kind().equals("rolled")).toList();
      byHand(
              rolls.stream()
                  .map(NeededPrint::position)
                  .collect(Collectors.toCollection(TreeSet::new)))
          .forEach(hand -> reportGroup(hand, "no rolled print: "));
      if (absent.size() <= A_HAND) {
        reportIncompleteWay(others.stream().filter(p -> !p.kind().equals("rolled")).toList());
      }
      if (absent.isEmpty() && others.isEmpty()) {
        reportUnusualWay();
      }
    }

    /** Whether the fingers that are not there at all tell of it already. */
    private boolean isExplained(NeededPrint print, Set<Integer> absent) {
      List<Integer> lacking = set.lacking(print);
      return !lacking.isEmpty() && absent.containsAll(lacking);
    }

    /** Whether no published list settles that such a file needs ten fingers. */
    private boolean isUnsettled() {
      return InferredProfile.of(examinee.images(), tables).isEmpty()
          && need.filter(type -> type.source().known() != Source.Knowledge.PUBLISHED).isPresent();
    }

    private void reportAbsent(Set<Integer> absent) {
      if (absent.isEmpty()) {
        return;
      }
      if (set.isEmpty() && absent.size() > 1) {
        log.add(NONE, Location.file(), Observed.of(NO_FINGER), NEEDED);
        return;
      }
      boolean thumbs = positions.isThumbs(absent);
      List<Set<Integer>> groups = thumbs ? List.of(absent) : byHand(absent);
      groups.forEach(group -> reportGroup(group, ""));
    }

    private void reportGroup(Set<Integer> group, String what) {
      if (group.size() < A_GROUP && !positions.isThumbs(group)) {
        group.forEach(this::reportPosition);
        return;
      }
      boolean whole = what.isEmpty() && positions.isWholeHand(group, set::isDeclared);
      log.add(
          SEVERAL,
          Location.file(),
          Observed.of(what + (whole ? "whole " : "") + brief(group)),
          names(group));
    }

    private void reportUnsettled(Set<Integer> absent, List<NeededPrint> others) {
      if (absent.isEmpty()) {
        reportIncompleteWay(others);
        return;
      }
      log.add(
          UNSETTLED,
          Location.file(),
          Observed.of(
              set.isEmpty()
                  ? NO_FINGER
                  : byHand(absent).stream().map(this::brief).collect(Collectors.joining("; "))),
          names(absent),
          need.map(TransactionNeed::source),
          List.of());
    }

    private void reportIncompleteWay(List<NeededPrint> prints) {
      if (prints.isEmpty()) {
        return;
      }
      OptionalInt position =
          prints.size() == 1 ? OptionalInt.of(prints.get(0).position()) : OptionalInt.empty();
      String names = names(prints.stream().map(NeededPrint::position).toList());
      log.add(
          NO_ACCEPTED_WAY,
          Location.file().withPosition(position),
          Observed.of("not in the file: " + names),
          String.format(Locale.ROOT, "%s (%s)", names, profile.title().toLowerCase(Locale.ROOT)),
          Optional.of(profile.source()),
          List.of());
    }

    private void reportPosition(int position) {
      log.add(
          ONE,
          Location.file().withPosition(OptionalInt.of(position)),
          Observed.of("no image of position " + position),
          "an image, or an annotation that explains its absence (" + profile.title() + ")");
    }

    private void reportUnusualWay() {
      need.filter(type -> type.unusualWays().contains(profile.name()))
          .ifPresent(
              type ->
                  log.add(
                      UNUSUAL_WAY,
                      Location.file(),
                      Observed.of(profile.title()),
                      type.ways().stream()
                          .map(way -> tables.profile(way).title())
                          .collect(Collectors.joining(" or "))));
    }

    private List<Set<Integer>> byHand(Set<Integer> fingers) {
      List<Set<Integer>> hands = new ArrayList<>();
      for (String hand : List.of("right", "left")) {
        Set<Integer> group =
            fingers.stream()
                .filter(finger -> positions.hand(finger).equals(hand))
                .collect(Collectors.toCollection(TreeSet::new));
        if (!group.isEmpty()) {
          hands.add(group);
        }
      }
      return hands;
    }

    private String names(Collection<Integer> codes) {
      return codes.stream().map(tables::positionName).collect(Collectors.joining(", "));
    }

    /** The fingers of one hand, or both thumbs, with no word said twice. */
    private String brief(Set<Integer> fingers) {
      if (positions.isThumbs(fingers)) {
        return "both thumbs";
      }
      String hand = positions.hand(fingers.iterator().next());
      return fingers.stream()
          .map(tables::positionName)
          .map(name -> name.replace(hand + " ", "").replace(" finger", ""))
          .collect(Collectors.joining(", ", hand + " hand: ", ""));
    }
  }
}
