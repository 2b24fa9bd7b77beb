package org.rimebook.station;

import java.time.Instant;
import java.util.Optional;

/**
 * One calibration sheet of one wire: P = A(f−f0) + B(f−f0)², P in cm of water over the orifice.
 *
 * @param from first instant it holds; empty = from the start of the record
 * @param aCmPerHz A [cm/Hz]
 * @param bCmPerHz2 B [cm/Hz²]
 * @param f0Hz frequency of the wire under the empty bucket [Hz]
 */
public record Calibration(Optional<Instant> from, double aCmPerHz, double bCmPerHz2, double f0Hz) {}
