/** The enclosure drawn to scale: shapes and texts in millimetres on paper, for whatever writes them. */
package org.loamlight.drawing;
