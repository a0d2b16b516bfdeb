package ridgeproof.transaction.record;

/**
 * An information item.
 *
 * @param text its characters; empty for an item that is there but says nothing
 */
public record Item(String text, ByteRange range) {}
