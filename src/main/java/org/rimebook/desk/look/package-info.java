/** Theme, colours, lines and type. Knows no data. */
package org.rimebook.desk.look;
