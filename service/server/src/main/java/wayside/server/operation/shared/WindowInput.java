package wayside.server.operation.shared;

import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.constraints.Pattern;

/** A part of the local day; may pass midnight. */
@Schema(
        name = "Window",
        description = "A part of the local day. A window whose end is not after its start passes"
                + " midnight; equal ends are the whole day.")
public record WindowInput(
        @Schema(description = "Local time at which it starts.", example = "18:00")
        @Pattern(
                regexp = "^([01][0-9]|2[0-3]):[0-5][0-9]$",
                message = "a local time from 00:00 to 23:59, two digits each: 07:00")
        String from,

        @Schema(description = "Local time at which it ends.", example = "22:30")
        @Pattern(
                regexp = "^(([01][0-9]|2[0-3]):[0-5][0-9]|24:00)$",
                message = "a local time from 00:00 to 24:00, two digits each: 07:00")
        String to) {}
