/** Every read and write of Excel workbooks. What a sheet says is made as plain lists first; only then is it put into cells. */
package org.loamlight.workbook;
