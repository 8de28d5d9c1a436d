package wayside.server;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Pattern;

/** Gathers, while the project is built, the licence texts of all libraries that the runnable jar holds. */
public final class LicenceFiles {
    private static final Pattern TEXT =
            Pattern.compile("META-INF/[^/]*(licen[cs]e|notice)[^/]*", Pattern.CASE_INSENSITIVE);
    private static final String OWN = "wayside-";

    private final Path standards;
    private final Path ours;
    private final Properties licences = new Properties();

    /**
     * A reader of what libraries bring along.
     *
     * @param standards folder of standard texts and of the list which says whose they are
     * @param ours the project's own licence, which is Apache-2.0 too
     */
    LicenceFiles(Path standards, Path ours) throws IOException {
        this.standards = standards;
        this.ours = ours;
        try (InputStream in = Files.newInputStream(standards.resolve("of.properties"))) {
            licences.load(in);
        }
    }

    /**
     * Writes a folder for each library on the class path of this run.
     *
     * @param args folder to write to, folder of the standard texts, file of the project's own licence
     * @throws IllegalStateException naming every library without a licence
     */
    public static void main(String[] args) throws IOException, URISyntaxException {
        if (Thread.currentThread().getContextClassLoader() instanceof URLClassLoader loader) {
            List<Path> jars = new ArrayList<>();
            for (URL url : loader.getURLs()) {
                jars.add(Path.of(url.toURI()));
            }
            new LicenceFiles(Path.of(args[1]), Path.of(args[2])).write(jars, Path.of(args[0]));
        }
    }

    void write(List<Path> classPath, Path folder) throws IOException {
        List<String> without = new ArrayList<>();
        for (Path file : classPath) {
            String name = String.valueOf(file.getFileName());
            if (name.endsWith(".jar") && !name.startsWith(OWN)) {
                Path own = Files.createDirectories(folder.resolve(name.substring(0, name.length() - 4)));
                if (!copy(file, own)) {
                    without.add(name);
                }
            }
        }
        if (!without.isEmpty()) {
            throw new IllegalStateException("No licence text is known of " + without);
        }
    }

    /** What the jar brings, and the text of its licence where it only points to one; false when there is none at all. */
    private boolean copy(Path jar, Path folder) throws IOException {
        boolean licensed = false;
        try (JarFile file = new JarFile(jar.toFile())) {
            for (JarEntry entry : file.stream().toList()) {
                if (TEXT.matcher(entry.getName()).matches()) {
                    try (InputStream in = file.getInputStream(entry)) {
                        String name = entry.getName().substring("META-INF/".length());
                        Files.write(folder.resolve(name), in.readAllBytes());
                        licensed |= name.toLowerCase(Locale.ROOT).startsWith("licen");
                    }
                }
            }
        }
        return copyStandard(jar, folder) || licensed;
    }

    private boolean copyStandard(Path jar, Path folder) throws IOException {
        String name = String.valueOf(jar.getFileName());
        String licence = licences.stringPropertyNames().stream()
                .filter(name::startsWith)
                .max((a, b) -> a.length() - b.length())
                .map(licences::getProperty)
                .orElse("");
        if (licence.isEmpty()) {
            return false;
        }
        Path text = licence.equals("Apache-2.0") ? ours : standards.resolve(licence + ".txt");
        Files.writeString(folder.resolve(licence + ".txt"), Files.readString(text, StandardCharsets.UTF_8));
        return true;
    }
}
