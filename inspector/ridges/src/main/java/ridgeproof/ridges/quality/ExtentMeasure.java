package ridgeproof.ridges.quality;

import ridgeproof.ridges.map.EdgeContact;
import ridgeproof.ridges.map.RotatedBox;

/**
 * How much of a print there is.
 *
 * @param areaMm2 with its faint rims, square millimetres
 * @param ridgeAreaMm2 of the blocks with clear ridges, square millimetres
 * @param widthMm across the finger, mm
 * @param lengthMm along the finger, mm
 * @param box around it, in pixels of the image
 * @param edges where the image edges cut it
 */
public record ExtentMeasure(
    double areaMm2,
    double ridgeAreaMm2,
    double widthMm,
    double lengthMm,
    RotatedBox box,
    EdgeContact edges) {}
