/** The stack of strips on one time axis, its lane and its overview. */
package org.rimebook.desk.strip;
