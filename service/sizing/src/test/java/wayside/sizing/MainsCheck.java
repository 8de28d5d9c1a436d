package wayside.sizing;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether the mains side of a design protects people and cables, judged with figures of its own: 30 mA where IEC rules hold, 6 mA
 * of a class A interrupter (from memory); 16 A on 2.5 mm2 and 32 A on 6 mm2 of hookup leads in Europe; at 120 V what NFPA 70
 * 240.4(D) allows: 15, 20 and 30 A on 14, 12 and 10 AWG; above that no more than 4 A a mm2 (common practice, no source). Neutral is
 * never bonded in the vehicle on shore power (NFPA 70 551.54(C)).
 */
final class MainsCheck {
    private final BuiltDesign.Mains mains;
    private final List<String> found = new ArrayList<>();

    private MainsCheck(BuiltDesign.Mains mains) {
        this.mains = mains;
    }

    /** What is wrong, each in a few words; empty when nothing is. */
    static List<String> of(BuiltDesign design) {
        MainsCheck check = new MainsCheck(design.mains());
        if (design.mains().volts() > 0) {
            check.people();
            design.mains().lines().forEach(check::line);
        }
        return check.found;
    }

    private void people() {
        expect(mains.opensA() > 0 && mains.opensA() <= (mains.volts() < 200 ? 0.006 : 0.03), "mains: residual current");
        expect(!mains.bondedOnShore(), "mains: neutral bonded on shore");
        double leadA = mains.leadMm2() <= 0 ? 0 : mostA(mains.leadMm2());
        expect(mains.inletA() == 0 || mains.inletA() <= leadA, "mains: lead too thin for its inlet");
    }

    private void line(BuiltDesign.AcLine line) {
        expect(line.breakerA() >= line.currentA() - 1e-9, line.name() + ": breaker below its current");
        expect(line.breakerA() <= mostA(line.mm2()), line.name() + ": too thin for its breaker");
    }

    private double mostA(double mm2) {
        double[][] steps = mains.volts() < 200
                ? new double[][] {{2.0, 15}, {3.3, 20}, {5.2, 30}}
                : new double[][] {{1.5, 16}, {2.5, 20}, {4, 25}, {6, 32}};
        double most = 0;
        for (double[] step : steps) {
            most = mm2 >= step[0] ? step[1] : most;
        }
        return mm2 > (mains.volts() < 200 ? 5.3 : 6) ? 4.9 * mm2 : most;
    }

    private void expect(boolean holds, String otherwise) {
        if (!holds) {
            found.add(otherwise);
        }
    }
}
