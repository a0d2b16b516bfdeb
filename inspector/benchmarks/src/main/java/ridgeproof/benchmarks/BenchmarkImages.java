package ridgeproof.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.imagery.DecodingLimits;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.reader.ParseLimits;
import ridgeproof.transaction.reader.TransactionReader;
import ridgeproof.transaction.record.ByteSource;

/** The public reference transactions beside the project, and the WSQ images in them. */
final class BenchmarkImages {

  private static final String TRANSACTION = ".an2";

  private BenchmarkImages() {}

  static ByteSource transaction(String name) throws IOException {
    return ByteSource.of(Files.readAllBytes(folder().resolve(name)));
  }

  /** The bytes of each WSQ image, in the order of the files. */
  static List<ByteSource> wsq() throws IOException {
    SpecTables tables = SpecTables.open();
    TransactionReader reader = new TransactionReader(tables, ParseLimits.standard());
    ImageExtraction extraction = new ImageExtraction(tables, DecodingLimits.standard());
    List<ByteSource> images = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder())) {
      for (Path file : files.filter(f -> f.toString().endsWith(TRANSACTION)).sorted().toList()) {
        ByteSource bytes = ByteSource.of(Files.readAllBytes(file));
        for (ExaminedImage image : extraction.imagesOf(reader.read(bytes))) {
          if (image.statedFormat().filter(format -> format == ImageFormat.WSQ).isPresent()) {
            images.add(image.data().orElseThrow());
          }
        }
      }
    }
    return images;
  }

  private static Path folder() {
    for (Path place = Path.of("").toAbsolutePath(); place != null; place = place.getParent()) {
      Path candidate = place.resolve("shared/reference");
      if (Files.isDirectory(candidate)) {
        return candidate;
      }
    }
    throw new IllegalStateException("no shared/reference beside the project");
  }
}
