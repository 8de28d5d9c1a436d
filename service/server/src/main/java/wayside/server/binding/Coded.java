package wayside.server.binding;

import com.fasterxml.jackson.annotation.JsonValue;

/** An enumeration that the contract writes by its code. */
public interface Coded {
    /** As it stands in JSON: {@code lfp}. */
    @JsonValue
    String code();
}
