package wayside.server;

import java.util.Arrays;

/** Starts the service as the environment says. */
public final class Main {
    private static final int CANNOT_START = 2;

    private Main() {}

    /** With {@code --settings} prints the table of settings instead. */
    public static void main(String[] args) {
        if (Arrays.asList(args).contains("--settings")) {
            System.out.print(Setting.table());
            return;
        }
        Settings settings;
        try {
            settings = Settings.from(System.getenv());
        } catch (IllegalArgumentException e) {
            refuse(String.valueOf(e.getMessage()));
            return;
        }
        ListenAddress address = new ListenAddress(settings.host(), settings.port());
        address.fault().ifPresent(Main::refuse);
        if (settings.adminPort() != 0) {
            new ListenAddress(settings.host(), settings.adminPort(), Setting.ADMIN_PORT)
                    .fault()
                    .ifPresent(Main::refuse);
        }
        App app = App.create(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(app::close, "stop"));
        app.start();
        String url = address.url(app.port());
        System.out.println("Wayside listens on " + url + " - the demo is at " + url + "demo/");
    }

    private static void refuse(String why) {
        System.err.println(why);
        System.exit(CANNOT_START);
    }
}
