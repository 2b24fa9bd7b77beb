package org.rimebook.export.standard;

import org.rimebook.export.FurtherFile;
import org.rimebook.season.SeasonResult;
import org.rimebook.totals.Resolution;
import org.rimebook.totals.Totals;

/** The open standards that totals can be written in. */
public enum StandardFormat implements FurtherFile {
  /** OGC WaterML 2.0 Part 1, Timeseries. */
  WATERML2("waterml2", "waterml2.xml") {
    @Override
    public byte[] bytes(SeasonResult result, Resolution resolution) {
      return new WaterMl2(result, result.totals(resolution)).bytes();
    }
  },
  /** NetCDF classic with the CF conventions. */
  NETCDF("netcdf", "totals.nc") {
    @Override
    public byte[] bytes(SeasonResult result, Resolution resolution) {
      Totals totals = result.totals(resolution);
      return SeasonNetcdf.bytes(result, totals);
    }
  };

  private final String code;
  private final String file;

  StandardFormat(String code, String file) {
    this.code = code;
    this.file = file;
  }

  /** The word it is asked for by. */
  public String code() {
    return code;
  }

  @Override
  public String fileName() {
    return file;
  }
}
