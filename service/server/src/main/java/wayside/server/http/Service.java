package wayside.server.http;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.server.Request;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wayside.server.binding.RequestReader;
import wayside.server.contract.Endpoint;
import wayside.server.intake.FairQueue;
import wayside.server.intake.Front;
import wayside.server.intake.FrontSettings;
import wayside.server.intake.RequestId;
import wayside.server.operation.solaryield.MostSunshine;
import wayside.server.problem.ProblemKind;

/** Hangs handlers and filters on the server. */
public final class Service implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger("wayside.request");

    private static final int REQUESTS_WAITING = 1_000;
    private static final int HEAVY_WAITING = 16;

    private final HttpSettings settings;
    private final Operations operations;
    private final Page about;
    private final Metrics metrics = new Metrics();
    /** Made beside the rest: the validator looks at many classes, and the start does not wait for it. */
    private final CompletableFuture<RequestReader> reader =
            CompletableFuture.supplyAsync(() -> new RequestReader(MostSunshine::addTo));

    private final FairQueue requests;
    private final FairQueue heavy;
    private final AtomicBoolean ready = new AtomicBoolean();
    private final Map<String, String> operationByPath = new LinkedHashMap<>();
    private final Map<String, Set<String>> methodsByPath = new LinkedHashMap<>();

    public Service(HttpSettings settings, Operations operations) {
        this.settings = settings;
        this.operations = operations;
        about = About.page(operations);
        requests = new FairQueue("requests", settings.workers(), REQUESTS_WAITING, 5_000, 5, metrics::waited).start();
        heavy = new FairQueue(
                        "long",
                        settings.heavyAtOnce(),
                        HEAVY_WAITING * settings.heavyAtOnce(),
                        settings.heavyWaitMs(),
                        1,
                        metrics::waited)
                .start();
        metrics.watch("requests", requests);
        metrics.watch("long", heavy);
    }

    /** The way in and out, which is told what it needs to know and gets requests to the handlers. */
    public Front front(FrontSettings front) {
        return new Front(front, requests, this::logRefusal);
    }

    /** Largest form: a typical year, a request, and what parts them. */
    public static long maxFormBytes(int maxBodyBytes) {
        return FormBody.YEAR_LIMIT_BYTES + maxBodyBytes + 16L * 1024;
    }

    /** Whether the service takes requests: said by {@code /health/ready}. */
    public void ready(boolean isReady) {
        ready.set(isReady);
    }

    public void register(JavalinConfig config) {
        Cors cors = new Cors(settings.allowedOrigins());
        config.routes.before(context -> {
            metrics.begin(context);
            // Whatever has a body says its type; what has none bears none.
            context.res().setContentType(null);
            context.res().addHeader("Vary", "Accept-Encoding");
            Security.mark(context);
            About.link(context);
            cors.headers(context.header("Origin")).forEach(context.res()::addHeader);
        });
        config.requestLogger.http((context, ms) -> log(context));
        Problems.register(config.routes);
        config.router.javaLangErrorHandler(Problems::lastResort);
        operations(config);
        reference(config);
        pages(config);
        housekeeping(config);
        methodsByPath.forEach((path, methods) ->
                config.routes.options(path, context -> cors.options(context, String.join(", ", methods))));
    }

    private void operations(JavalinConfig config) {
        Calculations calculations = new Calculations(heavy, requests, settings.calculationMs(), settings.maxPriceMs());
        for (Operation<?, ?> operation : operations.all()) {
            post(
                    config,
                    operation.endpoint(),
                    new OperationHandler<>(operation, reader, settings.maxBodyBytes(), calculations));
        }
    }

    private void reference(JavalinConfig config) {
        ReferenceHandler reference = new ReferenceHandler();
        get(config, Operations.REFERENCE_LIST.path(), Operations.REFERENCE_LIST.id(), reference::list);
        get(config, Operations.REFERENCE_TABLE.path(), Operations.REFERENCE_TABLE.id(), reference::table);
    }

    private void pages(JavalinConfig config) {
        Pages pages = new Pages();
        get(
                config,
                "/openapi.json",
                "contract",
                context -> pages.send(context, "/wayside/server/contract/openapi.json"));
        get(
                config,
                "/openapi.generators.json",
                "contract",
                context -> pages.send(context, "/wayside/server/contract/openapi.generators.json"));
        get(
                config,
                "/openapi.yaml",
                "contract",
                context -> pages.send(context, "/wayside/server/contract/openapi.yaml"));
        get(
                config,
                "/examples/{file}",
                "examples",
                context -> pages.sendBelow(context, "/wayside/server/contract/examples/", context.pathParam("file")));
        folder(config, pages, "/docs", "docs", "/docs/");
        folder(config, pages, "/demo", "demo", "/widget/demo/");
        get(config, "/wayside.js", "widget", context -> pages.send(context, "/widget/wayside.js"));
        get(config, "/problems/{kind}", "docs", context -> explain(context, context.pathParam("kind")));
        get(config, Operations.SERVICE.path(), Operations.SERVICE.id(), this::tell);
        get(config, "/", "demo", context -> redirect(context, "/demo/"));
    }

    private static void explain(Context context, String code) {
        boolean known =
                Arrays.stream(ProblemKind.values()).anyMatch(kind -> kind.code().equals(code));
        redirect(context, "/docs/#" + (known ? code : "problems"));
    }

    private void tell(Context context) {
        Query.refuse(context);
        Accepts.require(context.header("Accept"), Json.TYPE);
        about.send(context, "no-cache");
    }

    private static void redirect(Context context, String location) {
        context.status(302).header("Location", location);
    }

    /** A folder of pages; its own address ends in a slash, so that what its page names is found beside it. */
    private void folder(JavalinConfig config, Pages pages, String path, String operation, String files) {
        get(config, path, operation, context -> {
            if (context.path().endsWith("/")) {
                pages.send(context, files + "index.html");
            } else {
                redirect(context, path + "/");
            }
        });
        get(config, path + "/<file>", operation, context -> pages.sendBelow(context, files, context.pathParam("file")));
    }

    private void housekeeping(JavalinConfig config) {
        get(config, "/health/live", "health", context -> health(context, true));
        get(config, "/health/ready", "health", context -> health(context, ready.get()));
        get(config, "/metrics", "metrics", metrics::scrape);
        if (settings.echo()) {
            config.routes.post("/echo", this::echo);
            note("/echo", "POST", "echo");
        }
    }

    /** Sends the body back, again and again up to {@code ?bytes=}: an answer of a given size that costs no thought. */
    private void echo(Context context) throws IOException {
        byte[] body = Body.read(context);
        String wanted = context.queryParam("bytes");
        int size = wanted != null && wanted.matches("[0-9]{1,7}") ? Integer.parseInt(wanted) : body.length;
        byte[] answer = Arrays.copyOf(body, body.length == 0 ? 0 : size);
        for (int at = body.length; at < answer.length; at += body.length) {
            System.arraycopy(body, 0, answer, at, Math.min(body.length, answer.length - at));
        }
        context.contentType(Json.TYPE);
        context.outputStream().write(answer);
    }

    private static void health(Context context, boolean well) {
        context.status(well ? 200 : 503)
                .header("Cache-Control", "no-store")
                .contentType(Json.TYPE)
                .result(well ? "{\"status\":\"up\"}" : "{\"status\":\"down\"}");
    }

    private void get(JavalinConfig config, String path, String operation, Handler handler) {
        config.routes.get(path, handler);
        config.routes.head(path, handler);
        note(path, "GET", operation);
        note(path, "HEAD", operation);
    }

    private void post(JavalinConfig config, Endpoint endpoint, Handler handler) {
        config.routes.post(endpoint.path(), handler);
        note(endpoint.path(), "POST", endpoint.id());
    }

    private void note(String path, String method, String operation) {
        operationByPath.put(path, operation);
        methodsByPath
                .computeIfAbsent(path, p -> new TreeSet<>(Set.of("OPTIONS")))
                .add(method);
    }

    /** One line for a request: never an address, a query, a header or a body, which are the customer's. */
    private void log(Context context) {
        var matched = context.endpoints().lastHttpEndpoint();
        String operation = matched == null ? "none" : operationByPath.getOrDefault(matched.path, "none");
        long nanos = metrics.end(context, operation);
        String shed = context.attribute(Metrics.SHED);
        if (shed != null) {
            metrics.countShed(shed);
        }
        RequestId id = RequestId.of(context.req().getAttribute(RequestId.attribute()));
        boolean gone = context.attribute(Calculations.GONE) != null;
        if (LOG.isInfoEnabled()) {
            LOG.info(
                    "operation={} method={} status={} ms={} id={} trace={}",
                    operation,
                    Metrics.method(context.req().getMethod()),
                    gone ? "gone" : context.statusCode(),
                    String.format(Locale.ROOT, "%.1f", nanos / 1e6),
                    id.id(),
                    id.traceId());
        }
    }

    private void logRefusal(Request request, int status, String reason, long nanos) {
        metrics.countShed(reason);
        RequestId id = RequestId.of(request.getAttribute(RequestId.attribute()));
        LOG.info(
                "operation=none method={} status={} shed={} ms={} id={} trace={}",
                Metrics.method(request.getMethod()),
                status,
                reason,
                String.format(Locale.ROOT, "%.1f", nanos / 1e6),
                id.id(),
                id.traceId());
    }

    @Override
    public void close() {
        requests.close();
        heavy.close();
        metrics.close();
    }
}
