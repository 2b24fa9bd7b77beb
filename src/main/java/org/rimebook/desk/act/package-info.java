/** Commands as actions, and the groups they stand in. */
package org.rimebook.desk.act;
