package org.rimebook.export.standard;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A netCDF file in the classic format, CDF-1: dimensions, attributes and variables of fixed size.
 * The format is that of the NetCDF Users' Guide, appendix "NetCDF File Format Specifications"; also
 * a standard of the OGC (10-092r3).
 */
final class ClassicNetcdf {

  private static final byte[] MAGIC = {'C', 'D', 'F', 1};
  private static final int DIMENSIONS = 0x0A;
  private static final int VARIABLES = 0x0B;
  private static final int ATTRIBUTES = 0x0C;
  private static final int UNIT = 4;

  private final Map<String, Integer> dimensions = new LinkedHashMap<>();
  private final List<String> dimensionNames = new ArrayList<>();
  private final List<Variable> variables = new ArrayList<>();
  private final Attributes global = new Attributes();

  /** Values of one type, big-endian, as they stand in the file. */
  private record Values(int type, int count, byte[] bytes) {

    static Values of(String text) {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return new Values(2, bytes.length, bytes);
    }

    static Values of(byte... values) {
      return new Values(1, values.length, values.clone());
    }

    static Values of(double... values) {
      ByteBuffer buffer = ByteBuffer.allocate(values.length * Double.BYTES);
      for (double value : values) {
        buffer.putDouble(value);
      }
      return new Values(6, values.length, buffer.array());
    }
  }

  /** Attributes in the order they were put. */
  static final class Attributes {

    private final Map<String, Values> values = new LinkedHashMap<>();

    /** A text. */
    Attributes put(String name, String text) {
      values.put(name, Values.of(text));
      return this;
    }

    /** Bytes, which a variable of bytes must have where it has values of its own type. */
    Attributes flags(String name, byte... bytes) {
      values.put(name, Values.of(bytes));
      return this;
    }

    /** A number. */
    Attributes put(String name, double number) {
      values.put(name, Values.of(number));
      return this;
    }
  }

  private record Variable(
      String name, List<Integer> dimensions, Values values, Attributes attributes) {}

  /** Adds a dimension. */
  void dimension(String name, int length) {
    dimensions.put(name, length);
    dimensionNames.add(name);
  }

  /** The attributes of the file as a whole. */
  Attributes global() {
    return global;
  }

  /** Adds a variable of numbers over dimensions, none for a single number; its attributes. */
  Attributes numbers(String name, double[] values, String... over) {
    return variable(name, Values.of(values), over);
  }

  /** Adds a variable of bytes. */
  Attributes bytes(String name, byte[] values, String... over) {
    return variable(name, Values.of(values), over);
  }

  /** Adds a text, over a dimension of its own. */
  Attributes text(String name, String text) {
    Values values = Values.of(text);
    dimension(name + "_length", values.count);
    return variable(name, values, name + "_length");
  }

  private Attributes variable(String name, Values values, String... over) {
    int size = 1;
    List<Integer> indices = new ArrayList<>();
    for (String dimension : over) {
      size *= dimensions.get(dimension);
      indices.add(dimensionNames.indexOf(dimension));
    }
    if (size != values.count) {
      throw new IllegalArgumentException(name + " has " + values.count + " values, not " + size);
    }
    Attributes attributes = new Attributes();
    variables.add(new Variable(name, indices, values, attributes));
    return attributes;
  }

  /** The file. */
  byte[] bytes() {
    int header = header(0).length; // where the data starts doesn't change how long the header is
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(header(header));
    for (Variable variable : variables) {
      file.writeBytes(variable.values.bytes);
      file.writeBytes(new byte[padding(variable.values.bytes.length)]);
    }
    return file.toByteArray();
  }

  private byte[] header(int dataStart) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.write(MAGIC);
      out.writeInt(0); // no variable grows
      list(out, DIMENSIONS, dimensions.size());
      for (Map.Entry<String, Integer> dimension : dimensions.entrySet()) {
        name(out, dimension.getKey());
        out.writeInt(dimension.getValue());
      }
      attributes(out, global);
      list(out, VARIABLES, variables.size());
      int begin = dataStart;
      for (Variable variable : variables) {
        begin = variable(out, variable, begin);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory can't fail", e);
    }
    return bytes.toByteArray();
  }

  /** Writes what the header says of a variable; where the next one's data begins. */
  private static int variable(DataOutputStream out, Variable variable, int begin)
      throws IOException {
    name(out, variable.name);
    out.writeInt(variable.dimensions.size());
    for (int dimension : variable.dimensions) {
      out.writeInt(dimension);
    }
    attributes(out, variable.attributes);
    int length = variable.values.bytes.length;
    out.writeInt(variable.values.type);
    out.writeInt(length + padding(length));
    out.writeInt(begin);
    return begin + length + padding(length);
  }

  private static void attributes(DataOutputStream out, Attributes attributes) throws IOException {
    list(out, ATTRIBUTES, attributes.values.size());
    for (Map.Entry<String, Values> attribute : attributes.values.entrySet()) {
      name(out, attribute.getKey());
      out.writeInt(attribute.getValue().type);
      out.writeInt(attribute.getValue().count);
      padded(out, attribute.getValue().bytes);
    }
  }

  private static void list(DataOutputStream out, int tag, int size) throws IOException {
    out.writeInt(size == 0 ? 0 : tag);
    out.writeInt(size);
  }

  private static void name(DataOutputStream out, String name) throws IOException {
    byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    padded(out, bytes);
  }

  private static void padded(DataOutputStream out, byte[] bytes) throws IOException {
    out.write(bytes);
    out.write(new byte[padding(bytes.length)]);
  }

  private static int padding(int length) {
    return (UNIT - length % UNIT) % UNIT;
  }
}
