package ridgeproof.cli.io;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A line on a terminal that overwrites itself and goes at the end. */
final class ProgressLine implements Progress {

  /** With a width of ours the library asks no terminal, which would start a process. */
  private static final int WIDTH = 78;

  private final PrintStream terminal;
  private final ProgressBar bar;

  ProgressLine(PrintStream terminal, String task, int steps) {
    this.terminal = terminal;
    this.bar =
        new ProgressBarBuilder()
            .setTaskName(task)
            .setInitialMax(steps)
            .setStyle(ProgressBarStyle.ASCII)
            .setMaxRenderedLength(WIDTH)
            .setConsumer(new ConsoleProgressBarConsumer(terminal, WIDTH))
            .build();
  }

  @Override
  public void step() {
    bar.step();
  }

  @Override
  public void pause() {
    terminal.print("\r" + " ".repeat(WIDTH) + "\r");
    terminal.flush();
  }

  @Override
  public void close() {
    bar.close();
    terminal.flush();
  }
}
