/**
 * The notebook: dated entries of judgement in an append-only log ({@code notebook.jsonl}). Reads,
 * appends and tells which entries count; doesn't apply them to any reading.
 */
package org.rimebook.notebook;
