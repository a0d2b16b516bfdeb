package ridgeproof.spec.consistency;

import java.util.Set;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.table.Source;

/** A field that goes only with certain positions of the image. */
public record DescriptorField(
    FieldNumber field, FieldNumber positionsField, Set<Integer> positions, Source source) {}
