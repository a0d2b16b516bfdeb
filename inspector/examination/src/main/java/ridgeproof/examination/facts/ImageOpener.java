package ridgeproof.examination.facts;

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
import ridgeproof.imagery.GrayImage;
import ridgeproof.imagery.ImageDefect;
import ridgeproof.imagery.ImageFormat;
import ridgeproof.imagery.ImageHeader;
import ridgeproof.imagery.codec.JnbisWsqCodec;
import ridgeproof.imagery.header.ImageHeaders;
import ridgeproof.imagery.platen.PlatenFacts;
import ridgeproof.transaction.record.ByteSource;

/** Reads the header and decodes the pixels of each image once, several images at a time. */
public final class ImageOpener {

  private final RecordImageDecoder decoder = new RecordImageDecoder();
  private final ExaminationOptions options;
  private final Optional<RidgeAnalyzer> sight;

  /**
   * @param sight what looks at the ridges; nothing to leave them
   */
  public ImageOpener(ExaminationOptions options, Optional<RidgeAnalyzer> sight) {
    this.options = options;
    this.sight = sight;
  }

  /**
   * What is done with an image.
   *
   * @param refusal why it is not decoded, if so
   * @param workingPixels at which its ridges are looked at
   * @param ridgesRefusal why its ridges are not looked at, if so
   */
  private record Plan(
      ExaminedImage image,
      Optional<ImageHeader> header,
      Optional<ImageDefect> refusal,
      long workingPixels,
      Optional<ImageDefect> ridgesRefusal) {}

  /**
   * Opens all images of a file.
   *
   * @param fileBytes how large the file is
   */
  public List<ExaminedImage> open(List<ExaminedImage> images, long fileBytes) {
    FileBudget budget = new FileBudget(options.imageLimits(), fileBytes);
    List<Plan> plans = images.stream().map(image -> plan(image, budget)).toList();
    int threads = Math.min(options.threads(), plans.size());
    if (threads <= 1) {
      return plans.stream().map(plan -> open(plan, budget)).toList();
    }
    return openAtOnce(plans, budget, threads);
  }

  private Plan plan(ExaminedImage image, FileBudget budget) {
    Optional<ImageHeader> header = image.data().map(ImageHeaders::read);
    Optional<ImageDefect> refusal = header.flatMap(read -> budget.take(image, read));
    long looked =
        header.isPresent() && refusal.isEmpty() && sight.isPresent()
            ? sight.get().workingPixels(image, header.get())
            : 0;
    Optional<ImageDefect> blind = header.flatMap(read -> budget.takeRidges(read, looked));
    return new Plan(image, header, refusal, blind.isEmpty() ? looked : 0, blind);
  }

  private List<ExaminedImage> openAtOnce(List<Plan> plans, FileBudget budget, int threads) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      Map<Plan, Future<ExaminedImage>> opened = new IdentityHashMap<>();
      // The largest first, so that no worker is left with one at the end.
      plans.stream()
          .sorted(Comparator.comparingLong(ImageOpener::bytes).reversed())
          .forEach(plan -> opened.put(plan, workers.submit(() -> open(plan, budget))));
      List<ExaminedImage> results = new ArrayList<>();
      for (Plan plan : plans) {
        results.add(opened.get(plan).get());
      }
      return results;
    } catch (ExecutionException e) {
      if (e.getCause() instanceof OutOfMemoryError tooLittle) {
        throw tooLittle; // a verdict must not depend on the memory of a machine
      }
      throw new IllegalStateException("decoding failed with an internal error", e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("decoding was interrupted", e);
    } finally {
      workers.shutdownNow();
    }
  }

  private static long bytes(Plan plan) {
    return plan.image().data().map(data -> (long) data.length()).orElse(0L);
  }

  private ExaminedImage open(Plan plan, FileBudget budget) {
    if (plan.header().isEmpty()) {
      return plan.image();
    }
    ImageHeader header = plan.header().get();
    Optional<ImageDefect> refusal = plan.refusal().or(() -> budget.late(header));
    if (refusal.isPresent()) {
      return plan.image()
          .opened(header, Optional.empty(), List.of(refusal.get()), Optional.empty());
    }
    int taken = budget.enter(plan.image(), header, plan.workingPixels());
    try {
      return decode(plan, header, budget);
    } finally {
      budget.leave(taken);
    }
  }

  private ExaminedImage decode(Plan plan, ImageHeader header, FileBudget budget) {
    ExaminedImage image = plan.image();
    ByteSource data = image.data().orElseThrow();
    Decoding decoding = decoder.decode(image, data, header, budget.limits());
    boolean frictionRidge = image.layout().frictionRidge();
    Optional<PixelStatistics> pixels =
        decoding
            .image()
            .map(ours -> PixelStatistics.of(ours, frictionRidge, second(image, header, decoding)))
            .map(facts -> withPlaten(facts, image, decoding.image().orElseThrow()));
    List<ImageDefect> defects = new ArrayList<>(decoding.defects());
    Optional<ImageDefect> blind = plan.ridgesRefusal().or(() -> budget.late(header));
    if (blind.isPresent() && pixels.isPresent() && sight.isPresent()) {
      defects.add(blind.get());
    }
    Optional<RidgeAnalysis> ridges =
        pixels
            .filter(facts -> blind.isEmpty())
            .flatMap(
                facts ->
                    sight.flatMap(eyes -> eyes.look(image, decoding.image().orElseThrow(), facts)));
    return image.opened(header, pixels, List.copyOf(defects), ridges);
  }

  private PixelStatistics withPlaten(PixelStatistics facts, ExaminedImage image, GrayImage pixels) {
    return options.platen() && image.layout().frictionRidge() && image.density().isPresent()
        ? facts.withPlaten(PlatenFacts.of(pixels, image.density().get().meanPpi()))
        : facts;
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
