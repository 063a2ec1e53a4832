/**
 * Pure functions on doubles, in SI units unless a name says otherwise: light, cover geometry, distances and the
 * probability of conformity.
 */
package org.loamlight.physics;
