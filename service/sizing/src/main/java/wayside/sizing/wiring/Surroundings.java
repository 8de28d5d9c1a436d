package wayside.sizing.wiring;

import wayside.sizing.trace.Derived;

/**
 * What decides how well a conductor sheds its heat.
 *
 * @param insulationC temperature class of the insulation [C]
 * @param ambientC of the air around it; at least 50 C in an engine space [C]
 * @param bundledCount current-carrying conductors that run together [1]
 * @param engineSpace whether it runs through the engine space
 */
public record Surroundings(Derived insulationC, Derived ambientC, Derived bundledCount, boolean engineSpace) {
    Surroundings bundled(Derived count) {
        return new Surroundings(insulationC, ambientC, count, engineSpace);
    }
}
