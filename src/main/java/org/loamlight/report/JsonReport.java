package org.loamlight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.loamlight.criterion.HouseRules;
import org.loamlight.criterion.ResolvedLimit;
import org.loamlight.criterion.Waiver;
import org.loamlight.evaluation.Audit;
import org.loamlight.evaluation.SideBySide;
import org.loamlight.evaluation.WaivedFindings;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Held;
import org.loamlight.finding.Pair;
import org.loamlight.quantity.Quantity;
import org.loamlight.ranking.Ranking;
import org.loamlight.setup.Words;
import org.loamlight.wording.Wording;

/**
 * The results as JSON, as docs/results.schema.json lays down: every finding in the order of its rank, what conforms and what
 * does not apply included, and every quantity. Amounts are in the one unit of their topic, whatever the report is printed in.
 * The same input gives the same bytes.
 */
public final class JsonReport {
    /** The version of the format. */
    public static final int FORMAT = 1;

    private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);
    private static final int PROBABILITY_DECIMALS = 4;

    private final Audit audit;
    private final Wording wording;
    private final JsonGenerator json;

    private JsonReport(Audit audit, Wording wording, JsonGenerator json) {
        this.audit = audit;
        this.wording = wording;
        this.json = json;
    }

    /**
     * Writes the results.
     *
     * @param inputSha256 SHA-256 of the setup file, lower-case hexadecimal
     * @return the document, lines ended by a line feed
     */
    public static String of(Audit audit, Ranking ranking, Wording wording, String inputSha256) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.setPrettyPrinter(indented());
            new JsonReport(audit, wording, json).document(ranking, inputSha256);
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory can always be written", e);
        }
        return text.append('\n').toString();
    }

    private static DefaultPrettyPrinter indented() {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withArrayEmptySeparator("").withObjectEmptySeparator(""))
                .withObjectIndenter(lines).withArrayIndenter(lines);
    }

    private void document(Ranking ranking, String inputSha256) throws IOException {
        json.writeStartObject();
        json.writeNumberField("format", FORMAT);
        json.writeStringField("on", audit.on().toString());
        json.writeStringField("conclusion", Words.of(ranking.conclusion()));
        json.writeObjectFieldStart("knowledge");
        json.writeStringField("version", audit.knowledge().version());
        json.writeStringField("sha256", audit.knowledge().sha256());
        json.writeEndObject();
        json.writeObjectFieldStart("input");
        json.writeStringField("sha256", inputSha256);
        json.writeEndObject();
        house();
        findings(ranking);
        unusedWaivers();
        json.writeArrayFieldStart("quantities");
        for (Quantity quantity : audit.quantities()) {
            quantity(quantity);
        }
        json.writeEndArray();
        if (!audit.knowledge().codes().isEmpty()) {
            new CodesJson(SideBySide.of(audit), this, json).write();
        }
        json.writeEndObject();
    }

    private void findings(Ranking ranking) throws IOException {
        json.writeArrayFieldStart("findings");
        List<List<Finding>> parts = List.of(ranking.toDo(), ranking.toFindOut(), ranking.waived(), ranking.right(), ranking.notApplicable());
        for (Finding finding : parts.stream().flatMap(List::stream).toList()) {
            finding(finding);
        }
        json.writeEndArray();
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("criterion", finding.criterion().id());
        json.writeStringField("subject", finding.subject().key());
        json.writeStringField("result", Words.of(finding.result()));
        json.writeStringField("grade", Words.of(finding.grade()));
        texts("variants", finding.variants().stream().filter(variant -> !variant.isEmpty()));
        json.writeStringField("need", Words.of(finding.criterion().need()));
        evidence(finding);
        texts("explains", finding.explains().stream().map(Pair::key));
        texts("explainedBy", finding.explainedBy().stream().map(Pair::key));
        texts("missing", finding.missing().stream());
        texts("voided", finding.voided().stream().map(voided -> voided.quantity().source()).distinct());
        textUnlessEmpty("reason", wording.reason(finding));
        textUnlessEmpty("correct", wording.correction(finding));
        textUnlessEmpty("meanwhile", wording.meanwhile(finding));
        waiver(finding);
        json.writeEndObject();
    }

    private void waiver(Finding finding) throws IOException {
        WaivedFindings waived = audit.waived();
        Waiver waiver = waived.inForce().getOrDefault(finding.pair(), waived.expired().get(finding.pair()));
        if (waiver != null) {
            json.writeObjectFieldStart("waiver");
            json.writeBooleanField("holds", waived.inForce().containsKey(finding.pair()));
            json.writeStringField("reason", waiver.reason());
            json.writeStringField("grantedBy", waiver.grantedBy());
            json.writeStringField("until", waiver.until().toString());
            json.writeEndObject();
        }
    }

    private void unusedWaivers() throws IOException {
        if (!audit.waived().unused().isEmpty()) {
            texts("unusedWaivers", audit.waived().unused().stream().map(Waiver::criterion));
        }
    }

    private void house() throws IOException {
        if (audit.knowledge().house().isPresent()) {
            HouseRules house = audit.knowledge().house().get();
            json.writeObjectFieldStart("house");
            json.writeStringField("title", house.title());
            json.writeStringField("issuer", house.issuer());
            json.writeStringField("date", house.date().toString());
            json.writeStringField("sha256", house.sha256());
            texts("loosened", house.loosened(audit.knowledge()).stream().map(HouseRules.Loosened::criterion));
            json.writeEndObject();
        }
    }

    private void evidence(Finding finding) throws IOException {
        Optional<Held> deciding = finding.deciding();
        Optional<Quantity> found = deciding.map(Held::quantity).or(() -> finding.evidence().stream().findFirst());
        if (found.isPresent()) {
            json.writeObjectFieldStart("found");
            value(found.get());
            json.writeEndObject();
        }
        Optional<ResolvedLimit> limit = deciding.map(Held::limit).or(() -> finding.wanted().stream().findFirst());
        if (limit.isPresent()) {
            limit(limit.get());
        }
        if (deciding.isPresent()) {
            json.writeFieldName("probability");
            json.writeNumber(plain(new BigDecimal(deciding.get().probability()).setScale(PROBABILITY_DECIMALS, RoundingMode.HALF_EVEN)));
        }
    }

    private void limit(ResolvedLimit limit) throws IOException {
        json.writeObjectFieldStart("limit");
        ends(limit);
        json.writeStringField("source", wording.whereItStands(limit.citation()));
        json.writeStringField("standing", Words.of(limit.citation().standing()));
        json.writeEndObject();
    }

    /** The ends a limit has, with their unit. */
    void ends(ResolvedLimit limit) throws IOException {
        if (limit.hasLow()) {
            number("low", limit.low());
        }
        if (limit.hasHigh()) {
            number("high", limit.high());
        }
        json.writeStringField("unit", limit.topic().unit().ucum());
    }

    private void quantity(Quantity quantity) throws IOException {
        json.writeStartObject();
        value(quantity);
        json.writeStringField("method", Words.of(quantity.origin().method()));
        textUnlessEmpty("on", quantity.origin().on());
        texts("trail", wording.steps(quantity).stream());
        json.writeEndObject();
    }

    void value(Quantity quantity) throws IOException {
        json.writeStringField("topic", quantity.topic().id());
        json.writeStringField("place", quantity.place().key());
        number("value", quantity.value());
        json.writeStringField("unit", quantity.topic().unit().ucum());
        number("uncertainty", quantity.uncertainty());
        json.writeStringField("origin", quantity.source());
    }

    private void number(String key, double value) throws IOException {
        json.writeFieldName(key);
        json.writeNumber(plain(new BigDecimal(value).round(SIX_DIGITS)));
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    void texts(String key, Stream<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts.toList()) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void textUnlessEmpty(String key, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(key, text);
        }
    }
}
