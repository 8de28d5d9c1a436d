package wayside.server.words;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.MessageCode;

/** The English sentences, from one file. */
public final class English {
    private static final Properties WORDS = read();
    private static final Map<MessageCode, Sentence> SENTENCES = sentences();

    private English() {}

    /** What a message says, its figures rounded as people say them. */
    public static String text(Message message) {
        return sentence(message.code()).with(message);
    }

    /** What messages of a code say, with the names of their parameters in braces. */
    public static String pattern(MessageCode code) {
        return sentence(code).pattern();
    }

    static Sentence sentence(MessageCode code) {
        return Objects.requireNonNull(SENTENCES.get(code), "a code without words");
    }

    /** The codes that have words, with their kind. */
    static Set<String> keys() {
        return WORDS.stringPropertyNames();
    }

    static String key(MessageCode code) {
        return code.kind() + '.' + code.code();
    }

    private static Map<MessageCode, Sentence> sentences() {
        Map<MessageCode, Sentence> sentences = new HashMap<>();
        for (MessageCode code : MessageCode.all()) {
            String words = WORDS.getProperty(key(code));
            if (words == null) {
                throw new IllegalStateException("No words for " + key(code));
            }
            sentences.put(code, Sentence.of(words));
        }
        return sentences;
    }

    private static Properties read() {
        Properties words = new Properties();
        try (Reader file = new InputStreamReader(
                Objects.requireNonNull(English.class.getResourceAsStream("en.properties"), "en.properties"),
                StandardCharsets.UTF_8)) {
            words.load(file);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read the words", e);
        }
        return words;
    }
}
