package wayside.sizing.brief;

import java.util.OptionalDouble;

/**
 * What a bank weighs and the box it stands in: how slowly it follows the air.
 *
 * @param at where it was given
 * @param massKg of the bank [kg]
 * @param areaM2 of the box, all sides together [m2]
 * @param plywoodM thickness of its walls of wood [m]; 12 mm if absent
 * @param foamM thickness of foam round it [m]; none if absent
 */
public record BankBox(At at, double massKg, double areaM2, OptionalDouble plywoodM, OptionalDouble foamM)
        implements Placed {}
