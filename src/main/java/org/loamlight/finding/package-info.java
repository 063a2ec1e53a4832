/** The facts rules state and the findings they are closed into. */
package org.loamlight.finding;
