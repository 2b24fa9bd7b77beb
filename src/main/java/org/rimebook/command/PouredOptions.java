package org.rimebook.command;

import org.rimebook.upkeep.Antifreeze;
import org.rimebook.upkeep.Poured;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import picocli.CommandLine.TypeConversionException;

/** Which antifreeze and oil are used at a gauge; the notebook has only their litres. */
final class PouredOptions {

  @Spec(Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--antifreeze",
      paramLabel = "LIQUID",
      required = true,
      converter = AntifreezeConverter.class,
      description =
          "propylene-glycol, methanol or ethanol; ethylene-glycol with --from-memory. Mixtures of"
              + " two aren't in a table that could be checked.")
  private Antifreeze antifreeze;

  @Option(
      names = "--strength",
      paramLabel = "PERCENT",
      defaultValue = "100",
      description = "Pure antifreeze in what is poured, by volume; 100 when not given.")
  private double strength;

  @Option(
      names = "--oil-density",
      paramLabel = "KG_PER_L",
      defaultValue = "" + Poured.USUAL_OIL_KG_PER_L,
      description = "Density of the oil by its data sheet; ${DEFAULT-VALUE} when not given.")
  private double oilKgPerL;

  @Option(
      names = "--from-memory",
      description = "Also use tables that nobody could check against their source.")
  private boolean fromMemory;

  /**
   * What is poured.
   *
   * @param antifreezeL litres in the bucket when the record begins
   */
  Poured poured(double antifreezeL) {
    if (antifreeze.source().isEmpty() && !fromMemory) {
      throw new ParameterException(
          spec.commandLine(),
          "the freezing points of "
              + antifreeze.words()
              + " are only remembered; give --from-memory to use them all the same");
    }
    try {
      return new Poured(antifreeze, strength / 100, antifreezeL, 0, oilKgPerL);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage());
    }
  }

  /** Reads the name of a liquid. */
  static final class AntifreezeConverter implements ITypeConverter<Antifreeze> {
    @Override
    public Antifreeze convert(String text) {
      return Antifreeze.ofCode(text)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      "use propylene-glycol, methanol, ethanol or ethylene-glycol, not '"
                          + text
                          + "'"));
    }
  }
}
