package wayside.server.binding;

/**
 * What a rule hangs on its violation (as dynamic payload) when a number is too large for the rest of the request.
 *
 * @param most that is taken there
 * @param detail a sentence for people
 */
public record TooMuch(double most, String detail) {}
