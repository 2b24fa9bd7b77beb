/**
 * The season report, which a reviewer signs: one page of answer, then the evidence. Lays out what
 * was computed and computes nothing of its own. A section is one class behind {@link
 * org.rimebook.export.report.ReportSection}.
 */
package org.rimebook.export.report;
