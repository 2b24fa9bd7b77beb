/**
 * The published ways of telling catch from a noisy level, each as its source gives it and with our
 * own choice stated where the source is silent, and an oracle that is told which hours are wet.
 * They are what an estimator is compared with; no total is ever made by them. They know depths and
 * hours, and neither the record nor the notebook.
 */
package org.rimebook.practice.published;
