package wayside.server.operation.shared;

import org.jspecify.annotations.Nullable;
import wayside.sizing.brief.AlternatorChargerSize;
import wayside.sizing.brief.At;
import wayside.sizing.brief.BatterySize;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.ControllerSize;
import wayside.sizing.brief.ConverterSize;
import wayside.sizing.brief.InverterSize;
import wayside.sizing.brief.ModuleSize;
import wayside.sizing.brief.ShoreChargerSize;
import wayside.sizing.brief.SizeOrigin;
import wayside.sizing.brief.SizesThatExist;
import wayside.sizing.brief.UnitSize;

/** The sizes that parts are to be had in. */
final class SizesReader {
    private static final int SIDE_BY_SIDE = 4;
    private static final double HIGHEST_BUS_V = 48;
    private static final double VEHICLE_V = 12;
    private static final double OUTPUT_V = 12;

    private SizesReader() {}

    static SizesThatExist read(At at, @Nullable SizesInput sizes) {
        if (sizes == null) {
            return SizesThatExist.OPEN;
        }
        return new SizesThatExist(
                Given.list(at.field("batteries"), sizes.batteries(), SizesReader::battery),
                Given.list(at.field("modules"), sizes.modules(), SizesReader::module),
                Given.list(at.field("controllers"), sizes.controllers(), SizesReader::controller),
                Given.list(at.field("alternatorChargers"), sizes.alternatorChargers(), SizesReader::alternatorCharger),
                Given.list(at.field("shoreChargers"), sizes.shoreChargers(), SizesReader::shoreCharger),
                Given.list(at.field("inverters"), sizes.inverters(), SizesReader::inverter),
                Given.list(at.field("converters"), sizes.converters(), SizesReader::converter),
                Given.list(at.field("units"), sizes.units(), SizesReader::unit));
    }

    private static BatterySize battery(At at, SizesInput.Battery size) {
        return new BatterySize(
                SizeOrigin.given(at),
                SystemReader.chemistry(size.chemistry()),
                size.voltageV(),
                size.capacityAh(),
                or(size.mostInSeries(), 1),
                or(size.mostInParallel(), SIDE_BY_SIDE),
                size.massKg(),
                box(size));
    }

    private static ModuleSize module(At at, SizesInput.Module size) {
        return new ModuleSize(
                SizeOrigin.given(at),
                size.powerW(),
                size.openCircuitV(),
                size.workingV(),
                size.shortCircuitA(),
                size.workingA(),
                size.largestSeriesFuseA(),
                size.massKg(),
                box(size));
    }

    private static ControllerSize controller(At at, SizesInput.Controller size) {
        return new ControllerSize(
                SizeOrigin.given(at),
                size.highestArrayV(),
                size.currentA(),
                or(size.highestBusV(), HIGHEST_BUS_V),
                size.massKg(),
                box(size));
    }

    private static AlternatorChargerSize alternatorCharger(At at, SizesInput.AlternatorCharger size) {
        return new AlternatorChargerSize(
                SizeOrigin.given(at),
                or(size.inputV(), VEHICLE_V),
                size.outputV(),
                size.currentA(),
                or(size.mostTogether(), 1),
                size.massKg(),
                box(size));
    }

    private static ShoreChargerSize shoreCharger(At at, SizesInput.ShoreCharger size) {
        return new ShoreChargerSize(
                SizeOrigin.given(at),
                size.outputV(),
                size.currentA(),
                or(size.mostTogether(), 1),
                size.massKg(),
                box(size));
    }

    private static InverterSize inverter(At at, SizesInput.Inverter size) {
        return new InverterSize(
                SizeOrigin.given(at),
                size.continuousW(),
                size.surgeW(),
                or(size.mostTogether(), 1),
                size.massKg(),
                box(size));
    }

    private static ConverterSize converter(At at, SizesInput.Converter size) {
        return new ConverterSize(
                SizeOrigin.given(at), size.inputV(), OUTPUT_V, size.currentA(), size.massKg(), box(size));
    }

    private static UnitSize unit(At at, SizesInput.Unit size) {
        return new UnitSize(
                SizeOrigin.given(at),
                size.energyWh(),
                size.inverterW(),
                size.surgeW(),
                size.solarW(),
                size.massKg(),
                box(size));
    }

    private static Box box(SizesInput.Piece size) {
        return new Box(size.lengthMm(), size.widthMm(), size.heightMm());
    }

    private static int or(@Nullable Integer given, int usual) {
        return given == null ? usual : given;
    }

    private static double or(@Nullable Double given, double usual) {
        return given == null ? usual : given;
    }
}
