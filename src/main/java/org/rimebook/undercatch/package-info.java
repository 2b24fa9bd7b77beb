/**
 * Undercatch: how much of what falls the wind carries past the gauge. Brings the wind to the height
 * of the orifice, gives the catch efficiency and a label for the phase, and says how uncertain an
 * adjusted total is. The adjusted value stands beside the measured one and never replaces it;
 * nothing here reads a record or makes a total.
 */
package org.rimebook.undercatch;
