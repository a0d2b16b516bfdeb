package ridgeproof.examination.submission;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.MissingFingers;
import ridgeproof.examination.facts.Positions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.SubmissionProfile.NeededPrint;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.record.WholeNumber;

/** Which positions and fingers the images of a transaction show, traces left out. */
public final class PrintSet {

  private static final String PLAIN = "plain";
  private static final String ROLLED = "rolled";

  private final Positions positions;
  private final MissingFingers missing;
  private final Set<Integer> imaged = new TreeSet<>();
  private final Set<Integer> printed = new TreeSet<>();
  private final Set<Integer> flat = new TreeSet<>();

  public PrintSet(Transaction transaction, List<ExaminedImage> images, SpecTables tables) {
    positions = new Positions(tables);
    missing = new MissingFingers(transaction, tables);
    for (ExaminedImage image : images) {
      boolean there = image.data().filter(data -> !data.isEmpty()).isPresent();
      if (there && image.layout().frictionRidge() && !positions.isTrace(image.impression())) {
        add(image, tables);
      }
    }
  }

  private void add(ExaminedImage image, SpecTables tables) {
    boolean pressedFlat = positions.impressionKind(image.impression()).equals(PLAIN);
    for (int position : image.positions()) {
      imaged.add(position);
      List<Integer> fingers = positions.fingers(position);
      printed.addAll(fingers);
      if (pressedFlat || !positions.kind(position).equals(ROLLED)) {
        flat.addAll(fingers);
      }
    }
    printed.addAll(describedFingers(image, tables));
  }

  /** A tip or a joint is of position 19, and a field of its own tells of which finger. */
  private static Set<Integer> describedFingers(ExaminedImage image, SpecTables tables) {
    Set<Integer> fingers = new HashSet<>();
    tables.agreements().descriptorFields().stream()
        .map(row -> row.field())
        .filter(field -> field.recordType() == image.record().type())
        .distinct()
        .forEach(field -> fingers.addAll(firstItems(image, field)));
    return fingers;
  }

  private static Set<Integer> firstItems(ExaminedImage image, FieldNumber number) {
    Set<Integer> fingers = new HashSet<>();
    image
        .record()
        .field(number)
        .ifPresent(
            field ->
                field
                    .subfields()
                    .forEach(
                        subfield -> WholeNumber.parse(subfield.text(1)).ifPresent(fingers::add)));
    return fingers;
  }

  /** How many positions of single rolled fingers are there. */
  long rolls() {
    return imaged.stream().filter(position -> positions.kind(position).equals(ROLLED)).count();
  }

  /** Whether no image shows a finger that is named. */
  public boolean isEmpty() {
    return printed.isEmpty();
  }

  /** Whether some image shows the finger. */
  public boolean shows(int finger) {
    return printed.contains(finger);
  }

  public boolean isDeclared(int finger) {
    return missing.of(finger).isPresent();
  }

  /** The single fingers that a print shows and that are not declared missing. */
  List<Integer> expected(NeededPrint print) {
    return positions.fingers(print.position()).stream().filter(f -> !isDeclared(f)).toList();
  }

  /** Whether the print is there, in this form or one that is as good, or cannot be. */
  public boolean has(NeededPrint print) {
    if (isThere(print.position())
        || !print.or().isEmpty() && print.or().stream().allMatch(this::isThereOrDeclared)) {
      return true;
    }
    List<Integer> all = positions.fingers(print.position());
    List<Integer> expected = expected(print);
    // What is left of a hand may be printed in images of fewer fingers.
    return !all.isEmpty()
        && expected.size() < all.size()
        && (expected.isEmpty() || all.size() > 1 && flat.containsAll(expected));
  }

  /** The fingers for whose sake a print that is not there is missed. */
  public List<Integer> lacking(NeededPrint print) {
    boolean partly = print.or().stream().anyMatch(this::isThere);
    return partly
        ? print.or().stream()
            .filter(position -> !isThereOrDeclared(position))
            .flatMap(position -> positions.fingers(position).stream())
            .toList()
        : expected(print);
  }

  private boolean isThereOrDeclared(int position) {
    List<Integer> fingers = positions.fingers(position);
    return isThere(position) || !fingers.isEmpty() && fingers.stream().allMatch(this::isDeclared);
  }

  /** A plain thumb may be in the box of its roll and bear the impression type of a plain print. */
  private boolean isThere(int position) {
    return imaged.contains(position)
        || positions.kind(position).equals(PLAIN)
            && flat.containsAll(positions.fingers(position))
            && imaged.containsAll(positions.fingers(position));
  }

  /** The single fingers that the profile asks for in some form. */
  public Set<Integer> fingersOf(SubmissionProfile profile) {
    return profile.prints().stream()
        .flatMap(print -> positions.fingers(print.position()).stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The fingers of the profile that are neither printed nor declared missing. */
  public Set<Integer> absent(SubmissionProfile profile) {
    Set<Integer> absent = fingersOf(profile);
    absent.removeIf(finger -> printed.contains(finger) || isDeclared(finger));
    return absent;
  }

  /** How much of the profile is there, 0 to 1. */
  double share(SubmissionProfile profile) {
    return profile.prints().stream().mapToInt(print -> has(print) ? 1 : 0).average().orElse(0);
  }
}
