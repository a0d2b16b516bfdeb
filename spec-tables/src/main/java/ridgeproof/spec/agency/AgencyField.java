package ridgeproof.spec.agency;

import java.util.Optional;
import ridgeproof.spec.layout.FieldNumber;
import ridgeproof.spec.layout.Presence;
import ridgeproof.spec.layout.ValueRule;

/**
 * A field as the agency wants it.
 *
 * @param name what the agency calls it
 * @param meaning the values in plain words
 * @param personal whether reports mask the value although its layout calls it public
 * @param place where the agency has written this; may be empty
 */
public record AgencyField(
    FieldNumber number,
    String name,
    Presence presence,
    Optional<ValueRule> values,
    String meaning,
    boolean personal,
    String place) {}
