package wayside.server;

import static io.restassured.RestAssured.given;

import io.restassured.specification.RequestSpecification;

/** One service for all tests, on a port of its own. */
final class RunningApp {
    private static final App APP = App.create(Settings.defaults().onPort(0)).start();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(APP::close));
    }

    private RunningApp() {}

    static int port() {
        return APP.port();
    }

    /** The beginning of a request. */
    static RequestSpecification request() {
        return given().port(APP.port()).filter(new ContractFilter());
    }

    /** The beginning of a request with a JSON body. */
    static RequestSpecification json(String body) {
        return request().contentType("application/json").body(body);
    }
}
