/**
 * The rules that hold the shape of the code and of its documents. Each rule is also tried on the
 * classes in {@code wrong}, which break it on purpose, so that none can pass by looking at nothing.
 */
package org.rimebook.architecture;
