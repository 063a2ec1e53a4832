package org.loamlight.review;

import java.util.Optional;
import org.loamlight.criterion.Grade;
import org.loamlight.criterion.Need;
import org.loamlight.finding.Result;

/**
 * What one criterion came to for one subject of a setup.
 *
 * @param criterion id of the criterion
 * @param subject   key of the subject
 * @param words     empty for what is right or does not apply, and for what is not known but asked for by another finding
 */
public record Point(String criterion, String subject, Result result, Grade grade, Need need, Optional<PointWords> words) {

    /** Whether somebody gave leave for it: it is told and counts for nothing. */
    public boolean isWaived() {
        return words.isPresent() && words.get().leave().isPresent();
    }

    /** Not right, and nobody gave leave. */
    public boolean isToDo() {
        return result == Result.NONCONFORMITY && !isWaived();
    }

    /** Not known or not decided, without leave, and asked for here. */
    public boolean isToFindOut() {
        return (result == Result.NO_EVIDENCE || result == Result.UNDECIDED) && words.isPresent() && !isWaived();
    }

    /** Not right, not known or not decided, with or without leave. */
    public boolean isOpen() {
        return result == Result.NONCONFORMITY || result == Result.NO_EVIDENCE || result == Result.UNDECIDED;
    }

    /** The same point of the same part. */
    String key() {
        return criterion + "/" + subject;
    }
}
