/** The 64 subbands of an image, their quantized coefficients and the symbols that code them. */
package ridgeproof.imagery.wsq.subband;
