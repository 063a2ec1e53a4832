/** The description of an enclosure as records, and the located, strict reading of its JSON. */
package org.loamlight.setup;
