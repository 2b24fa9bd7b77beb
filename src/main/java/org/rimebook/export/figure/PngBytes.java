package org.rimebook.export.figure;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** An image as PNG that knows how large it is to be printed. */
final class PngBytes {

  private static final String NATIVE = "javax_imageio_png_1.0";
  private static final double INCHES_PER_METRE = 1 / 0.0254;

  private PngBytes() {}

  static byte[] of(BufferedImage image, int dpi) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ImageWriteParam param = writer.getDefaultWriteParam();
    IIOMetadata metadata =
        writer.getDefaultImageMetadata(ImageTypeSpecifier.createFromRenderedImage(image), param);
    metadata.mergeTree(NATIVE, size(dpi));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  private static IIOMetadataNode size(int dpi) {
    String perMetre = Long.toString(Math.round(dpi * INCHES_PER_METRE));
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", perMetre);
    size.setAttribute("pixelsPerUnitYAxis", perMetre);
    size.setAttribute("unitSpecifier", "meter");
    IIOMetadataNode root = new IIOMetadataNode(NATIVE);
    root.appendChild(size);
    return root;
  }
}
