package ridgeproof.benchmarks;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import ridgeproof.imagery.GrayImage;

/**
 * {@code djpeg} of libjpeg-turbo over JPEG files of given images, at Image I/O's usual quality. One
 * shell runs it once for each file and tells the processor time of all those processes; what they
 * take to start is measured on an image of 8 x 8 pixels and taken off.
 */
final class JpegYardstick {

  private static final int PASSES = 5;
  private static final int SMALL = 8;

  /** The second line of the shell's {@code times}: user and system time of its children. */
  private static final Pattern TIME = Pattern.compile("(\\d+)m([\\d.]+)s");

  private static final double NANOS = 1e9;

  private final Path folder;
  private final Path small;
  private final List<Path> files = new ArrayList<>();
  private final long pixels;
  private long bytes;

  private JpegYardstick(List<GrayImage> images) throws IOException {
    folder = Files.createTempDirectory("ridgeproof-jpeg");
    long sum = 0;
    for (GrayImage image : images) {
      Path file = write(image, images.indexOf(image) + ".jpg");
      files.add(file);
      bytes += Files.size(file);
      sum += (long) image.width() * image.height();
    }
    pixels = sum;
    small = write(GrayImage.owning(SMALL, SMALL, new byte[SMALL * SMALL]), "small.jpg");
  }

  static JpegYardstick of(List<GrayImage> images) throws IOException {
    return new JpegYardstick(images);
  }

  private Path write(GrayImage image, String name) throws IOException {
    BufferedImage gray =
        new BufferedImage(image.width(), image.height(), BufferedImage.TYPE_BYTE_GRAY);
    byte[] target = ((DataBufferByte) gray.getRaster().getDataBuffer()).getData();
    image.asBuffer().get(target);
    Path file = folder.resolve(name);
    ImageIO.write(gray, "jpg", file.toFile());
    return file;
  }

  /** Pixels of all passes over all files. */
  long pixels() {
    return pixels * PASSES;
  }

  double compressionRatio() {
    return (double) pixels / bytes;
  }

  /** Nanoseconds of processor time for all passes, without starting the processes. */
  long decodeAll() throws IOException, InterruptedException {
    List<Path> smallOnes = files.stream().map(file -> small).toList();
    return Math.max(0, childNanos(files) - childNanos(smallOnes));
  }

  private static long childNanos(List<Path> inputs) throws IOException, InterruptedException {
    StringBuilder script = new StringBuilder("set -e\n");
    for (int pass = 0; pass < PASSES; pass++) {
      for (Path input : inputs) {
        script.append("djpeg -grayscale -pnm -outfile /dev/null '").append(input).append("'\n");
      }
    }
    script.append("times\n");
    Process shell = new ProcessBuilder("bash").redirectErrorStream(true).start();
    shell.getOutputStream().write(script.toString().getBytes(StandardCharsets.UTF_8));
    shell.getOutputStream().close();
    String told = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    List<MatchResult> times = TIME.matcher(told).results().toList();
    if (shell.waitFor() != 0 || times.size() != 4) {
      throw new IOException("djpeg of libjpeg-turbo-progs is needed: " + told.strip());
    }
    return nanos(times.get(2)) + nanos(times.get(3));
  }

  private static long nanos(MatchResult time) {
    return (long)
        ((Integer.parseInt(time.group(1)) * 60 + Double.parseDouble(time.group(2))) * NANOS);
  }

  void delete() throws IOException {
    for (Path file : files) {
      Files.delete(file);
    }
    Files.delete(small);
    Files.delete(folder);
  }
}
