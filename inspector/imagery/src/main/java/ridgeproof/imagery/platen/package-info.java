/**
 * What an image shows of the glass it was captured on, beside the prints: light, stains, lines of a
 * faulty sensor, traces of the print before. In: the pixels of one image. Out: a few numbers that
 * hold no ridge, so that they may be kept when the image is gone.
 */
package ridgeproof.imagery.platen;
