package ridgeproof.archive.examining;

import java.io.Serializable;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalLong;
import ridgeproof.examination.facts.Depth;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.ledger.KeyedHash;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.agency.AgencyProfile;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;
import ridgeproof.transaction.reader.ParseLimits;

/**
 * How every task examines; small, and sent to all of them.
 *
 * @param profile name of a submission, or the text of an agency's profile; null for neither
 * @param today days since 1970-01-01
 * @param limits of reading and of decoding
 * @param key of the archive
 * @param program version of Ridgeproof
 */
public record ExaminationPlan(
    Depth depth,
    String profile,
    long today,
    Limits limits,
    boolean platen,
    byte[] key,
    String program)
    implements Serializable {

  /** Past so many minutes a file is given up, whatever holds it up. */
  private static final long MIN_MINUTES = 10;

  /**
   * The budgets of a file as numbers.
   *
   * @param filePixels negative for what the bytes make plausible
   */
  public record Limits(
      int maxBytes,
      int maxRecords,
      int maxItems,
      int maxFindings,
      long maxPixels,
      long imageSeconds,
      long filePixels,
      long fileSeconds)
      implements Serializable {

    public static Limits of(ParseLimits reading, DecodingLimits decoding) {
      return new Limits(
          reading.maxBytes(),
          reading.maxRecords(),
          reading.maxItems(),
          reading.maxFindings(),
          decoding.maxPixels(),
          decoding.timeLimit().toSeconds(),
          decoding.filePixels().orElse(-1),
          decoding.fileTime().toSeconds());
    }

    ParseLimits reading() {
      return new ParseLimits(maxBytes, maxRecords, maxItems, maxFindings);
    }

    DecodingLimits decoding() {
      return new DecodingLimits(
          maxPixels,
          Duration.ofSeconds(imageSeconds),
          filePixels < 0 ? OptionalLong.empty() : OptionalLong.of(filePixels),
          Duration.ofSeconds(fileSeconds));
    }
  }

  /** One image at a time: the tasks of a worker share its cores already. */
  ExaminationOptions options(SpecTables tables) {
    ExaminationOptions options =
        new ExaminationOptions(
            depth,
            Optional.empty(),
            Optional.empty(),
            LocalDate.ofEpochDay(today),
            limits.decoding(),
            1,
            false,
            platen);
    if (profile == null) {
      return options;
    }
    return tables
        .profileNamed(profile)
        .map(options::withProfile)
        .orElseGet(() -> options.withAgency(agency(tables)));
  }

  private AgencyProfile agency(SpecTables tables) {
    if (AgencyProfileReader.read(profile, tables) instanceof ProfileReading.Usable usable) {
      return usable.profile();
    }
    throw new IllegalStateException("the profile was read before");
  }

  /** The hashes by the key of the archive. */
  public KeyedHash hash() {
    return new KeyedHash(key);
  }

  /** By what an archive knows an input again; its address could name a person. */
  public static String inputHash(KeyedHash hash, String identity) {
    return hash.control("input\0" + identity);
  }

  /** The longest time for a file: far more than its images may take. */
  Duration patience() {
    return Duration.ofSeconds(Math.max(MIN_MINUTES * 60, 4 * limits.fileSeconds()));
  }
}
