package wayside.widget;

import wayside.server.App;
import wayside.server.Settings;

/** The real service, on a free port, for the whole run. */
final class Wayside {
    private static final App APP = App.create(Settings.defaults().onPort(0)).start();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(APP::close));
    }

    private Wayside() {}

    static String origin() {
        return "http://localhost:" + APP.port();
    }
}
