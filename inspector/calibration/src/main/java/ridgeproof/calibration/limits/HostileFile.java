package ridgeproof.calibration.limits;

import java.util.function.Supplier;

/**
 * A file that tries to cost more than it should.
 *
 * @param name what it does, in a few words
 * @param bytes made when they are asked for, so that no two files are in memory at once
 */
record HostileFile(String name, Supplier<byte[]> bytes) {}
