/**
 * What the window shows and does, without a component: no class here knows Swing or AWT, so all of
 * it is tested without a screen. Confined to the event thread but for what is handed to tasks.
 */
package org.rimebook.desk.model;
