package settle.plots.image;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes PNG files (ISO/IEC 15948): true colour, rows unfiltered. The Java library's own writer
 * tries every row filter, which costs seven times as much time and makes line drawings no smaller.
 */
final class PngFile {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  /** From here on files shrink little and time doubles. */
  private static final int COMPRESSION_LEVEL = 3;

  private static final byte BITS_PER_SAMPLE = 8;
  private static final byte TRUE_COLOUR = 2;
  private static final int UNFILTERED = 0;

  private PngFile() {}

  /** The file of an image of type {@link BufferedImage#TYPE_INT_RGB}. */
  static byte[] of(BufferedImage image) {
    ByteArrayOutputStream file = new ByteArrayOutputStream(1 << 18);
    file.writeBytes(SIGNATURE);
    byte[] header =
        ByteBuffer.allocate(13)
            .putInt(image.getWidth())
            .putInt(image.getHeight())
            .put(BITS_PER_SAMPLE)
            .put(TRUE_COLOUR)
            .array();
    chunk(file, "IHDR", header, header.length);
    pixels(file, image);
    chunk(file, "IEND", new byte[0], 0);
    return file.toByteArray();
  }

  private static void pixels(ByteArrayOutputStream file, BufferedImage image) {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    int width = image.getWidth();
    byte[] row = new byte[1 + 3 * width];
    byte[] packed = new byte[1 << 16];
    Deflater deflater = new Deflater(COMPRESSION_LEVEL);
    row[0] = UNFILTERED;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < width; x++) {
        int rgb = pixels[y * width + x];
        row[1 + 3 * x] = (byte) (rgb >> 16);
        row[2 + 3 * x] = (byte) (rgb >> 8);
        row[3 + 3 * x] = (byte) rgb;
      }
      deflater.setInput(row);
      if (y == image.getHeight() - 1) {
        deflater.finish();
      }
      for (int n = deflater.deflate(packed); n > 0; n = deflater.deflate(packed)) {
        chunk(file, "IDAT", packed, n);
      }
    }
    deflater.end();
  }

  private static void chunk(ByteArrayOutputStream file, String type, byte[] data, int length) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 checksum = new CRC32();
    checksum.update(name);
    checksum.update(data, 0, length);
    file.writeBytes(ByteBuffer.allocate(4).putInt(length).array());
    file.writeBytes(name);
    file.write(data, 0, length);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) checksum.getValue()).array());
  }
}
