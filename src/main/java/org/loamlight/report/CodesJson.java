package org.loamlight.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.loamlight.criterion.Code;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.evaluation.SideBySide.Asked;
import org.loamlight.evaluation.SideBySide.ByCode;
import org.loamlight.evaluation.SideBySide.InWords;
import org.loamlight.evaluation.SideBySide.Otherwise;
import org.loamlight.evaluation.SideBySide.Row;
import org.loamlight.finding.Held;
import org.loamlight.setup.Words;

/** The part of the results on what codes ask: each code with its points, each point beside what the species needs. */
final class CodesJson {
    private final SideBySide table;
    private final JsonReport report;
    private final JsonGenerator json;

    CodesJson(SideBySide table, JsonReport report, JsonGenerator json) {
        this.table = table;
        this.report = report;
        this.json = json;
    }

    void write() throws IOException {
        json.writeArrayFieldStart("codes");
        for (Code code : table.codes()) {
            code(code);
        }
        json.writeEndArray();
    }

    private void code(Code code) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", code.id());
        json.writeStringField("title", code.title());
        json.writeStringField("binding", Words.of(code.binding()));
        json.writeStringField("sha256", code.sha256());
        json.writeArrayFieldStart("points");
        for (Row row : table.rows()) {
            for (ByCode by : row.asked().stream().filter(one -> one.code().equals(code)).toList()) {
                point(row, by);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("clauses");
        for (InWords clause : table.clauses().stream().filter(one -> one.code().equals(code)).toList()) {
            clause(clause);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void point(Row row, ByCode by) throws IOException {
        json.writeStartObject();
        json.writeStringField("criterion", by.asked().finding().criterion().id());
        json.writeStringField("clause", by.point().clause());
        json.writeStringField("standing", Words.of(by.point().standing()));
        json.writeStringField("topic", row.topic().id());
        json.writeStringField("place", row.place().key());
        json.writeStringField("agreement", Words.of(row.agreement()));
        asked(by.asked());
        json.writeArrayFieldStart("otherwise");
        for (Otherwise otherwise : by.otherwise()) {
            otherwise(otherwise);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("species");
        for (Asked own : row.own()) {
            json.writeStartObject();
            json.writeStringField("criterion", own.finding().criterion().id());
            json.writeStringField("subject", own.finding().subject().key());
            asked(own);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void asked(Asked asked) throws IOException {
        json.writeStringField("result", Words.of(asked.result()));
        limits(asked.limits());
        report.texts("missing", asked.missing().stream().sorted());
        Optional<Held> deciding = asked.deciding();
        if (deciding.isPresent()) {
            json.writeObjectFieldStart("found");
            report.value(deciding.get().quantity());
            json.writeEndObject();
        }
    }

    private void otherwise(Otherwise otherwise) throws IOException {
        json.writeStartObject();
        json.writeStringField("policy", otherwise.policy());
        limits(otherwise.limits());
        json.writeEndObject();
    }

    private void limits(List<ResolvedLimit> limits) throws IOException {
        json.writeArrayFieldStart("limits");
        for (ResolvedLimit limit : limits) {
            json.writeStartObject();
            report.ends(limit);
            json.writeStringField("place", limit.place().key());
            json.writeStringField("where", Words.of(limit.where()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void clause(InWords clause) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", clause.clause().id());
        json.writeStringField("clause", clause.clause().clause());
        json.writeStringField("standing", Words.of(clause.clause().standing()));
        json.writeStringField("says", clause.clause().says());
        report.texts("judgedBy", clause.clause().judgedBy().stream());
        if (clause.result().isPresent()) {
            json.writeStringField("result", Words.of(clause.result().get()));
        }
        json.writeEndObject();
    }
}
