package wayside.server.problem;

import java.util.Locale;

/** The kinds of problems that a client can meet, one page section each. */
public enum ProblemKind {
    MALFORMED_JSON(400, "The body is not well-formed JSON"),
    BAD_REQUEST(400, "The request cannot be read"),
    NOT_FOUND(404, "There is nothing at this address"),
    METHOD_NOT_ALLOWED(405, "This address does not take this method"),
    NOT_ACCEPTABLE(406, "The answer is not to be had in the type asked for"),
    REQUEST_TIMEOUT(408, "The request took too long to arrive"),
    TOO_LARGE(413, "The body is too large"),
    URI_TOO_LONG(414, "The address is too long"),
    UNSUPPORTED_MEDIA_TYPE(415, "The body has a type or a coding that is not read here"),
    INVALID_FIELDS(422, "The request has fields that cannot be used"),
    TOO_MANY_REQUESTS(429, "You ask too much at once"),
    HEADERS_TOO_LARGE(431, "The header fields are too large"),
    INTERNAL(500, "The service made a mistake"),
    BUSY(503, "The service is busy");

    private final int status;
    private final String title;

    ProblemKind(int status, String title) {
        this.status = status;
        this.title = title;
    }

    public int status() {
        return status;
    }

    public String title() {
        return title;
    }

    /** Kebab-case, as it stands in the address. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public String type() {
        return "/problems/" + code();
    }

    /** The kind that goes with a status of HTTP. */
    public static ProblemKind ofStatus(int status) {
        for (ProblemKind kind : values()) {
            if (kind.status == status && kind != MALFORMED_JSON) {
                return kind;
            }
        }
        return status >= 500 ? INTERNAL : BAD_REQUEST;
    }
}
