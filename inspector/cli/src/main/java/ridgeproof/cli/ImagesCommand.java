package ridgeproof.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ridgeproof.cli.io.CommandFailure;
import ridgeproof.cli.io.Console;
import ridgeproof.cli.io.ExitStatus;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.IoErrorMessages;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.option.LimitOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.DecodedImage;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ExaminedImage;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.facts.MarkedFinger;
import ridgeproof.examination.facts.RidgeAnalysis;
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.codec.PngWriter;
import ridgeproof.report.picture.RidgePicture;
import ridgeproof.spec.SpecTables;
import ridgeproof.transaction.Transaction;
import ridgeproof.transaction.reader.TransactionReader;

@Command(
    name = "images",
    description = {
      "Writes the images of a transaction file as PNG files.",
      "",
      "Fingerprint images are personal data: store them as securely as the transaction " + "itself."
    },
    footer = {
      "",
      "Examples:",
      "  ridgeproof images --output images card.an2",
      "  ridgeproof images --output images --finger 2 --overlay card.an2"
    })
final class ImagesCommand implements Callable<Integer> {

  @Parameters(paramLabel = "FILE", description = "a transaction file")
  Path path;

  @Option(
      names = "--output",
      paramLabel = "DIR",
      required = true,
      description = "the folder to write to; it is created if needed")
  Path folder;

  @Option(
      names = "--finger",
      paramLabel = "POSITION",
      description =
          "only images of this friction ridge position, such as 2; with --crop, also segments")
  Integer finger;

  @Option(
      names = "--crop",
      description =
          "also write each segment that a record marks in its image (14.021 and 14.025), cut out;"
              + " the bounding box of a polygon")
  boolean crop;

  @Option(
      names = "--overlay",
      description =
          "also write each fingerprint with what was found drawn on it: clear ridges tinted,"
              + " boxes around prints, cores (ring), deltas (triangle), minutiae (dot: end, square: fork)")
  boolean overlay;

  @Option(names = "--overwrite", description = "replace existing files")
  boolean overwrite;

  @Mixin LimitOptions limits;

  private final Console console;

  ImagesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    SpecTables tables = SpecTables.open();
    InputFile file = InputFile.open(path, limits.maxFileSize);
    Transaction transaction = new TransactionReader(tables, limits.reading()).read(file.bytes());
    ImageExtraction extraction = new ImageExtraction(tables, limits.decoding());
    List<ExaminedImage> images =
        extraction.imagesOf(transaction).stream()
            .filter(image -> isWanted(image) || !wantedFingers(image, extraction).isEmpty())
            .toList();
    if (images.isEmpty()) {
      throw CommandFailure.inputOutput(
          path + (finger == null ? ": no image record" : ": no image at position " + finger));
    }
    makeFolder();
    Map<Integer, RidgeAnalysis> ridges = overlay ? ridges(file, tables) : Map.of();
    int failed = 0;
    for (ExaminedImage image : images) {
      DecodedImage decoded = extraction.decode(image);
      if (decoded.pixels().isEmpty()) {
        failed++;
        console.complain(decoded.name() + ": cannot be decoded");
        continue;
      }
      if (isWanted(image)) {
        write(decoded, image);
        RidgeAnalysis seen = ridges.get(image.record().ordinal());
        if (seen != null) {
          writeOverlay(decoded, seen);
        }
      }
      for (MarkedFinger marked : wantedFingers(image, extraction)) {
        DecodedImage cut = extraction.cut(image, decoded.pixels().get(), marked);
        if (cut.pixels().isPresent()) {
          write(cut, image);
        } else {
          failed++;
          console.complain(cut.name() + ": outside its image");
        }
      }
    }
    return failed == 0 ? ExitStatus.OK : 1;
  }

  private boolean isWanted(ExaminedImage image) {
    return finger == null || image.positions().contains(finger);
  }

  private List<MarkedFinger> wantedFingers(ExaminedImage image, ImageExtraction extraction) {
    return crop
        ? extraction.markedFingersOf(image).stream()
            .filter(marked -> finger == null || marked.position() == finger)
            .toList()
        : List.of();
  }

  private void write(DecodedImage decoded, ExaminedImage image) {
    GrayImage pixels = decoded.pixels().orElseThrow();
    Path target = folder.resolve(decoded.name() + ".png");
    OutputFile.write(target, PngWriter.encode(pixels, image.density()), overwrite, List.of(path));
    console.print(
        String.format(Locale.ROOT, "%s  %d x %d", target, pixels.width(), pixels.height()));
  }

  private Map<Integer, RidgeAnalysis> ridges(InputFile file, SpecTables tables) {
    ExaminationOptions options = ExaminationOptions.standard().withImageLimits(limits.decoding());
    Map<Integer, RidgeAnalysis> ridges = new HashMap<>();
    new Examiner(tables, limits.reading())
        .examine(file.bytes(), options)
        .images()
        .forEach(
            image ->
                image.ridges().ifPresent(facts -> ridges.put(image.record().ordinal(), facts)));
    return ridges;
  }

  private void writeOverlay(DecodedImage decoded, RidgeAnalysis facts) {
    GrayImage pixels = decoded.pixels().orElseThrow();
    Path target = folder.resolve(decoded.name() + "-ridges.png");
    OutputFile.write(target, RidgePicture.png(pixels, facts), overwrite, List.of(path));
    console.print(
        String.format(Locale.ROOT, "%s  %d x %d", target, pixels.width(), pixels.height()));
  }

  private void makeFolder() {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw CommandFailure.inputOutput("cannot create the folder " + IoErrorMessages.of(folder, e));
    }
  }
}
