package org.loamlight.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.loamlight.criterion.Grade;
import org.loamlight.finding.Finding;
import org.loamlight.finding.Result;
import org.loamlight.setup.ProblemsFound;

/** What is not known is no graver than its criterion, however grave the limit would be if it were surely not kept. */
class OpenGradeTest {
    private static final String BOX = "\"enclosure\": {\"inside\": {\"length\": \"120 cm\", \"depth\": \"60 cm\", \"height\": \"60 cm\"},"
            + " \"build\": {\"walls\": {\"of\": \"plywood\"}, \"top\": {\"of\": \"mesh\"}}}, \"lamps\": [], ";
    private static final String PANEL = "\"heaters\": [{\"name\": \"panel\", \"kind\": \"radiant panel\", \"power\": \"WATTS W\","
            + " \"mounted\": \"inside\", \"control\": \"thermostat\"}], ";
    private static final String READ = "\"readings\": [{\"name\": \"air\", \"of\": \"air temperature\", \"time\": \"day\", \"value\": \"24 °C ± 1 °C\"},"
            + " {\"name\": \"bark\", \"of\": \"surface temperature\", \"time\": \"day\", \"value\": \"29 °C ± 1 °C\"}], ";
    private static final String ROOM = "\"room\": {\"hottest\": \"26 °C ± 1 °C\", \"when-read\": \"20 °C ± 1 °C\"}";

    @Test
    void what_is_not_told_has_the_grade_of_the_criterion() throws ProblemsFound {
        Finding untold = runaway("\"lamps\": []");
        assertEquals(Result.NO_EVIDENCE, untold.result());
        assertEquals(Grade.MINOR, untold.grade());
    }

    @Test
    void what_cannot_be_told_apart_has_the_grade_of_the_criterion() throws ProblemsFound {
        Finding undecided = runaway(BOX + PANEL.replace("WATTS", "40") + READ + ROOM);
        assertEquals(Result.UNDECIDED, undecided.result());
        assertEquals(Grade.MINOR, undecided.grade());
    }

    @Test
    void what_surely_is_not_kept_has_the_grade_of_the_limit() throws ProblemsFound {
        Finding wrong = runaway(BOX + PANEL.replace("WATTS", "600") + READ + ROOM);
        assertEquals(Result.NONCONFORMITY, wrong.result());
        assertEquals(Grade.MAJOR, wrong.grade());
    }

    private static Finding runaway(String members) throws ProblemsFound {
        String setup = "{\"format\": 1, \"animals\": [{\"name\": \"Sedge\", \"species\": \"lampropeltis-californiae\"}], " + members + "}";
        return BuiltIn.audit(setup).findings().stream().filter(one -> one.criterion().id().equals("heat.runaway")).findFirst().orElseThrow();
    }
}
