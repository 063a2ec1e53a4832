/** The order of findings by the harm they do, causes before effects, and the conclusion. Pure. */
package org.loamlight.ranking;
