package hearthcloth.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version, which the build takes from its one place, and the commit it was built from. */
final class ProgramVersion implements IVersionProvider {

    /** Filled in by the build. */
    private static final String FILE = "/hearthcloth/version.properties";

    @Override
    public String[] getVersion() throws IOException {
        Properties known = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(FILE)) {
            if (in != null) {
                known.load(in);
            }
        }
        String commit = known.getProperty("commit", "");
        boolean told = commit.matches("[0-9a-f]+");
        return new String[] {
            "hearthcloth " + known.getProperty("version", "unknown") + " (commit " + (told ? commit : "unknown") + ")"
        };
    }
}
