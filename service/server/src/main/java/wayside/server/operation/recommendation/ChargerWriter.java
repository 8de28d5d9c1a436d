package wayside.server.operation.recommendation;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wayside.server.answer.Figures;
import wayside.sizing.charging.ChargerRating;

/** What a charger must give, and what it is. */
final class ChargerWriter {
    private ChargerWriter() {}

    static @Nullable CurrentNeedView needed(Optional<ChargerRating> rating, Figures figures) {
        return rating.map(of -> new CurrentNeedView(figures.in("needed").at("currentA", of.neededA())))
                .orElse(null);
    }

    static @Nullable BuyableChargerView buyable(Optional<ChargerRating> rating, Figures figures) {
        Figures here = figures.in("buyable");
        return rating.map(of ->
                        new BuyableChargerView((int) here.at("count", of.count()), here.at("currentA", of.eachA())))
                .orElse(null);
    }
}
