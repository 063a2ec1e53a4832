package org.loamlight.evaluation;

/**
 * What one of several mutants stated, kept apart from what the others state.
 *
 * @param by number of the mutant
 */
public record MutantStatement(int by, Object statement) {
}
