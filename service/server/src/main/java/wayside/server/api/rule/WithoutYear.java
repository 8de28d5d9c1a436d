package wayside.server.api.rule;

/** Group of the rules that hold for a request that no typical year comes with. */
public interface WithoutYear {}
