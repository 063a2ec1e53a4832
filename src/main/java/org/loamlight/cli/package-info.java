/** The command line: arguments, files, exit codes and the wiring. The only place that knows streams, exit and the clock. */
package org.loamlight.cli;
