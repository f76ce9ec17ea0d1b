package settle.plots.live;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/**
 * The program as a browser runs it.
 *
 * @param script what a worker runs first
 * @param module WebAssembly that the script loads, compressed and in letters; empty where the
 *     script is all there is
 */
public record Engine(String script, String module) {

  /** Where the compiler leaves it, in the folder of its module. */
  private static final String MODULE = "webassembly/settle.wasm";

  private static final String RUNTIME = "webassembly/org/teavm/backend/wasm/wasm-gc-runtime.js";
  private static final String SCRIPT = "javascript/settle.js";

  /** Why one cannot be had. */
  public static final class MissingException extends IOException {
    private static final long serialVersionUID = 1;

    MissingException(Path file) {
      super(file.toString());
    }
  }

  /**
   * The engine as WebAssembly, for browsers since the end of 2024.
   *
   * @param folder where it was compiled to
   * @throws IOException if it is not there
   */
  public static Engine webAssembly(Path folder) throws IOException {
    String runtime = new String(read(folder.resolve(RUNTIME)), StandardCharsets.UTF_8);
    return new Engine(WithoutEval.of(runtime), letters(read(folder.resolve(MODULE))));
  }

  /**
   * The engine as JavaScript, for older browsers: about half as quick.
   *
   * @param folder where it was compiled to
   * @throws IOException if it is not there
   */
  public static Engine javaScript(Path folder) throws IOException {
    return new Engine("", letters(read(folder.resolve(SCRIPT))));
  }

  /** Whether it is WebAssembly. */
  boolean isWebAssembly() {
    return !script.isEmpty();
  }

  private static byte[] read(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      throw new MissingException(file);
    }
    return Files.readAllBytes(file);
  }

  private static String letters(byte[] plain) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream gzip =
        new GZIPOutputStream(packed) {
          {
            def.setLevel(Deflater.BEST_COMPRESSION);
          }
        }) {
      gzip.write(plain);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Base64.getEncoder().encodeToString(packed.toByteArray());
  }
}
