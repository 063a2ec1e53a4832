/** What is handed over as text and JSON: the report, the results, the pages of criteria and species, their indexes. */
package org.loamlight.report;
