package org.loamlight.workbook;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a workbook whose every text is already known: what POI alone costs, with the same sheets, styles, tables and
 * print set-up. The texts come from a file that {@link ListingsOf} made of an audit.
 */
public final class WorkbookOnly {

    private WorkbookOnly() {
    }

    /** @param arguments file of texts, workbook to write */
    public static void main(String[] arguments) throws IOException {
        try (DataInputStream in = new DataInputStream(Files.newInputStream(Path.of(arguments[0])))) {
            LocalDate on = LocalDate.parse(in.readUTF());
            List<Listing> listings = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                listings.add(listing(in));
            }
            Files.write(Path.of(arguments[1]), Checklist.bytes(listings, on));
        }
    }

    static void save(List<Listing> listings, LocalDate on, Path file) throws IOException {
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(file))) {
            out.writeUTF(on.toString());
            out.writeInt(listings.size());
            for (Listing listing : listings) {
                save(listing, out);
            }
        }
    }

    private static void save(Listing listing, DataOutputStream out) throws IOException {
        out.writeUTF(listing.sheet());
        out.writeUTF(listing.table());
        out.writeUTF(listing.title());
        out.writeInt(listing.boxed());
        out.writeInt(listing.columns().size());
        for (Column column : listing.columns()) {
            out.writeUTF(column.header());
            out.writeInt(column.width());
            out.writeUTF(column.kind().name());
        }
        out.writeInt(listing.rows().size());
        for (List<String> row : listing.rows()) {
            for (String text : row) {
                out.writeUTF(text);
            }
        }
    }

    private static Listing listing(DataInputStream in) throws IOException {
        String sheet = in.readUTF();
        String table = in.readUTF();
        String title = in.readUTF();
        int boxed = in.readInt();
        List<Column> columns = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            columns.add(new Column(in.readUTF(), in.readInt(), Column.Kind.valueOf(in.readUTF())));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int left = in.readInt(); left > 0; left--) {
            List<String> row = new ArrayList<>();
            for (int i = 0; i < columns.size(); i++) {
                row.add(in.readUTF());
            }
            rows.add(row);
        }
        return new Listing(sheet, table, title, columns, rows, boxed);
    }
}
