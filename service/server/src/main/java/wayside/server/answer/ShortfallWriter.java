package wayside.server.answer;

import java.util.ArrayList;
import java.util.List;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;

/** What is short, in figures of one unit. */
public final class ShortfallWriter {
    private ShortfallWriter() {}

    public static List<ShortfallView> list(List<Shortfall> shortfalls, Figures figures) {
        List<ShortfallView> views = new ArrayList<>();
        for (Shortfall shortfall : shortfalls) {
            views.add(one(shortfall.message(), shortfall.needed(), shortfall.available(), figures.entry(views.size())));
        }
        return views;
    }

    public static ShortfallView one(Message told, Derived needed, Derived available, Figures figures) {
        MessageView message = MessageWriter.write(told);
        return new ShortfallView(
                message.code(),
                message.text(),
                message.parameters(),
                figures.at("needed", needed),
                figures.at("available", available),
                needed.unit().symbol());
    }
}
