package pitchboard.web.guarding;

import java.util.Optional;
import pitchboard.store.FileTrouble;

/** Knows the devices that are let in. */
public interface Keys {
    /** The device that has this key; empty when none has, or when it is let in no longer. */
    Optional<Caller> find(String key) throws FileTrouble;
}
