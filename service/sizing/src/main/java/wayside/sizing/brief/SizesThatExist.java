package wayside.sizing.brief;

import java.util.List;

/**
 * The sizes that parts are to be had in, a ladder for each kind. A ladder that is empty is left open.
 *
 * @param batteries of any chemistry
 * @param modules solar
 * @param controllers of the array
 * @param alternatorChargers between alternator and bank
 * @param shoreChargers on the mains
 * @param converters to 12 V
 * @param units self-contained
 */
public record SizesThatExist(
        List<BatterySize> batteries,
        List<ModuleSize> modules,
        List<ControllerSize> controllers,
        List<AlternatorChargerSize> alternatorChargers,
        List<ShoreChargerSize> shoreChargers,
        List<InverterSize> inverters,
        List<ConverterSize> converters,
        List<UnitSize> units) {
    /** Nothing is said. */
    public static final SizesThatExist OPEN =
            new SizesThatExist(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public SizesThatExist {
        batteries = List.copyOf(batteries);
        modules = List.copyOf(modules);
        controllers = List.copyOf(controllers);
        alternatorChargers = List.copyOf(alternatorChargers);
        shoreChargers = List.copyOf(shoreChargers);
        inverters = List.copyOf(inverters);
        converters = List.copyOf(converters);
        units = List.copyOf(units);
    }

    /** These ladders, and those of others where these are left open. */
    public SizesThatExist or(SizesThatExist others) {
        return new SizesThatExist(
                or(batteries, others.batteries),
                or(modules, others.modules),
                or(controllers, others.controllers),
                or(alternatorChargers, others.alternatorChargers),
                or(shoreChargers, others.shoreChargers),
                or(inverters, others.inverters),
                or(converters, others.converters),
                or(units, others.units));
    }

    private static <S> List<S> or(List<S> these, List<S> others) {
        return these.isEmpty() ? others : these;
    }
}
