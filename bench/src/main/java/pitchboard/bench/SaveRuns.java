package pitchboard.bench;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pitchboard.web.Server;
import pitchboard.web.Settings;

/** Fifty devices that save without a pause, each a job of its own: how many saves a second, and how long the slowest take. */
public final class SaveRuns {
    private static final int DEVICES = 50;
    private static final int SAVES = 100;
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final String address;

    private SaveRuns(String address) {
        this.address = address;
    }

    public static void main(String[] arguments) throws Exception {
        Path data = Files.createTempDirectory("save-runs");
        try (Server server = Server.start(Settings.of(0, data))) {
            new SaveRuns(server.address()).run();
        }
    }

    private void run() throws Exception {
        ExecutorService devices = Executors.newFixedThreadPool(DEVICES);
        try {
            List<Callable<List<Double>>> work = new ArrayList<>();
            for (int i = 0; i < DEVICES; i++) {
                work.add(new Device(text("POST", "api/jobs", "{\"from\":\"demo\"}"))::saves);
            }
            long began = System.nanoTime();
            List<Double> spent = new ArrayList<>();
            for (Future<List<Double>> device : devices.invokeAll(work)) {
                spent.addAll(device.get());
            }
            double seconds = (System.nanoTime() - began) / 1e9;
            System.out.printf(
                    "%d devices: %.0f saves a second; one save %s%n",
                    DEVICES, spent.size() / seconds, Spread.of(spent));
        } finally {
            devices.shutdown();
        }
    }

    private final class Device {
        private final String id;

        Device(String created) {
            this.id = find("\"id\":\"([^\"]+)\"", created);
        }

        List<Double> saves() throws IOException, InterruptedException {
            String opened = text("GET", "api/jobs/" + id, "");
            String job = find("\"job\":(\\{.*\\})\\}$", opened);
            String version = find("\"version\":(\\d+)", opened);
            List<Double> spent = new ArrayList<>();
            for (int i = 0; i < SAVES; i++) {
                String changed = job.replaceFirst("\"job\":\"[^\"]*\"", "\"job\":\"Stair " + i + "\"");
                long began = System.nanoTime();
                String saved = text("PUT", "api/jobs/" + id, "{\"base\":" + version + ",\"job\":" + changed + "}");
                spent.add((System.nanoTime() - began) / 1e6);
                version = find("\"version\":(\\d+)", saved);
            }
            return spent;
        }
    }

    private String text(String method, String path, String body) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", "application/json")
                .header("Origin", address.substring(0, address.length() - 1))
                .method(method, HttpRequest.BodyPublishers.ofString(body))
                .build();
        HttpResponse<String> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() >= 300) {
            throw new IOException(method + " " + path + ": " + answer.statusCode() + " " + answer.body());
        }
        return answer.body();
    }

    private static String find(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        if (!found.find()) {
            throw new IllegalStateException(pattern + " is not in " + text);
        }
        return found.group(1);
    }
}
