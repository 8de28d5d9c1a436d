package wayside.server.http;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import wayside.server.intake.Client;
import wayside.server.intake.FairQueue;
import wayside.server.intake.Patience;
import wayside.server.intake.Refusal;
import wayside.server.problem.Problem;
import wayside.server.problem.ProblemException;
import wayside.server.problem.ProblemKind;
import wayside.sizing.brief.Wanted;

/** Works on a request at once when it is cheap; else it waits for its turn among the long ones, and nobody waits with it. */
final class Calculations {
    /** Attribute of a request whose client has gone before its answer. */
    static final String GONE = "wayside.gone";

    private static final String PRICE = "Wayside-Price";

    private final FairQueue queue;
    private final FairQueue shorter;
    private final int longestMs;
    private final int maxPriceMs;

    /**
     * Calculations of a service.
     *
     * @param queue of the long ones
     * @param shorter queue of all else, to which the long ones give way
     */
    Calculations(FairQueue queue, FairQueue shorter, int longestMs, int maxPriceMs) {
        this.queue = queue;
        this.shorter = shorter;
        this.longestMs = longestMs;
        this.maxPriceMs = maxPriceMs;
    }

    /**
     * Answers with what the work gives.
     *
     * @param price [ms of one core]
     * @throws ProblemException when it costs more than is taken, the queue takes no more, or the answer was not there in time
     */
    void answer(Context context, double price, Supplier<byte[]> work) {
        context.header(PRICE, String.format(Locale.ROOT, "%.0f", Math.ceil(price)));
        if (price > maxPriceMs) {
            throw new ProblemException(Price.tooHigh(price, maxPriceMs));
        }
        Client client = Client.of(context.req().getAttribute(Client.attribute()));
        Patience patience = client.patience(longestMs);
        if (price <= Price.MOST_LIGHT) {
            context.result(patiently(context, patience, work));
            return;
        }
        CompletableFuture<byte[]> answer = new CompletableFuture<>();
        Refusal refusal = queue.offer(client.name(), price, "long calculations", () -> {
            try {
                answer.complete(patiently(context, client.patience(longestMs, shorter::isBusy), work));
            } catch (RuntimeException | Error e) {
                answer.completeExceptionally(e);
            }
        });
        if (refusal != null) {
            context.attribute(Metrics.SHED, refusal.reason());
            throw new ProblemException(refusal.problem(), refusal.headers());
        }
        context.future(() -> answer.thenAccept(context::result));
    }

    private static byte[] patiently(Context context, Patience patience, Supplier<byte[]> work) {
        try {
            return Wanted.whileWanted(patience, () -> {
                Wanted.here().check();
                return work.get();
            });
        } catch (Wanted.NoLongerWanted e) {
            if (patience.isGone()) {
                context.attribute(GONE, true);
            }
            throw new ProblemException(
                    Problem.of(ProblemKind.BUSY, "The calculation took longer than the time set; come again later."),
                    Map.of("Retry-After", "10"));
        }
    }
}
