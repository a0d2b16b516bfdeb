/**
 * Huffman coding of the symbols, with stuffed bytes and restart markers. In: coded blocks. Out:
 * quantized coefficients, and back.
 */
package ridgeproof.imagery.wsq.entropy;
