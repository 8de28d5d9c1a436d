package wayside.server;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wayside.server.http.HttpErrors;
import wayside.server.http.HttpSettings;
import wayside.server.http.PlainMethod;
import wayside.server.http.Service;

/** The service, wired by hand. */
public final class App implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(App.class);

    private final Settings settings;
    private final Service service;
    private final Javalin javalin;

    private App(Settings settings) {
        this.settings = settings;
        this.service = new Service(new HttpSettings(
                settings.allowedOrigins(),
                settings.maxBodyBytes(),
                settings.heavyAtOnce(),
                settings.heavyWaitMs(),
                settings.echo()));
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
        javalin.stop();
        service.close();
        LOG.info("event=stopped");
    }

    private void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = settings.maxBodyBytes();
        config.jetty.addConnector(this::connector);
        config.jetty.threadPool = threads();
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
            http.setIdleTimeout(settings.idleTimeoutMs());
            http.addCustomizer(new PlainMethod());
        });
        config.jetty.modifyServer(this::modify);
        service.register(config);
    }

    private QueuedThreadPool threads() {
        QueuedThreadPool pool = new QueuedThreadPool(settings.threads(), Math.min(8, settings.threads()));
        pool.setName("http");
        return pool;
    }

    private ServerConnector connector(Server server, HttpConfiguration http) {
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(settings.host().isEmpty() ? null : settings.host());
        connector.setPort(settings.port());
        connector.setIdleTimeout(settings.idleTimeoutMs());
        return connector;
    }

    private void modify(Server server) {
        // Outermost first: bodies must flow, and a stop lets requests at work finish.
        server.setHandler(new MinimumDataRateHandler(new GracefulHandler(), settings.minDataRateBytes(), 0));
        server.setStopTimeout(settings.stopTimeoutMs());
        server.setErrorHandler(new HttpErrors(settings.allowedOrigins()));
    }
}
