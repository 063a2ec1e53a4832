/** The form keepers fill in: which question stands where, what was answered, and the way from the cells to a setup and back. */
package org.loamlight.workbook.form;
