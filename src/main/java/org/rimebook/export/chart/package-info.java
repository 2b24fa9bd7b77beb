/** Charts of tables as SVG: how they look, and how they become text. */
package org.rimebook.export.chart;
