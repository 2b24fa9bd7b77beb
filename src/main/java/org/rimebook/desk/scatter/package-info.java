/** Raw against derived: the scatters and the sun's mark, under the strips. */
package org.rimebook.desk.scatter;
