/** The report's preview and the figure of the view in sight: dialogs and their commands. */
package org.rimebook.desk.report;
