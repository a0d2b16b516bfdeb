package ridgeproof.spec;

import java.util.Set;

/** A field that goes only with certain positions of the image. */
public record DescriptorField(
    FieldNumber field, FieldNumber positionsField, Set<Integer> positions, Source source) {}
