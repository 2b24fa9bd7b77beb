/** What the bench holds without a component: its forms, the papers made of them, what is stored. */
package org.rimebook.desk.model.bench;
