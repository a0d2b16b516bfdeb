/**
 * Measures friction ridge images: what a print shows, where the fingers of a slap lie, and whether
 * plain prints and rolls bear the right names. It knows neither file formats nor findings.
 *
 * <p>Every image is divided into blocks of 12 pixels at 500 ppi once. Each block has its ridge flow
 * ({@link ridgeproof.ridges.map.StructureTensorField}) and the profile across its ridges ({@link
 * ridgeproof.ridges.map.XSignatureField}); masks, singular points and measures are all made of
 * these.
 *
 * <p>Methods: averaged squared gradients (Kass and Witkin 1987), x-signature (Hong, Wan and Jain
 * 1998), local clarity (Chen, Dass and Jain 2005), orientation certainty, frequency domain analysis
 * and ridge-valley uniformity after ISO/IEC 29794-4 (from memory), Poincare index (Kawagoe and Tojo
 * 1984). Thresholds without a source are ours, set on scanned ink cards.
 */
package ridgeproof.ridges;
