package ridgeproof.examination.facts;

import java.util.Optional;
import ridgeproof.imagery.GrayImage;

/**
 * The pixels of an image record.
 *
 * @param name record, position and IDC, fit for a file name: {@code record-03-position-01-idc-01}
 */
public record DecodedImage(String name, Optional<GrayImage> pixels) {}
