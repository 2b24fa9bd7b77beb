/**
 * Starts the virtual machine of the window so that a season is soon on screen. Nothing here knows
 * what the window shows, and without it the window opens all the same, only later.
 */
package org.rimebook.launch;
