/** Criteria, limits, sources and species profiles as data, and the resolving of limits for one animal. */
package org.loamlight.criterion;
