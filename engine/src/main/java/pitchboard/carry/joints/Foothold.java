package pitchboard.carry.joints;

/** How a guard's post meets what holds it. */
public enum Foothold {
    WHOLE,
    NOTCHED
}
