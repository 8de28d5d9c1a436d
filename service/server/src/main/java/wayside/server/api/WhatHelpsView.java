package wayside.server.api;

import io.swagger.v3.oas.annotations.media.Schema;

/** One change and what it does. */
@Schema(
        name = "WhatHelps",
        description = "One change to the system or the trip, and the chance of running flat with it.")
public record WhatHelpsView(String code, String change, Double chanceOfRunningFlat) {}
