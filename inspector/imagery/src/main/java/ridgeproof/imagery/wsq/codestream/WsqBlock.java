package ridgeproof.imagery.wsq.codestream;

import java.util.Optional;

/**
 * One entropy-coded block: SOB and the data after it.
 *
 * @param offset of the marker in the file
 * @param tableId number of the Huffman table
 * @param table the Huffman table of that number in force here, if one was defined
 * @param dataOffset of the first byte of entropy-coded data in the file
 * @param dataLength bytes of entropy-coded data, with stuffed bytes and restart markers
 */
public record WsqBlock(
    int offset, int tableId, Optional<HuffmanTable> table, int dataOffset, int dataLength) {}
