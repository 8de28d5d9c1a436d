package wayside.sizing.wiring;

/**
 * Opens the labels of a conductor's steps with whose they are: {@code inverter: ampacity of 8 AWG}.
 *
 * @param circuit as the customer calls it
 * @param conductor {@code 8 AWG}, {@code 2 x 50 mm2}
 */
record ConductorLabels(String circuit, String conductor) {
    /** What does not depend on the conductor: {@code inverter: what}. */
    String ofCircuit(String what) {
        return circuit + ": " + what;
    }

    /** {@code inverter: what of 8 AWG}. */
    String of(String what) {
        return circuit + ": " + what + " of " + conductor;
    }
}
