package pitchboard.store.library;

/**
 * Who saves, and what they note about it.
 *
 * @param device the name people know the device by; may be blank
 * @param note may be blank
 */
public record By(String device, String note) {
    public By {
        Wording.requireWhole(device);
        Wording.requireWhole(note);
    }

    public static By device(String name) {
        return new By(name, "");
    }
}
