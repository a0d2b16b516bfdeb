package ridgeproof.spec;

/** The fields in which a feature record states the image that its features were taken from. */
public record FeatureFrame(
    FieldNumber width,
    FieldNumber height,
    FieldNumber scaleUnits,
    FieldNumber horizontalScale,
    FieldNumber verticalScale,
    Source source) {}
