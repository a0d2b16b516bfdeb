package ridgeproof.gate;

import java.time.Instant;

/**
 * A file that is held.
 *
 * @param entry the name of its folder
 * @param name as the station called it
 * @param since when it was decided
 * @param verdict in one word
 * @param why why it is held although it was READY; else empty
 */
public record HeldFile(String entry, String name, Instant since, String verdict, String why) {}
