package org.rimebook.export.standard;

/** Names of the CF conventions. */
final class Cf {

  /** CF standard name of the catch, solid or liquid, as the depth of its water. */
  static final String CATCH = "lwe_thickness_of_precipitation_amount";

  /** The version of the conventions. */
  static final String CONVENTIONS = "CF-1.8";

  private Cf() {}
}
