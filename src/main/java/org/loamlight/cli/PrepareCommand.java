package org.loamlight.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** {@code loamlight prepare}: goes once through a whole audit, so that the launcher can archive the classes this loads. */
@Command(name = "prepare", hidden = true, description = "Audits the example in the program and keeps nothing of it.")
final class PrepareCommand implements Callable<Integer> {
    private static final String EXAMPLE = "/org/loamlight/foster-corn-snake.json";

    private final Surroundings surroundings;

    PrepareCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = Files.createTempDirectory("loamlight-");
        Path setup = folder.resolve("setup.json");
        Path workbook = folder.resolve("checklist.xlsx");
        try (InputStream example = PrepareCommand.class.getResourceAsStream(EXAMPLE)) {
            Files.copy(example, setup);
            PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            Main.start(new Surroundings(nowhere, nowhere, surroundings.clock()), "audit", setup.toString(), "-o", workbook.toString());
        } finally {
            Files.deleteIfExists(workbook);
            Files.deleteIfExists(setup);
            Files.delete(folder);
        }
        surroundings.out().println("Prepared with the example in the program.");
        return ExitCode.IN_ORDER;
    }
}
