/** Lists the pairs of criterion and subject, lets the rules state what they see, and closes every pair exactly once. */
package org.loamlight.evaluation;
