package org.loamlight.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.Locale;

/** Why a file operation failed, in words for people. */
final class Reason {
    private Reason() {
    }

    static String of(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return "access denied";
        }
        if (failure instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (failure instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason().toLowerCase(Locale.ROOT);
        }
        return failure.getMessage() == null ? "no reason given" : failure.getMessage();
    }
}
