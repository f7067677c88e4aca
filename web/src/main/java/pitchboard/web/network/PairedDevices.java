package pitchboard.web.network;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import pitchboard.store.FileTrouble;
import pitchboard.store.library.Device;
import pitchboard.store.library.Devices;
import pitchboard.web.guarding.Caller;
import pitchboard.web.guarding.Keys;

/** The devices that are let in, each with a key of its own. Kept is only what a key is checked by. */
public final class PairedDevices implements Keys {
    private static final int KEY_BYTES = 32;
    private static final int KEY_LENGTH = 43;

    private final Devices devices;
    private final SecureRandom random = new SecureRandom();

    public PairedDevices(Devices devices) {
        this.devices = devices;
    }

    /** Lets a device in and gives its key, which is not kept here and is never shown again. */
    public String letIn(String name) throws FileTrouble {
        byte[] bytes = new byte[KEY_BYTES];
        random.nextBytes(bytes);
        String key = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        devices.add(name, hash(key));
        return key;
    }

    @Override
    public Optional<Caller> find(String key) throws FileTrouble {
        if (key.length() != KEY_LENGTH) {
            return Optional.empty();
        }
        Optional<Device> device = devices.findLetIn(hash(key));
        if (device.isPresent()) {
            devices.touch(device.get().id());
        }
        return device.map(found -> new Caller(found.name(), Optional.of(found.id())));
    }

    /** Lets a device in no longer; false when it was not let in. */
    public boolean revoke(String id) throws FileTrouble {
        return devices.revoke(id);
    }

    /** Those that are let in, in the order they were. */
    public List<Device> list() throws FileTrouble {
        return devices.list().stream()
                .filter(device -> device.revoked().isEmpty())
                .toList();
    }

    /** A key is 32 random bytes, so its hash needs no salt: there is nothing to guess. */
    private static String hash(String key) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
