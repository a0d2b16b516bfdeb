/**
 * What is measured of gray levels: range, ground, ridge period, differences. In: pixels. Out:
 * numbers with their units.
 */
package ridgeproof.imagery.measure;
