package wayside.sizing.system;

import java.util.Optional;
import wayside.sizing.brief.Box;
import wayside.sizing.brief.Locker;
import wayside.sizing.storage.BatteryBank;
import wayside.sizing.trace.Derived;
import wayside.sizing.trace.Expression;
import wayside.sizing.trace.Message;
import wayside.sizing.trace.Shortfall;
import wayside.sizing.trace.ShortfallCode;
import wayside.sizing.trace.Unit;

/** Whether a bank stands in its locker: upright, in one layer, all the same way round. */
record LockerRoom(Locker locker) {
    private static final Expression FIT =
            Expression.definition("n = min(1, floor(H / h)) max(floor(L / l) floor(W / w), floor(L / w) floor(W / l))");

    /** Where nothing was measured there is room. */
    boolean takes(BatteryPack pack) {
        if (locker.box().isPresent()
                && pack.count() > places(locker.box().get(), pack.battery().box())) {
            return false;
        }
        return locker.volumeL().isEmpty() || pack.volumeL() <= locker.volumeL().getAsDouble();
    }

    private static double places(Box room, Box battery) {
        if (room.heightMm() < battery.heightMm()) {
            return 0;
        }
        return Math.max(
                Math.floor(room.lengthMm() / battery.lengthMm()) * Math.floor(room.widthMm() / battery.widthMm()),
                Math.floor(room.lengthMm() / battery.widthMm()) * Math.floor(room.widthMm() / battery.lengthMm()));
    }

    /** A bank that the locker does not take: by whole batteries, or by litres. */
    Optional<Shortfall> shortfall(BatteryBank bank, Optional<BuyableBank> buyable) {
        if (locker.box().isPresent() && buyable.isPresent()) {
            Derived places = placesFor(buyable.get());
            Derived count = buyable.get().count();
            return count.value() > places.value() ? Optional.of(tooSmall(count, places)) : Optional.empty();
        }
        Optional<Derived> room = volume();
        Derived needed = bank.volumeL().typical();
        return room.filter(litres -> needed.value() > litres.value()).map(litres -> tooSmall(needed, litres));
    }

    private static Shortfall tooSmall(Derived needed, Derived available) {
        return new Shortfall(Message.of(ShortfallCode.LOCKER_TOO_SMALL), needed, available);
    }

    private Derived placesFor(BuyableBank buyable) {
        Box room = locker.box().orElseThrow();
        return FIT.value(
                "locker: batteries of this size that stand in it",
                Unit.COUNT,
                side("length", room.lengthMm()).as("L"),
                side("width", room.widthMm()).as("W"),
                side("height", room.heightMm()).as("H"),
                buyable.lengthMm().as("l"),
                buyable.widthMm().as("w"),
                buyable.heightMm().as("h"));
    }

    private Derived side(String side, double mm) {
        return Derived.given("locker: " + side, mm, Unit.MILLIMETRE, locker.at(side + "Mm"));
    }

    private Optional<Derived> volume() {
        if (locker.volumeL().isPresent()) {
            return Optional.of(
                    Derived.given("locker: volume", locker.volumeL().getAsDouble(), Unit.LITRE, locker.at("volumeL")));
        }
        return locker.box().map(box -> Expression.definition("V = L W H / 1000000")
                .value(
                        "locker: volume",
                        Unit.LITRE,
                        side("length", box.lengthMm()).as("L"),
                        side("width", box.widthMm()).as("W"),
                        side("height", box.heightMm()).as("H")));
    }
}
