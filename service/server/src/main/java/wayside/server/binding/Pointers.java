package wayside.server.binding;

/** JSON Pointers, RFC 6901. */
final class Pointers {
    private static final int LONGEST_NAME = 80;

    private Pointers() {}

    /** A name as a reference token; a name that no record could have is shortened. */
    static String escape(String name) {
        String token = name.length() > LONGEST_NAME ? name.substring(0, LONGEST_NAME) + "…" : name;
        return token.indexOf('~') < 0 && token.indexOf('/') < 0
                ? token
                : token.replace("~", "~0").replace("/", "~1");
    }
}
