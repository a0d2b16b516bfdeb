/**
 * Other pictures in the place of images.
 *
 * <p>In: the bytes of an image and another picture of its size. Out: as many bytes of the same
 * format that show the other picture.
 */
package ridgeproof.imagery.standin;
