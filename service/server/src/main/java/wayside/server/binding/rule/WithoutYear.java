package wayside.server.binding.rule;

/** Group of the rules that hold for a request that no typical year comes with. */
public interface WithoutYear {}
