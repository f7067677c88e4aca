package pitchboard.browser;

import java.util.List;

/** Which of several drawings are wanted: all, or those with these names. */
record Selection(boolean all, List<String> ids) {
    static final Selection NONE = new Selection(false, List.of());

    boolean includes(String id) {
        return all || ids.contains(id);
    }

    boolean isNone() {
        return !all && ids.isEmpty();
    }
}
