package wayside.server;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import wayside.sizing.reference.ReferenceTables;

/** Writes down while the project is built which engine it is: its release, and the edition of all of the core's tables together. */
final class EngineFile {
    private static final int DIGITS = 12;

    private EngineFile() {}

    static void write(Path folder) throws IOException {
        String version;
        try (InputStream stream = EngineFile.class.getResourceAsStream("/wayside/server/version.txt")) {
            version = new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8).strip();
        }
        Files.writeString(
                folder.resolve("engine.properties"), "version=" + version + "\ntables=" + editionOfTables() + '\n');
    }

    private static String editionOfTables() throws IOException {
        Path place = Path.of(URI.create(ReferenceTables.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toString()));
        if (Files.isDirectory(place)) {
            return edition(place);
        }
        try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
            return edition(jar.getPath("/"));
        }
    }

    /** The beginning of a digest over names and bytes of all tables, in the order of their names. */
    static String edition(Path root) throws IOException {
        MessageDigest digest = sha256();
        try (Stream<Path> files = Files.walk(root)) {
            List<Path> tables = files.filter(file -> file.toString().endsWith(".csv"))
                    .sorted((one, other) -> name(root, one).compareTo(name(root, other)))
                    .toList();
            for (Path table : tables) {
                digest.update(name(root, table).getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
                digest.update(Files.readAllBytes(table));
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }

    private static String name(Path root, Path file) {
        return root.relativize(file).toString().replace('\\', '/');
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
