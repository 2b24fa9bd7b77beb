/** Long work away from the event thread, with progress and cancel. Knows no view. */
package org.rimebook.desk.task;
