package ridgeproof.desk.web;

import java.time.Clock;
import java.time.Duration;
import java.util.function.Supplier;
import ridgeproof.examination.ExaminationOptions;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.ImageExtraction;
import ridgeproof.report.ToolFacts;

/**
 * How a desk works.
 *
 * @param port of the loopback address, 0 for any that is free
 * @param keep how long a file is kept after somebody last looked at it
 * @param maxFileBytes of one file
 * @param options asked for each file
 * @param extraction decodes images within the same limits
 * @param tool what tickets say of the program
 */
public record DeskSettings(
    int port,
    Duration keep,
    long maxFileBytes,
    Examiner examiner,
    Supplier<ExaminationOptions> options,
    ImageExtraction extraction,
    ToolFacts tool,
    Clock clock) {}
