package ridgeproof.cli.option;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.spec.SpecTables;
import ridgeproof.spec.SubmissionProfile;
import ridgeproof.spec.agency.AgencyProfileReader;
import ridgeproof.spec.agency.ProfileReading;

/** What {@code --profile} names: a submission that comes with Ridgeproof, or an agency's file. */
public final class NamedProfile {

  private static final int LARGEST = 1024 * 1024;
  private static final String FILE_ENDING = ".toml";

  private NamedProfile() {}

  public static ExaminationOptions applyTo(
      ExaminationOptions options, String name, SpecTables tables) {
    Optional<SubmissionProfile> built = tables.profileNamed(name);
    if (built.isPresent()) {
      return options.withProfile(built.get());
    }
    if (!isFile(name)) {
      throw CommandFailure.usage(
          tables.noProfile(name) + ", or a file with the extension " + FILE_ENDING);
    }
    ProfileReading reading = AgencyProfileReader.read(text(name), tables);
    if (reading instanceof ProfileReading.Unusable unusable) {
      throw CommandFailure.usage(unusable.problems().get(0).inFile(name));
    }
    return options.withAgency(((ProfileReading.Usable) reading).profile());
  }

  private static boolean isFile(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(FILE_ENDING)
        || name.contains("/")
        || name.contains("\\");
  }

  private static String text(String name) {
    try {
      Path path = Path.of(name);
      byte[] bytes;
      try (InputStream stream = Files.newInputStream(path)) {
        bytes = stream.readNBytes(LARGEST + 1);
      } catch (IOException e) {
        throw CommandFailure.usage(IoErrorMessages.of(path, e));
      }
      if (bytes.length > LARGEST) {
        throw CommandFailure.usage(name + ": exceeds the size limit of a profile, 1 MiB");
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw CommandFailure.usage(name + ": is not encoded in UTF-8");
    } catch (InvalidPathException e) {
      throw CommandFailure.usage(name + ": is not a file name");
    }
  }
}
