/** Many setups at once: what lies in folders, zips and JSON Lines, what their audits came to together, and what changed since an earlier review. */
package org.loamlight.review;
