package wayside.server.binding.rule;

/** Group of the rules that hold for a request that a typical year comes with. */
public interface WithYear {}
