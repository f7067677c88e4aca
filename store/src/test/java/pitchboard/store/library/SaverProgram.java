package pitchboard.store.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;
import pitchboard.intake.written.Written;

/**
 * {@link Saver} made ready to begin fast and often: as jars, because Java keeps an archive of loaded classes only for
 * those, and with the driver's own library unpacked once, because a program that is killed cannot take its copy away.
 */
record SaverProgram(List<String> command) {
    static SaverProgram made(Path folder) throws Exception {
        unpackDriver(folder);
        Path archive = folder.resolve("classes.jsa");
        String classPath = classPath(folder);
        // Where no archive can be made, the program begins without it, only slower.
        SaverProgram training = of(folder, classPath, "-XX:ArchiveClassesAtExit=" + archive);
        Path errors = folder.resolve("training.errors");
        int ended = training.start(errors, folder.resolve("training.db").toString(), "training")
                .waitFor();
        assertThat(ended).as(Files.readString(errors)).isZero();
        return of(folder, classPath, "-XX:SharedArchiveFile=" + archive);
    }

    Process start(Path errors, String... arguments) throws IOException {
        List<String> words = new ArrayList<>(command);
        words.addAll(List.of(arguments));
        return new ProcessBuilder(words).redirectError(errors.toFile()).start();
    }

    private static SaverProgram of(Path folder, String classPath, String archive) {
        return new SaverProgram(List.of(
                ProcessHandle.current().info().command().orElseThrow(),
                archive,
                "-Xshare:auto",
                "-Xlog:disable",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Dorg.sqlite.lib.path=" + folder,
                "-Dorg.sqlite.lib.name=" + LibraryLoaderUtil.getNativeLibName(),
                "-cp",
                classPath,
                Saver.class.getName()));
    }

    private static String classPath(Path folder) throws IOException, URISyntaxException {
        List<Class<?>> needed =
                List.of(Saver.class, JobLibrary.class, Written.class, LoadSettings.class, SQLiteJDBCLoader.class);
        List<String> jars = new ArrayList<>();
        for (Class<?> each : needed) {
            Path place = Path.of(
                    each.getProtectionDomain().getCodeSource().getLocation().toURI());
            Path jar = folder.resolve(each.getSimpleName() + ".jar");
            jars.add((Files.isDirectory(place) ? jarred(place, jar) : place).toString());
        }
        return String.join(File.pathSeparator, jars);
    }

    private static Path jarred(Path classes, Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream entries = new JarOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = classes.relativize(file).toString().replace(File.separatorChar, '/');
                entries.putNextEntry(new ZipEntry(name));
                Files.copy(file, entries);
            }
        }
        return jar;
    }

    private static void unpackDriver(Path folder) throws IOException {
        String name = LibraryLoaderUtil.getNativeLibName();
        String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
        try (InputStream in = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
            Files.copy(in, folder.resolve(name));
        }
    }
}
