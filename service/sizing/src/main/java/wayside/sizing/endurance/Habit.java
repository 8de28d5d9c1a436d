package wayside.sizing.endurance;

import java.util.Optional;
import wayside.sizing.brief.PanelMount;
import wayside.sizing.journey.Journey;
import wayside.sizing.trace.Message;

/**
 * A change that takes no part of the system.
 *
 * @param journey the trip with it
 * @param panel how the panels sit with it, where that is the change
 */
public record Habit(Message change, Journey journey, Optional<PanelMount> panel) {}
