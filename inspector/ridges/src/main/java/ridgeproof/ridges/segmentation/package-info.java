/** The fingers of a slap. In: block maps. Out: a box for each finger, and which finger it is. */
package ridgeproof.ridges.segmentation;
