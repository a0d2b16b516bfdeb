/**
 * What is measured of one print, and its score. In: block maps and a region. Out: measures with
 * units, and a score from 0 to 100.
 */
package ridgeproof.ridges.quality;
