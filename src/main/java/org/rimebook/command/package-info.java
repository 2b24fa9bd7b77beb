/** The command line: says what was asked for, what came of it and what to do, in plain words. */
package org.rimebook.command;
