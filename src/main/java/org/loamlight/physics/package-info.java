/**
 * Pure functions on doubles, in SI units unless a name says otherwise: light and ultraviolet, heat, moist air,
 * loads, floor plans, energy, day length, electricity, contact burns, and the probability of conformity.
 */
package org.loamlight.physics;
