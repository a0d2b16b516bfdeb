package ridgeproof.desk.web;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;
import ridgeproof.examination.Examiner;
import ridgeproof.examination.facts.ExaminationOptions;
import ridgeproof.examination.facts.ImageExtraction;
import ridgeproof.examination.safecopy.Deidentifier;
import ridgeproof.gate.FolderWatch;
import ridgeproof.gate.Gate;
import ridgeproof.ledger.health.StationHealth;
import ridgeproof.report.ToolFacts;
import ridgeproof.spec.SpecTables;

/**
 * How a desk works.
 *
 * @param port of the loopback address, 0 for any that is free
 * @param keep how long a file is kept after somebody last looked at it
 * @param maxFileBytes of one file
 * @param options asked for each file
 * @param extraction decodes images within the same limits
 * @param watch a folder whose new files come to the desk
 * @param gate a gate whose held files the desk shows and releases
 * @param ledger what a ledger says of the stations, asked whenever a person looks; empty if it
 *     cannot be read then
 * @param safeCopies makes copies of files that strangers may have
 * @param tool what tickets say of the program
 */
public record DeskSettings(
    int port,
    Duration keep,
    long maxFileBytes,
    Examiner examiner,
    Supplier<ExaminationOptions> options,
    ImageExtraction extraction,
    SpecTables tables,
    Optional<FolderWatch> watch,
    Optional<Gate> gate,
    Optional<Supplier<Optional<StationHealth>>> ledger,
    Supplier<Deidentifier> safeCopies,
    ToolFacts tool,
    Clock clock) {}
