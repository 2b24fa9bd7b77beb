package org.rimebook.export.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import ucar.ma2.Array;
import ucar.nc2.NetcdfFile;

class ClassicNetcdfProperties {

  @Property(tries = 200)
  void whatWasPutInIsReadBackWhateverTheLengths(
      @ForAll @Size(min = 1, max = 9) double[] numbers,
      @ForAll @Size(min = 1, max = 9) byte[] flags,
      @ForAll @AlphaChars @StringLength(min = 1, max = 9) String name,
      @ForAll @AlphaChars @StringLength(min = 1, max = 9) String words)
      throws IOException {
    ClassicNetcdf written = new ClassicNetcdf();
    written.dimension("n", numbers.length);
    written.dimension("f", flags.length);
    written.bytes("flags", flags, "f").flags("values", flags);
    written.text("text", words).put("words", words);
    written.numbers("v" + name, numbers, "n").put("number", 1.5);
    NetcdfFile file = NetcdfFile.openInMemory("x.nc", written.bytes());
    Array readNumbers = file.findVariable("v" + name).read();
    for (int i = 0; i < numbers.length; i++) {
      assertThat(readNumbers.getDouble(i)).isEqualTo(numbers[i]);
    }
    Array readFlags = file.findVariable("flags").read();
    for (int i = 0; i < flags.length; i++) {
      assertThat(readFlags.getByte(i)).isEqualTo(flags[i]);
    }
    assertThat(file.findVariable("text").findAttribute("words").getStringValue()).isEqualTo(words);
    assertThat(file.findVariable("text").read().toString()).isEqualTo(words);
  }
}
