package org.loamlight.setup;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.ContentReference;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.Optional;

/**
 * A place where a text stops being JSON, said in words for people who do not know what a parser is.
 *
 * @param offset  of the character the complaint is about
 * @param found   what stands there
 * @param allowed how to put it right
 */
record SyntaxSlip(int offset, String found, String allowed) {
    private static final String QUOTE_MARKS = "'\u2018\u2019\u201A\u201C\u201D\u201E\u00AB\u00BB`\u00B4";

    /** A sign in the parser's own message, and what we say instead. */
    private record Known(String sign, String found, String allowed) {
    }

    private static final List<Known> KNOWN = List.of(
            new Known("double-quote to start field name", "a key is expected here", "write each key in double quotes, such as \"name\""),
            new Known("expecting a colon", "there is no colon after the key", "write \"key\": value"),
            new Known("expecting comma", "there is no comma before this",
                    "put a comma between two members, and a value with a unit in quotes, such as \"12 cm\""),
            new Known("Unrecognized character escape", "this character must not follow a backslash", "write a backslash itself as \\\\"),
            new Known("hex-digit", "four hexadecimal digits must follow \\u", "write the character itself"),
            new Known("Illegal unquoted character", "a line break or control character stands inside a text",
                    "close the quotes on the line they were opened on"),
            new Known("CTRL-CHAR", "there is a control character", "this looks like no text file; name a JSON file"),
            new Known("(non-standard) comment", "this is a comment", "JSON has none; remove it"),
            new Known("nesting depth", "objects and lists lie too deep in each other", "a setup has no more than five levels"));

    static SyntaxSlip of(JsonProcessingException failure, JsonParser parser, SourceText text) {
        int offset = offset(failure, parser, text);
        if (failure instanceof JsonEOFException) {
            return new SyntaxSlip(offset, "the text ends too early", unclosed(parser.getParsingContext()));
        }
        String message = String.valueOf(failure.getOriginalMessage());
        if (message.startsWith("Unexpected close marker")) {
            return new SyntaxSlip(offset, "found " + text.wordAt(offset), unclosed(parser.getParsingContext()));
        }
        return byCharacter(offset, text).orElseGet(() -> bySign(offset, message, text));
    }

    private static int offset(JsonProcessingException failure, JsonParser parser, SourceText text) {
        if (failure instanceof StreamConstraintsException) {
            return (int) Math.max(0, parser.currentTokenLocation().getCharOffset());
        }
        int at = failure.getLocation() == null ? 0 : (int) Math.max(0, Math.min(failure.getLocation().getCharOffset(), text.length()));
        boolean isPast = failure.getOriginalMessage().startsWith("Non-standard token") || failure.getOriginalMessage().contains("umeric value");
        return isPast ? text.startOfWord(at) : at;
    }

    private static String unclosed(JsonStreamContext context) {
        if (context.inRoot()) {
            return "remove it, or open it with { or [ before";
        }
        int line = context.startLocation(ContentReference.unknown()).getLineNr();
        return context.inArray() ? "close the [ of line " + line + " with ]" : "close the { of line " + line + " with }";
    }

    private static Optional<SyntaxSlip> byCharacter(int offset, SourceText text) {
        String word = text.wordAt(offset);
        if (!word.isEmpty() && QUOTE_MARKS.contains(word)) {
            return slip(offset, "found the quotation mark " + word, "use straight double quotes, \"...\"");
        }
        if ((word.equals("}") || word.equals("]")) && text.lastBefore(offset) == ',') {
            return slip(offset, "a comma stands before " + word, "remove that comma");
        }
        return Optional.empty();
    }

    private static Optional<SyntaxSlip> slip(int offset, String found, String allowed) {
        return Optional.of(new SyntaxSlip(offset, found, allowed));
    }

    private static SyntaxSlip bySign(int offset, String message, SourceText text) {
        return KNOWN.stream().filter(known -> message.contains(known.sign)).findFirst()
                .map(known -> new SyntaxSlip(offset, known.found, known.allowed))
                .orElseGet(() -> new SyntaxSlip(offset, "found " + Quoted.plain(text.wordAt(offset)),
                        "write a text in double quotes, a list [ ... ] or an object { ... }; what nobody knows is \"not looked\""));
    }
}
