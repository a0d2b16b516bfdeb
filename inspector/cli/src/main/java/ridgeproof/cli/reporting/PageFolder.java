package ridgeproof.cli.reporting;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import ridgeproof.cli.io.InputFile;
import ridgeproof.cli.io.OutputFile;
import ridgeproof.cli.io.PageNames;
import ridgeproof.examination.FindingsReport;
import ridgeproof.report.FileFacts;
import ridgeproof.report.NotExamined;
import ridgeproof.report.summary.FolderSummary;

/** A folder with a page for each file, and a summary that leads to them. */
public final class PageFolder implements ReportSink {

  private final Path folder;
  private final List<String> pages;
  private final BiFunction<FileFacts, FindingsReport, String> render;
  private final FolderSummary summary;
  private final boolean overwrite;
  private int next;

  private PageFolder(
      Path folder,
      List<String> pages,
      BiFunction<FileFacts, FindingsReport, String> render,
      FolderSummary summary,
      boolean overwrite) {
    this.folder = folder;
    this.pages = pages;
    this.render = render;
    this.summary = summary;
    this.overwrite = overwrite;
  }

  /**
   * Makes the folder if need be, and refuses before the work what it would refuse in the middle.
   *
   * @param inputs the files whose reports will be added, in their order
   */
  public static PageFolder open(
      Path folder,
      List<Path> inputs,
      BiFunction<FileFacts, FindingsReport, String> render,
      FolderSummary summary,
      boolean overwrite) {
    List<String> pages = PageNames.of(inputs);
    try {
      Files.createDirectories(folder);
      Set<Path> real = new HashSet<>();
      for (Path input : inputs) {
        if (Files.exists(input)) {
          real.add(input.toRealPath());
        }
      }
      refuse(folder.resolve(PageNames.INDEX), real, overwrite);
      for (String page : pages) {
        refuse(folder.resolve(page), real, overwrite);
      }
      // An old summary would speak of new pages if this run is broken off.
      Files.deleteIfExists(folder.resolve(PageNames.INDEX));
    } catch (IOException e) {
      throw OutputFile.failure(folder, e);
    }
    return new PageFolder(folder, pages, render, summary, overwrite);
  }

  private static void refuse(Path target, Set<Path> inputs, boolean overwrite) throws IOException {
    if (!Files.exists(target)) {
      return;
    }
    if (inputs.contains(target.toRealPath())) {
      throw OutputFile.isInput(target);
    }
    if (!overwrite) {
      throw OutputFile.exists(target);
    }
  }

  @Override
  public void add(InputFile file, FindingsReport report) {
    String page = pages.get(next++);
    write(page, render.apply(file.facts(), report));
    summary.add(file.facts(), report, page);
  }

  @Override
  public void add(NotExamined file) {
    next++; // the page of an input that could not be opened is not made
    summary.add(file);
  }

  @Override
  public void end() {
    write(PageNames.INDEX, summary.page());
  }

  @Override
  public void close() {
    // Each page is whole as soon as it is there.
  }

  private void write(String page, String text) {
    OutputFile.write(
        folder.resolve(page), text.getBytes(StandardCharsets.UTF_8), overwrite, List.of());
  }
}
