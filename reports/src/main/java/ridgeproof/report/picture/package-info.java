/**
 * Images and drawings: thumbnails, overlays, true size. In: pixels and measures. Out: PNG or SVG.
 */
package ridgeproof.report.picture;
