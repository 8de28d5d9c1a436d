package wayside.sizing.system;

import wayside.sizing.brief.ControllerSize;
import wayside.sizing.brief.ModuleSize;

/**
 * An array that can be bought: equal strings of whole modules that suit a controller, on the roof.
 *
 * @param module of which it is made
 * @param series modules in each string
 * @param parallel strings
 * @param controller of which it has {@code controllers}
 * @param controllers that share out the strings
 */
public record StringOption(ModuleSize module, int series, int parallel, ControllerSize controller, int controllers) {
    /** From three strings on each commonly has a fuse of its own. */
    private static final int UNFUSED_STRINGS = 2;

    /** Rated [W]. */
    public double powerW() {
        return count() * module.powerW();
    }

    public int count() {
        return series * parallel;
    }

    /** Things to mount: modules, controllers and the fuses of strings. */
    int pieces() {
        return count() + controllers + (parallel > UNFUSED_STRINGS * controllers ? parallel : 0);
    }

    /** Of modules and controllers [kg]. */
    public double massKg() {
        return count() * module.massKg() + controllers * controller.massKg();
    }

    /** Of the controllers [L]: the modules are on the roof. */
    public double volumeL() {
        return controllers * controller.box().volumeL();
    }
}
