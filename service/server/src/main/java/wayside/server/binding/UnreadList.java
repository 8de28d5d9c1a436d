package wayside.server.binding;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;

/** A list of a request that is longer than is taken, or not asked for: counted and not kept. */
@SuppressWarnings("unchecked") // of ArrayNode.deepCopy, as that class does itself
final class UnreadList extends ArrayNode {
    private static final long serialVersionUID = 1L;

    private final int size;

    UnreadList(int size) {
        super(JsonNodeFactory.instance, 0);
        this.size = size;
    }

    @Override
    public int size() {
        return size;
    }
}
