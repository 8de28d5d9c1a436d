package wayside.server.mapping;

import java.util.AbstractList;
import java.util.List;
import wayside.server.api.StepInputView;
import wayside.server.api.StepView;
import wayside.sizing.trace.Source;
import wayside.sizing.trace.Step;

/** The steps of a derivation as the contract shows them, each made when it is looked at. */
public final class StepList extends AbstractList<StepView> {
    private final List<Step> steps;

    StepList(List<Step> steps) {
        this.steps = steps;
    }

    List<Step> steps() {
        return steps;
    }

    @Override
    public StepView get(int index) {
        return view(steps.get(index));
    }

    @Override
    public int size() {
        return steps.size();
    }

    private static StepView view(Step step) {
        Source source = step.source();
        return new StepView(
                step.id(),
                step.label(),
                step.formula().orElse(null),
                step.inputs().stream().map(StepList::view).toList(),
                step.result().value(),
                step.result().unit().symbol(),
                source.basis().code(),
                source.title(),
                source.clause().orElse(null),
                step.reason().orElse(null));
    }

    private static StepInputView view(Step.StepInput input) {
        return new StepInputView(
                input.symbol(),
                input.quantity().value(),
                input.quantity().unit().symbol(),
                input.from());
    }
}
