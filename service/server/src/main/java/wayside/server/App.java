package wayside.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;
import org.eclipse.jetty.http.HttpCompliance;
import org.eclipse.jetty.io.ManagedSelector;
import org.eclipse.jetty.io.SocketChannelEndPoint;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wayside.server.http.HttpErrors;
import wayside.server.http.HttpSettings;
import wayside.server.http.Operations;
import wayside.server.http.PlainMethod;
import wayside.server.http.Service;
import wayside.server.intake.FrontSettings;
import wayside.server.intake.Pace;
import wayside.server.intake.WatchedEndPoint;

/** The service, wired by hand. */
public final class App implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(App.class);

    private static final int MOVERS = 16;
    private static final int GRACE_MS = 10_000;
    private static final int UPLOADS_AT_ONCE = 4;
    /** As RFC 9112 has it, and no lenience that another server on the way might not share. */
    private static final HttpCompliance HTTP = HttpCompliance.RFC9110.without(
            "wayside", HttpCompliance.Violation.LF_HEADER_TERMINATION, HttpCompliance.Violation.LF_CHUNK_TERMINATION);

    private final Settings settings;
    private final Service service;
    private final Javalin javalin;

    private App(Settings settings) {
        this.settings = settings;
        this.service = new Service(
                new HttpSettings(
                        settings.allowedOrigins(),
                        settings.maxBodyBytes(),
                        settings.threads(),
                        settings.heavyAtOnce(),
                        settings.heavyWaitMs(),
                        settings.calculationTimeoutMs(),
                        settings.maxPriceMs(),
                        settings.echo()),
                Operations.standard());
        this.javalin = Javalin.create(this::configure);
    }

    /** An app that is not started yet. */
    public static App create(Settings settings) {
        return new App(settings);
    }

    public App start() {
        javalin.start();
        service.ready(true);
        LOG.info("event=started port={}", port());
        return this;
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    /** Takes no more requests, lets those at work finish within the time set, and ends. */
    @Override
    public void close() {
        service.ready(false);
        waitUntilItIsKnown();
        javalin.stop();
        service.close();
        LOG.info("event=stopped");
    }

    /** Who sends requests here learns from /health/ready that there is no use in it, while they are still answered. */
    private void waitUntilItIsKnown() {
        try {
            Thread.sleep(settings.stopDelayMs());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.jetty.addConnector((server, http) -> connector(server, http, settings.port()));
        if (settings.adminPort() != 0) {
            config.jetty.addConnector((server, http) -> connector(server, http, settings.adminPort()));
        }
        config.jetty.threadPool = threads();
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
            http.setIdleTimeout(settings.idleTimeoutMs());
            http.setHttpCompliance(HTTP);
            http.addCustomizer(new PlainMethod());
        });
        config.jetty.modifyServer(this::modify);
        service.register(config);
    }

    /** They move bytes, and never wait for a client or a calculation. */
    private static QueuedThreadPool threads() {
        QueuedThreadPool pool = new QueuedThreadPool(MOVERS, MOVERS / 2);
        pool.setName("http");
        return pool;
    }

    private ServerConnector connector(Server server, HttpConfiguration http, int port) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http)) {
            @Override
            protected SocketChannelEndPoint newEndPoint(
                    SocketChannel channel, ManagedSelector selector, SelectionKey key) {
                WatchedEndPoint endPoint = new WatchedEndPoint(channel, selector, key, getScheduler(), getExecutor());
                endPoint.setIdleTimeout(getIdleTimeout());
                return endPoint;
            }
        };
        connector.setHost(settings.host().isEmpty() ? null : settings.host());
        connector.setPort(port);
        connector.setIdleTimeout(settings.idleTimeoutMs());
        return connector;
    }

    private void modify(Server server) {
        // Outermost first: a stop lets requests at work finish.
        server.setHandler(new GracefulHandler(service.front(frontSettings())));
        server.setStopTimeout(settings.stopTimeoutMs());
        server.setErrorHandler(new HttpErrors(settings.allowedOrigins()));
    }

    private FrontSettings frontSettings() {
        long heap = Runtime.getRuntime().maxMemory();
        Pace pace = new Pace(GRACE_MS, settings.minDataRateBytes());
        return new FrontSettings(
                settings.maxBodyBytes(),
                Service.maxFormBytes(settings.maxBodyBytes()),
                heap / 6,
                heap / 6,
                UPLOADS_AT_ONCE,
                pace,
                pace,
                settings.trustedProxies(),
                settings.adminPort());
    }
}
