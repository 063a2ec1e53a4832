package org.loamlight.setup;

/** What a reading is a reading of. */
public enum ReadingOf {
    AIR_TEMPERATURE(Answer.TEMPERATURE), SURFACE_TEMPERATURE(Answer.TEMPERATURE), HUMIDITY(Answer.HUMIDITY),
    UV_INDEX(Answer.UV_INDEX), UNKNOWN(Answer.TEMPERATURE);

    private final Answer answer;

    ReadingOf(Answer answer) {
        this.answer = answer;
    }

    Answer answer() {
        return answer;
    }
}
