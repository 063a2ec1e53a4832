package org.loamlight.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a calendar day from the command line. */
final class Day implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException("\"" + text + "\" is no day of the calendar; write year-month-day, such as 2026-11-02");
        }
    }
}
