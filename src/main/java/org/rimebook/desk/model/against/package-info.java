/** Raw against derived, without a component: readings sorted into cells, and what a brush takes. */
package org.rimebook.desk.model.against;
