/**
 * Block maps of one image at 500 ppi: orientation, ridge profile, masks, regions. In: gray pixels.
 * Out: what every measure is computed from.
 */
package ridgeproof.ridges.map;
