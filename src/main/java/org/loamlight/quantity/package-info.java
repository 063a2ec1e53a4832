/** Values with unit, standard uncertainty, place, origin and the trail of how they came about. Imports nothing. */
package org.loamlight.quantity;
