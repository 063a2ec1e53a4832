package org.loamlight.review;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Optional;
import org.loamlight.criterion.Citation;
import org.loamlight.setup.Words;

/** Writes a result as one line of JSON, as docs/review.schema.json lays down. The same result gives the same bytes. */
final class ReviewedJson {
    /** The version of the format. */
    static final int FORMAT = 1;
    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;

    private ReviewedJson(JsonGenerator json) {
        this.json = json;
    }

    /** The line, with no line feed in it or at its end. */
    static String line(Reviewed reviewed) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            new ReviewedJson(json).write(reviewed);
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory can always be written", e);
        }
        return text.toString();
    }

    /** What an earlier run is looked through for stands first. */
    private void write(Reviewed reviewed) throws IOException {
        json.writeStartObject();
        json.writeNumberField("format", FORMAT);
        json.writeNumberField("number", reviewed.number());
        json.writeStringField("file", reviewed.file());
        if (reviewed.line() > 0) {
            json.writeNumberField("line", reviewed.line());
        }
        json.writeObjectFieldStart("input");
        json.writeStringField("sha256", reviewed.sha256());
        json.writeEndObject();
        json.writeObjectFieldStart("knowledge");
        json.writeStringField("version", reviewed.basis().version());
        json.writeStringField("sha256", reviewed.basis().sha256());
        json.writeEndObject();
        json.writeStringField("options", reviewed.basis().options());
        if (reviewed.basis().isAnonymous()) {
            json.writeBooleanField("anonymous", true);
        }
        if (reviewed.judged().isPresent()) {
            judged(reviewed.judged().get());
        } else {
            problems(reviewed);
        }
        json.writeEndObject();
    }

    private void problems(Reviewed reviewed) throws IOException {
        if (reviewed.isDefect()) {
            json.writeBooleanField("defect", true);
        }
        json.writeArrayFieldStart("problems");
        for (String problem : reviewed.problems()) {
            json.writeString(problem);
        }
        json.writeEndArray();
    }

    private void judged(Judged judged) throws IOException {
        json.writeStringField("on", judged.on().toString());
        if (judged.dayTaken()) {
            json.writeBooleanField("dayTaken", true);
        }
        json.writeStringField("conclusion", Words.of(judged.conclusion()));
        json.writeStringField("inWords", judged.inWords());
        json.writeBooleanField("livesHere", judged.livesHere());
        text("title", judged.title());
        json.writeArrayFieldStart("animals");
        for (Kept animal : judged.animals()) {
            json.writeStartObject();
            json.writeStringField("name", animal.name());
            json.writeStringField("species", animal.species());
            json.writeStringField("english", animal.english());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart(ReviewedReader.FINDINGS);
        for (Point point : judged.points()) {
            point(point);
        }
        json.writeEndArray();
    }

    private void point(Point point) throws IOException {
        json.writeStartObject();
        json.writeStringField("criterion", point.criterion());
        json.writeStringField("subject", point.subject());
        json.writeStringField("result", Words.of(point.result()));
        json.writeStringField("grade", Words.of(point.grade()));
        json.writeStringField("need", Words.of(point.need()));
        if (point.words().isPresent()) {
            words(point.words().get());
        }
        json.writeEndObject();
    }

    private void words(PointWords words) throws IOException {
        json.writeStringField("title", words.title());
        text("where", words.where());
        text("found", words.found());
        text("required", words.required());
        text("past", words.past());
        text("act", words.act());
        text("by", words.by());
        day("due", words.due());
        day("waivedUntil", words.leave());
        json.writeArrayFieldStart("sources");
        for (Citation citation : words.citations()) {
            json.writeStartObject();
            json.writeStringField("source", citation.source());
            text("clause", citation.clause());
            json.writeStringField("standing", Words.of(citation.standing()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void day(String key, Optional<LocalDate> day) throws IOException {
        text(key, day.map(LocalDate::toString).orElse(""));
    }

    private void text(String key, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(key, text);
        }
    }
}
