package wayside.server.answer;

import java.util.ArrayList;
import java.util.List;
import wayside.server.words.English;
import wayside.sizing.laws.Law;
import wayside.sizing.laws.Laws;
import wayside.sizing.trace.Message;

/** What must hold between the parts of a system, and by how much it does. */
public final class LawWriter {
    private LawWriter() {}

    public static List<LawView> list(Laws laws, Figures figures) {
        List<LawView> views = new ArrayList<>();
        for (Law law : laws.all()) {
            views.add(one(law, figures.entry(views.size())));
        }
        return views;
    }

    private static LawView one(Law law, Figures figures) {
        return new LawView(
                law.code().code(),
                English.text(Message.of(law.code())),
                law.verdict().code(),
                figures.at("asked", law.asked()),
                figures.at("allowed", law.allowed()),
                law.asked().unit().symbol(),
                figures.at("marginShare", law.margin()),
                law.told().map(MessageWriter::write).orElse(null));
    }
}
