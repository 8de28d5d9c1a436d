package wayside.server.binding.rule;

/** An element of a list that its name tells from the others. */
public interface Named {
    String name();
}
