/** What every image format has in common: headers, gray pixels, limits, defects. */
package ridgeproof.imagery;
