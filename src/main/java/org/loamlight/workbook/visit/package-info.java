/** The visit to an enclosure: in which order its questions are asked, and what was written into the checklist there. */
package org.loamlight.workbook.visit;
