package ridgeproof.corpus.impression;

import ridgeproof.spec.layout.FingerPosition;

/**
 * Where one finger lies in an image of several: the upright box around its print from the tip to
 * the flexion crease, clipped to the image. Coordinates are pixels and belong to the box.
 *
 * @param digit which finger
 * @param left leftmost column
 * @param top topmost row
 * @param right rightmost column
 * @param bottom lowest row
 * @param rotationDegrees how far the finger is turned clockwise from upright
 */
public record FingerBox(
    FingerPosition digit, int left, int top, int right, int bottom, double rotationDegrees) {}
