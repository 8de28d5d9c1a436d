package wayside.server.intake;

import java.util.Locale;
import java.util.Set;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import wayside.server.problem.ProblemKind;

/**
 * The way in and out. The server's own threads only move bytes; a request is worked on in a queue's thread once its body is
 * whole. What the operator asks (health, metrics) is answered at once, whatever waits.
 */
public final class Front extends Handler.Wrapper {
    private static final String BODY = "wayside.body";
    private static final String FORM = "multipart/form-data";
    private static final String METRICS = "/metrics";
    private static final Set<String> AT_ONCE = Set.of("/health/live", "/health/ready", METRICS);
    private static final Refusal NOT_HERE =
            Refusal.of(ProblemKind.NOT_FOUND, "other-port", "The contract at /openapi.json lists every address.");

    private final FrontSettings settings;
    private final FairQueue queue;
    private final Watch watch;
    private final ClientNames clients;
    private final Allotment bodies;
    private final Allotment answers;
    private final Allotment uploads;
    private final Arrival.Limit request;
    private final Arrival.Limit form;

    /** Told what never gets as far as a handler. */
    public interface Watch {
        void refused(Request request, int status, String reason, long nanos);
    }

    /** @param queue in which requests wait for a thread */
    public Front(FrontSettings settings, FairQueue queue, Watch watch) {
        this.settings = settings;
        this.queue = queue;
        this.watch = watch;
        clients = new ClientNames(settings.trustedProxies());
        bodies = new Allotment(settings.bodyMemoryBytes());
        answers = new Allotment(settings.answerMemoryBytes());
        uploads = new Allotment(settings.uploadsAtOnce());
        request = limit(settings.maxBodyBytes(), "The body");
        form = limit(settings.maxFormBytes(), "The form, its file and its request together,");
    }

    private static Arrival.Limit limit(long bytes, String what) {
        return new Arrival.Limit(
                bytes, Refusal.of(ProblemKind.TOO_LARGE, "too-large", what + " has more than " + bytes + " bytes."));
    }

    /** The body of a request that has come in; empty where it had none. */
    public static byte[] body(@Nullable Object attribute) {
        return attribute instanceof byte[] bytes ? bytes : new byte[0];
    }

    /** Name of the attribute that holds the body. */
    public static String bodyAttribute() {
        return BODY;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        RequestId id = RequestId.of(request.getHeaders());
        request.setAttribute(RequestId.attribute(), id);
        id.mark(response.getHeaders());
        String client = clients.of(request);
        request.setAttribute(
                Client.attribute(),
                new Client(
                        client, request.getConnectionMetaData().getConnection().getEndPoint()));
        Departure departure = new Departure(request, response, callback, client, answers, settings.sending());
        String path = Request.getPathInContext(request);
        if (isElsewhere(request, path)) {
            NOT_HERE.answer(request, response, callback);
        } else if (AT_ONCE.contains(path)) {
            work(request, departure);
        } else {
            new Passage(request, departure, callback, client).begin();
        }
        return true;
    }

    /** Whether it is the other port that answers this: on the operator's own there is nothing for customers. */
    private boolean isElsewhere(Request request, String path) {
        if (settings.adminPort() == 0) {
            return false;
        }
        return Request.getLocalPort(request) == settings.adminPort() ? !AT_ONCE.contains(path) : path.equals(METRICS);
    }

    private void work(Request request, Departure departure) {
        try {
            if (!super.handle(request, departure, departure)) {
                Response.writeError(request, departure, departure, ProblemKind.NOT_FOUND.status());
            }
        } catch (Exception e) {
            departure.failed(e);
        }
    }

    /** A request on its way to the queue. */
    private final class Passage implements Arrival.End {
        private final Request request;
        private final Departure departure;
        private final Callback callback;
        private final String client;
        private final boolean isForm;
        private final long begun = System.nanoTime();
        private final Arrival arrival;
        private boolean holdsUpload;

        Passage(Request request, Departure departure, Callback callback, String client) {
            this.request = request;
            this.departure = departure;
            this.callback = callback;
            this.client = client;
            String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
            isForm = type != null && type.toLowerCase(Locale.ROOT).startsWith(FORM);
            arrival =
                    new Arrival(request, client, isForm ? form : Front.this.request, bodies, settings.reading(), this);
        }

        void begin() {
            Refusal refusal = queue.refusal(client, "requests");
            if (refusal == null && isForm) {
                holdsUpload = uploads.take(client, 1);
                refusal = holdsUpload ? null : Refusal.busy(uploads.isHeldBy(client), "uploads", "files", 2);
            }
            departure.whenDone(this::giveBack);
            arrival.start(refusal);
        }

        @Override
        public void arrived(byte[] body) {
            request.setAttribute(BODY, body);
            Refusal full = queue.offer(client, 1, "requests", () -> work(request, departure));
            if (full != null) {
                giveBack();
                refuse(full);
            }
        }

        @Override
        public void refused(Refusal refusal) {
            giveBack();
            refuse(refusal);
        }

        @Override
        public void broken(Throwable failure) {
            giveBack();
            callback.failed(failure);
        }

        private synchronized void giveBack() {
            arrival.forget();
            if (holdsUpload) {
                holdsUpload = false;
                uploads.giveBack(client, 1);
            }
        }

        private void refuse(Refusal refusal) {
            watch.refused(request, refusal.problem().status(), refusal.reason(), System.nanoTime() - begun);
            refusal.answer(request, departure.getWrapped(), callback);
        }
    }
}
