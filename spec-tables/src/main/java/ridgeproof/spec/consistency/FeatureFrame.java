package ridgeproof.spec.consistency;

import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/** The fields in which a feature record states the image that its features were taken from. */
public record FeatureFrame(
    FieldNumber width,
    FieldNumber height,
    FieldNumber scaleUnits,
    FieldNumber horizontalScale,
    FieldNumber verticalScale,
    Source source) {}
