package wayside.server.http;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/** Pages by name, each made once. */
final class PageCache {
    private final Function<String, Optional<Page>> source;
    private final Map<String, Page> known = new ConcurrentHashMap<>();

    PageCache(Function<String, Optional<Page>> source) {
        this.source = source;
    }

    Optional<Page> find(String name) {
        Page kept = known.get(name);
        if (kept != null) {
            return Optional.of(kept);
        }
        Optional<Page> page = source.apply(name);
        // Only what exists is kept, or a client could fill the memory with names.
        page.ifPresent(found -> known.put(name, found));
        return page;
    }
}
