package ridgeproof.report.prints;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import ridgeproof.examination.FindingsReport;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.SequenceComparison;
import ridgeproof.examination.facts.SequenceComparison.SeenFinger;
import ridgeproof.finding.Finding;
import ridgeproof.finding.Location;
import ridgeproof.ridges.matching.FingerMatchResult;
import ridgeproof.ridges.matching.SequenceError;
import ridgeproof.spec.layout.FingerPosition;

/** Which prints a finding is about: its own, and those that it is compared with. */
public final class ConcernedPrints {

  private static final String SEQUENCE = "SEQ";
  private static final String SAME_IMAGE = "RP-TXN-080";
  private static final String IMAGED_YET_MISSING = "RP-TXN-005";
  private static final String TWICE = "RP-TXN-003";

  /** Of more fingers than these in each other's place only the rolled prints are told. */
  private static final int MAX_PAIRS = 2;

  private static final Set<Integer> SLAPS = Set.of(13, 14);

  private final FindingsReport report;
  private final Map<Integer, ExaminedImage> images;

  public ConcernedPrints(FindingsReport report) {
    this.report = report;
    this.images = report.imagesByRecord();
  }

  /** Every print that the finding and its repetitions are about, its own first. */
  public List<Print> of(Finding finding) {
    Set<Print> prints = new LinkedHashSet<>();
    Stream.concat(Stream.of(finding), finding.repeats().stream())
        .forEach(each -> prints.addAll(ofOne(each)));
    return List.copyOf(prints);
  }

  private List<Print> ofOne(Finding finding) {
    List<Print> prints = new ArrayList<>();
    Optional<Print> own = own(finding.location());
    if (finding.rule().area().equals(SEQUENCE)) {
      List<Print> compared =
          report.sequence().map(facts -> compared(finding, facts)).orElse(List.of());
      prints.addAll(compared);
      own.filter(print -> !compared.contains(print)).ifPresent(print -> prints.add(0, print));
      if (prints.isEmpty() && finding.location().record().isEmpty()) {
        prints.addAll(slaps());
      }
    } else {
      own.ifPresent(prints::add);
      if (finding.ruleId().equals(SAME_IMAGE)) {
        own.ifPresent(print -> prints.addAll(sameImage(print)));
      } else if (finding.ruleId().equals(TWICE)) {
        own.ifPresent(print -> prints.addAll(samePosition(print)));
      } else if (finding.ruleId().equals(IMAGED_YET_MISSING) && own.isEmpty()) {
        prints.addAll(atPosition(finding.location().position()));
      }
    }
    return prints;
  }

  private Optional<Print> own(Location place) {
    return place.record().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(images.get(place.record().getAsInt()))
            .filter(image -> image.layout().frictionRidge())
            .map(image -> Print.of(image, place.position()));
  }

  private static List<Print> compared(Finding finding, SequenceComparison facts) {
    Optional<FingerPosition> first =
        finding.location().position().isEmpty()
            ? Optional.empty()
            : FingerPosition.ofCode(finding.location().position().getAsInt());
    if (first.isEmpty()) {
      return List.of();
    }
    Optional<SequenceError> disorder =
        facts.answers().irregularities().stream()
            .filter(each -> each.positions().get(0) == first.get())
            .findFirst();
    if (disorder.isPresent()) {
      return ofDisorder(disorder.get().positions(), facts);
    }
    List<Print> prints = new ArrayList<>(pair(first.get(), facts));
    facts.answers().answers().stream()
        .filter(answer -> answer.position() == first.get())
        .filter(answer -> answer.verdict() == FingerMatchResult.Verdict.CONTRADICTED)
        .flatMap(answer -> answer.other().stream())
        .forEach(other -> print(facts.rolls(), other).ifPresent(prints::add));
    return prints;
  }

  private static List<Print> ofDisorder(List<FingerPosition> fingers, SequenceComparison facts) {
    List<Print> prints = new ArrayList<>();
    for (FingerPosition finger : fingers) {
      if (fingers.size() > MAX_PAIRS) {
        print(facts.rolls(), finger).or(() -> print(facts.plains(), finger)).ifPresent(prints::add);
      } else {
        prints.addAll(pair(finger, facts));
      }
    }
    return prints;
  }

  private static List<Print> pair(FingerPosition finger, SequenceComparison facts) {
    return Stream.concat(
            print(facts.rolls(), finger).stream(), print(facts.plains(), finger).stream())
        .toList();
  }

  private static Optional<Print> print(
      Map<FingerPosition, SeenFinger> prints, FingerPosition finger) {
    return Optional.ofNullable(prints.get(finger))
        .map(seen -> new Print(seen.image(), Optional.of(finger)));
  }

  private List<Print> slaps() {
    return report.images().stream()
        .filter(image -> image.position().isPresent())
        .filter(image -> SLAPS.contains(image.position().getAsInt()))
        .map(image -> new Print(image, Optional.empty()))
        .toList();
  }

  /** The prints of a position that a field of another record names. */
  private List<Print> atPosition(OptionalInt position) {
    return report.images().stream()
        .filter(image -> image.layout().frictionRidge())
        .filter(image -> position.isPresent() && image.position().equals(position))
        .map(image -> Print.of(image, position))
        .toList();
  }

  /** The other images of the same position: one of them may be a retake. */
  private List<Print> samePosition(Print own) {
    return report.images().stream()
        .filter(image -> image.record().ordinal() != own.record())
        .filter(image -> image.layout().frictionRidge())
        .filter(image -> image.position().equals(own.image().position()))
        .map(image -> Print.of(image, OptionalInt.empty()))
        .toList();
  }

  /** The other prints whose images are the same bytes. */
  private List<Print> sameImage(Print own) {
    return report.images().stream()
        .filter(image -> image.record().ordinal() != own.record())
        .filter(image -> image.layout().frictionRidge() && hasSameBytes(image, own.image()))
        .map(image -> Print.of(image, OptionalInt.empty()))
        .toList();
  }

  private static boolean hasSameBytes(ExaminedImage one, ExaminedImage other) {
    return one.data().isPresent()
        && other.data().isPresent()
        && one.data().get().hasSameBytes(other.data().get());
  }

  /** What the comparison of prints says of one, in words that follow "This print". */
  Optional<String> answer(Print print, PrintNames names) {
    if (report.sequence().isEmpty() || print.finger().isEmpty()) {
      return Optional.empty();
    }
    SequenceComparison facts = report.sequence().get();
    FingerPosition finger = print.finger().get();
    boolean rolled = print(facts.rolls(), finger).filter(print::equals).isPresent();
    return facts.answers().answers().stream()
        .filter(answer -> answer.verdict() == FingerMatchResult.Verdict.CONTRADICTED)
        .filter(
            answer ->
                rolled
                    ? answer.other().filter(finger::equals).isPresent()
                    : answer.position() == finger)
        .map(
            answer ->
                rolled
                    ? "matches the plain " + names.finger(answer.position().code())
                    : "matches the rolled " + names.finger(answer.other().orElseThrow().code()))
        .findFirst();
  }
}
