/**
 * Logger files to one time-ordered {@link org.rimebook.record.SeasonRecord}, with an account of
 * every line that wasn't taken. Reads files and never writes them; knows nothing of depth.
 */
package org.rimebook.record;
