package ridgeproof.examination;

import java.util.ArrayList;
import java.util.List;
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

  ImageOpener(ExaminationOptions options) {
    this.options = options;
    this.decoder = new RecordImageDecoder(options.imageLimits());
  }

  List<ExaminedImage> open(List<ExaminedImage> images) {
    int threads = Math.min(options.threads(), images.size());
    if (threads <= 1) {
      return images.stream().map(this::open).toList();
    }
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<ExaminedImage>> opened = new ArrayList<>();
      images.forEach(image -> opened.add(workers.submit(() -> open(image))));
      List<ExaminedImage> results = new ArrayList<>();
      for (Future<ExaminedImage> future : opened) {
        results.add(future.get());
      }
      return results;
    } catch (ExecutionException e) {
      throw new IllegalStateException("decoding failed with a defect of ours", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while decoding", e);
    } finally {
      workers.shutdownNow();
    }
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
    return image.opened(header, pixels, decoding.defects());
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
