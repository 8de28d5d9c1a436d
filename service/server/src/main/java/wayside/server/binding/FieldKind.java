package wayside.server.binding;

/** What JSON a field of a request takes. */
enum FieldKind {
    TEXT,
    NUMBER,
    INTEGER,
    BOOLEAN,
    CODE,
    OBJECT,
    LIST;

    static FieldKind of(Class<?> type) {
        if (type == String.class) {
            return TEXT;
        } else if (type == Double.class) {
            return NUMBER;
        } else if (type == Integer.class) {
            return INTEGER;
        } else if (type == Boolean.class) {
            return BOOLEAN;
        } else if (type.isEnum()) {
            return CODE;
        } else if (type.isRecord()) {
            return OBJECT;
        }
        throw new IllegalArgumentException("A request cannot hold a " + type.getName());
    }
}
