/**
 * The workspace: one window, one season. This package puts its parts together; each part has a
 * package of its own beneath, and none of them knows this one. Holds no science.
 */
package org.rimebook.desk;
