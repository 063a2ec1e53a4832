/** Sentences from keys and numbers: the only place where words are made, in one language and one system of units. */
package org.loamlight.wording;
