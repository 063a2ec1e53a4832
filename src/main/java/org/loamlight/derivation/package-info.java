/** Quantities from a setup: what was told, brought to the places and topics that limits speak of. */
package org.loamlight.derivation;
