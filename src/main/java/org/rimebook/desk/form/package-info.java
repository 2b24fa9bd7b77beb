/** Parts that forms are made of: fields that say what is wrong, choices, words. Know no data. */
package org.rimebook.desk.form;
