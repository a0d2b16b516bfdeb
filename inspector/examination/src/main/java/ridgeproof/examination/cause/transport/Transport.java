package ridgeproof.examination.cause.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import ridgeproof.finding.Finding;

/** Finds out what happened to the bytes of a file on its way. */
final class Transport {

  /** A file may have been wrapped and translated; more than this is not followed. */
  private static final int MAX_STEPS = 3;

  /** Undoing needs a copy of the file; transactions are far smaller. */
  private static final int MAX_BYTES = 64 * 1024 * 1024;

  private static final Set<String> PIXEL_AREAS = Set.of("IMG", "RDG", "SEQ");

  /** Reports that a print which the submission needs is not in the file. */
  private static final Set<String> MISSING_PRINTS =
      Set.of(
          "RP-TXN-004",
          "RP-TXN-007",
          "RP-TXN-010",
          "RP-TXN-040",
          "RP-TXN-041",
          "RP-TXN-042",
          "RP-TXN-043",
          "RP-TXN-044",
          "RP-TXN-045",
          "RP-TXN-050");

  /** Of images, but from the number of their bytes, which is another once some are lost. */
  private static final Set<String> BYTE_COUNTS = Set.of("RP-IMG-011", "RP-IMG-013", "RP-IMG-016");

  private static final List<Function<Suspect, Optional<TransportDamage>>> KINDS =
      List.of(
          Wrapping::ebcdic,
          Wrapping::base64,
          Wrapping::quotedPrintable,
          Utf8Text::of,
          LinesOnTop::of,
          EighthBit::of,
          LineEnds::of,
          SecondTransaction::of,
          Padding::of,
          CutOff::of,
          ForeignFile::of);

  /** Of XML: its characters may be coded and its lines broken in more than one way. */
  private static final List<Function<Suspect, Optional<TransportDamage>>> KINDS_OF_XML =
      List.of(LinesOnTop::of, SecondTransaction::of, Padding::of, CutOff::of);

  private Transport() {}

  /**
   * What happened, what lies outermost first.
   *
   * @return nothing for a file without symptoms, and where nothing could be proved
   */
  static List<TransportDamage> damages(Suspect first) {
    List<TransportDamage> damages = new ArrayList<>();
    Optional<Suspect> suspect = Optional.of(first).filter(s -> s.source().length() <= MAX_BYTES);
    while (suspect.isPresent() && suspect.get().hasSymptoms() && damages.size() < MAX_STEPS) {
      Suspect looked = suspect.get();
      Optional<TransportDamage> damage =
          kinds(looked).stream().flatMap(kind -> kind.apply(looked).stream()).findFirst();
      damage.ifPresent(damages::add);
      suspect = damage.flatMap(TransportDamage::undone).map(looked::after);
    }
    return List.copyOf(damages);
  }

  private static List<Function<Suspect, Optional<TransportDamage>>> kinds(Suspect suspect) {
    return suspect.reading().transaction().isXml() ? KINDS_OF_XML : KINDS;
  }

  static boolean looksAtPixels(Finding finding) {
    return PIXEL_AREAS.contains(finding.rule().area());
  }

  static boolean countsBytes(Finding finding) {
    return BYTE_COUNTS.contains(finding.ruleId());
  }

  /** What follows where records could not be read: the list, and rules on what a set holds. */
  static boolean missesRecords(Finding finding) {
    return finding.rule().area().equals("TXN") || Reading.isBroken(finding);
  }

  static boolean missesPrints(Finding finding) {
    return MISSING_PRINTS.contains(finding.ruleId());
  }
}
