package wayside.server;

import java.util.Arrays;

/** Starts the service as the environment says. */
public final class Main {
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
            System.err.println(e.getMessage());
            System.exit(2);
            return;
        }
        App app = App.create(settings);
        Runtime.getRuntime().addShutdownHook(new Thread(app::close, "stop"));
        app.start();
    }
}
