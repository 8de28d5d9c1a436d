package wayside.server.mapping;

import java.util.ArrayList;
import java.util.List;
import wayside.server.api.ShortfallView;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Shortfall;

/** What is short, in figures of one unit. */
final class ShortfallWriter {
    private ShortfallWriter() {}

    static List<ShortfallView> list(List<Shortfall> shortfalls, Figures figures) {
        List<ShortfallView> views = new ArrayList<>();
        for (Shortfall shortfall : shortfalls) {
            views.add(one(
                    shortfall.code(),
                    shortfall.text(),
                    shortfall.needed(),
                    shortfall.available(),
                    figures.entry(views.size())));
        }
        return views;
    }

    static ShortfallView one(String code, String text, Derived needed, Derived available, Figures figures) {
        return new ShortfallView(
                code,
                text,
                figures.at("needed", needed),
                figures.at("available", available),
                needed.unit().symbol());
    }
}
