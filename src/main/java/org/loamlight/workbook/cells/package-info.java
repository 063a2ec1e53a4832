/**
 * Workbooks that others filled in, read cell by cell as a stream: no formula is worked out, no macro run, no link followed. What is unpacked is limited,
 * so that no file can take more memory than its reading is worth.
 */
package org.loamlight.workbook.cells;
