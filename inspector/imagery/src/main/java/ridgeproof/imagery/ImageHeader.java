package ridgeproof.imagery;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ridgeproof.transaction.record.ByteRange;

/**
 * What a codestream says of itself, before any pixel is decoded.
 *
 * @param width pixels, 0 where it says nothing
 * @param height pixels, 0 where it says nothing
 * @param bitsPerPixel bits of all components together, 0 where it says nothing
 * @param components colour components, 0 where it says nothing
 * @param density where the codestream states one
 * @param lossless whether the coding is reversible, where that can be told
 * @param quantizerRate bits per pixel that a lossy encoder chose its steps for, where its tables
 *     tell; what came of it depends on how much of the image is bare
 * @param extent the bytes from the start of the codestream to its end marker
 * @param comments key-values that the encoder wrote, in order; may tell of a person
 * @param facts further facts in the format's own terms, by name, in order: safe to show
 */
public record ImageHeader(
    ImageFormat format,
    int width,
    int height,
    int bitsPerPixel,
    int components,
    Optional<PixelDensity> density,
    Optional<Boolean> lossless,
    OptionalDouble quantizerRate,
    ByteRange extent,
    Map<String, String> comments,
    Map<String, String> facts,
    List<ImageDefect> defects) {}
