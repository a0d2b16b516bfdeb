/** The wavelet transform, forward and inverse. In: rows of pixels or subbands. Out: the other. */
package ridgeproof.imagery.wsq.wavelet;
