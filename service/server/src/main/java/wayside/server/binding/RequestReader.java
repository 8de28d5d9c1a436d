package wayside.server.binding;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.function.Consumer;
import org.hibernate.validator.HibernateValidatorConfiguration;
import wayside.server.binding.rule.WithYear;
import wayside.server.binding.rule.WithoutYear;
import wayside.server.problem.Fault;
import wayside.server.problem.Faults;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;

/** From the bytes of a body to a request record that keeps every rule, or to one document of all its faults. */
public final class RequestReader {
    private final Rules rules;

    /**
     * A reader of requests.
     *
     * @param checks makes known who checks the rules that their annotations leave open, for they need the core
     */
    public RequestReader(Consumer<HibernateValidatorConfiguration> checks) {
        rules = new Rules(checks);
    }

    /**
     * Reads a request.
     *
     * @throws ProblemException for malformed JSON, or with every bad field at once
     */
    public <Q extends Record> Q read(byte[] body, Class<Q> type) {
        return read(body, type, WithoutYear.class, List.of());
    }

    /**
     * Reads a request that a typical year comes with.
     *
     * @param besides what is wrong with the rest of what came
     * @throws ProblemException for malformed JSON, or with every bad field at once
     */
    public <Q extends Record> Q readWithYear(byte[] body, Class<Q> type, List<Fault> besides) {
        return read(body, type, WithYear.class, besides);
    }

    private <Q extends Record> Q read(byte[] body, Class<Q> type, Class<?> group, List<Fault> besides) {
        Faults faults = new Faults();
        besides.forEach(fault -> faults.add(fault.pointer(), () -> fault));
        JsonNode tree = JsonReading.read(body, type, faults);
        Object request = new RecordBinder(faults, type).request(tree, type);
        if (request != null) {
            rules.check(request, group, tree, faults);
        }
        if (request == null || !faults.isEmpty()) {
            throw new ProblemException(Problem.of(faults));
        }
        return type.cast(request);
    }
}
