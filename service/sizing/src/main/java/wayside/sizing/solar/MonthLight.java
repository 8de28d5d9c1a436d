package wayside.sizing.solar;

import wayside.sizing.trace.Formula;

/**
 * What a month's hours make of its horizontal irradiation, by a model of its days or from a file of its hours.
 *
 * @param planeRatio irradiation on the plane over that on the horizontal
 * @param opticalShare of the light on the plane that enters the glass
 * @param cellC mean of the cells, each hour counting by the light that enters [C]
 * @param onPlane how the ratio was found
 */
public record MonthLight(double planeRatio, double opticalShare, double cellC, Formula onPlane) {}
