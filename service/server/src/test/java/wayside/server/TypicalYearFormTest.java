package wayside.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A solar yield of a typical year that comes with the request. */
class TypicalYearFormTest {
    private static ValidatableResponse post(String request, String year) {
        return RunningApp.request()
                .multiPart("request", request, "application/json")
                .multiPart("typicalYear", "year.epw", year.getBytes(StandardCharsets.UTF_8), "application/octet-stream")
                .post("/v1/solar-yield")
                .then();
    }

    @Test
    void theYearsOwnHoursAreReplayed() {
        post("{\"solarPowerW\": 400, \"panel\": {\"tiltDegrees\": 0}}", InventedYear.text())
                .statusCode(200)
                .body("months", hasSize(12))
                .body("months[3].horizontalKwhM2", equalTo(2.5f))
                .body("months[3].planeKwhM2", equalTo(2.5f))
                .body("months[3].ambientC", equalTo(12f))
                .body("months[3].skyBasis", equalTo("given"))
                .body("assumptions.field", not(hasItem("/months/sky")));
    }

    @Test
    void theRequestMayBeLeftOut() {
        RunningApp.request()
                .multiPart("typicalYear", "year.epw", InventedYear.text().getBytes(StandardCharsets.UTF_8))
                .post("/v1/solar-yield")
                .then()
                .statusCode(200)
                .body("solarPowerW", equalTo(100f));
    }

    @Test
    void aBadLineIsTold() {
        post("{}", InventedYear.text().replaceFirst("2001,1,2,5,0,\\?9,12.0", "2001,1,2,5,0,?9,warm"))
                .statusCode(422)
                .contentType("application/problem+json")
                .body("errors[0].pointer", equalTo("/typicalYear"))
                .body("errors[0].detail", containsString("Line 37: dry bulb temperature (cell 7)"))
                .body("errors[0].detail", containsString("\"warm\""));
    }

    @Test
    void aZoneThatIsNotThePlacesIsTold() {
        post("{}", InventedYear.text().replaceFirst("47.0,15.0,1.0", "47.0,15.0,-11.0"))
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/typicalYear"))
                .body("errors[0].detail", containsString("Line 1: time zone (cell 9)"));
    }

    @Test
    void aSkyThatCannotBeIsToldOnceAYear() {
        String bright = InventedYear.text().replaceAll(",250,0,", ",900,0,");
        post("{}", bright).statusCode(200).body("cautions.findAll { it.code == 'implausible-sky' }", hasSize(1));
    }

    @Test
    void aBadFieldOfTheRequestIsTold() {
        post("{\"solarPowerW\": -4, \"place\": {}}", InventedYear.text())
                .statusCode(422)
                .body("errors.pointer", hasItem("/solarPowerW"))
                .body("errors.pointer", hasItem("/place"));
    }

    @Test
    void faultsOfTheRequestAndOfTheFileAreToldTogether() {
        post("{\"solarPowerW\": -4}", "no year")
                .statusCode(422)
                .body("errors.pointer", hasItem("/solarPowerW"))
                .body("errors.pointer", hasItem("/typicalYear"));
    }

    @Test
    void twoPartsOfOneNameAreRefused() {
        RunningApp.request()
                .multiPart("typicalYear", "a.epw", InventedYear.text().getBytes(StandardCharsets.UTF_8))
                .multiPart("typicalYear", "b.epw", InventedYear.text().getBytes(StandardCharsets.UTF_8))
                .post("/v1/solar-yield")
                .then()
                .statusCode(422)
                .body("errors[0].detail", containsString("more than one part typicalYear"));
    }

    @Test
    void aByteOrderMarkIsReadPastAndUtf16IsNamed() {
        post("{}", "\uFEFF" + InventedYear.text()).statusCode(200);
        for (var charset : java.util.List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE)) {
            RunningApp.request()
                    .multiPart("typicalYear", "year.epw", InventedYear.text().getBytes(charset))
                    .post("/v1/solar-yield")
                    .then()
                    .statusCode(422)
                    .body("errors[0].detail", containsString("UTF-16"));
        }
    }

    @Test
    void aFormWithoutAYearOrWithAStrangePartIsRefused() {
        RunningApp.request()
                .multiPart("request", "{}", "application/json")
                .post("/v1/solar-yield")
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/typicalYear"));
        RunningApp.request()
                .multiPart("yaer", "year.epw", new byte[10])
                .post("/v1/solar-yield")
                .then()
                .statusCode(422);
    }

    @Test
    void junkThatCallsItselfAFormIsRefused() {
        for (String type :
                new String[] {"multipart/form-data", "multipart/form-data; boundary=x", "multipart/form-data; boundary="
                }) {
            RunningApp.request()
                    .config(RestAssured.config()
                            .encoderConfig(EncoderConfig.encoderConfig()
                                    .encodeContentTypeAs("multipart/form-data", ContentType.TEXT)
                                    .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
                    .contentType(type)
                    .body("nothing of the kind")
                    .post("/v1/solar-yield")
                    .then()
                    .statusCode(400)
                    .contentType("application/problem+json");
        }
    }

    @Test
    void aYearThatIsTooLargeIsRefused() {
        post("{}", "x".repeat((3 << 20) + 1))
                .statusCode(413)
                .body("detail", equalTo("The file typicalYear has more than 3145728 bytes."));
        post("{}", "x".repeat(9 << 20)).statusCode(413);
    }

    @Test
    void otherOperationsTakeNoForm() {
        RunningApp.request()
                .multiPart("request", "{}", "application/json")
                .post("/v1/energy-budget")
                .then()
                .statusCode(415);
    }
}
