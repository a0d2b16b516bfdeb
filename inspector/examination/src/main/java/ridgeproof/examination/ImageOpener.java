package ridgeproof.examination;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import ridgeproof.imagery.Decoding;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.codec.JnbisWsqCodec;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.transaction.ByteSource;

/** Reads the header and decodes the pixels of each image once, several images at a time. */
final class ImageOpener {

  private final RecordImageDecoder decoder;
  private final ExaminationOptions options;
  private final Optional<RidgeSight> sight;

  /**
   * @param sight what looks at the ridges; nothing to leave them
   */
  ImageOpener(ExaminationOptions options, Optional<RidgeSight> sight) {
    this.options = options;
    this.sight = sight;
    this.decoder = new RecordImageDecoder(options.imageLimits());
  }

  List<ExaminedImage> open(List<ExaminedImage> images) {
    int threads = Math.min(options.threads(), images.size());
    if (threads <= 1) {
      return images.stream().map(this::open).toList();
    }
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      Map<ExaminedImage, Future<ExaminedImage>> opened = new IdentityHashMap<>();
      // The largest first, so that no worker is left with one at the end.
      images.stream()
          .sorted(Comparator.comparingLong(ImageOpener::bytes).reversed())
          .forEach(image -> opened.put(image, workers.submit(() -> open(image))));
      List<ExaminedImage> results = new ArrayList<>();
      for (ExaminedImage image : images) {
        results.add(opened.get(image).get());
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof OutOfMemoryError tooLittle) {
        throw tooLittle; // a verdict must not depend on the memory of a machine
      }
      throw new IllegalStateException("decoding failed with a defect of ours", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while decoding", e);
    } finally {
      workers.shutdownNow();
    }
  }

  private static long bytes(ExaminedImage image) {
    return image.data().map(data -> (long) data.length()).orElse(0L);
  }

  private ExaminedImage open(ExaminedImage image) {
    if (image.data().isEmpty()) {
      return image;
    }
    ByteSource data = image.data().get();
    ImageHeader header = ImageHeaders.read(data);
    Decoding decoding = decoder.decode(image, data, header);
    boolean frictionRidge = image.layout().frictionRidge();
    Optional<PixelFacts> pixels =
        decoding
            .image()
            .map(ours -> PixelFacts.of(ours, frictionRidge, second(image, header, decoding)));
    Optional<RidgeFacts> ridges =
        pixels.flatMap(
            facts ->
                sight.flatMap(eyes -> eyes.look(image, decoding.image().orElseThrow(), facts)));
    return image.opened(header, pixels, decoding.defects(), ridges);
  }

  /**
   * Decodes again where that is asked for; the other decoder is loaded no sooner. Of damaged bytes
   * each decoder makes what it likes.
   */
  private Optional<SecondDecoding> second(ExaminedImage image, ImageHeader header, Decoding first) {
    boolean damaged =
        first.defects().stream().anyMatch(defect -> defect.kind() == ImageDefect.Kind.DAMAGE);
    if (!options.secondDecoder() || header.format() != ImageFormat.WSQ || damaged) {
      return Optional.empty();
    }
    Decoding other =
        new JnbisWsqCodec().decode(image.data().get(), image.statedSize(), options.imageLimits());
    return Optional.of(SecondDecoding.of(first.image().orElseThrow(), other));
  }
}
