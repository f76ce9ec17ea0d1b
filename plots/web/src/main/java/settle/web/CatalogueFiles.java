package settle.web;

import java.util.stream.Stream;
import org.teavm.classlib.ResourceSupplier;
import org.teavm.classlib.ResourceSupplierContext;
import settle.scenarios.catalogue.Catalogue;

/**
 * Puts the catalogue's files, and one of the mathematics, into the script, where it cannot be read
 * from a jar.
 */
@SuppressWarnings("deprecation") // for a richer one, of which nothing is needed here
public final class CatalogueFiles implements ResourceSupplier {

  /** Of Sobol's sequence, by which houses are drawn. */
  private static final String DIRECTION_NUMBERS =
      "assets/org/apache/commons/math3/random/new-joe-kuo-6.1000";

  @Override
  public String[] supplyResources(ResourceSupplierContext context) {
    String folder = Catalogue.class.getPackageName().replace('.', '/') + "/";
    return Stream.concat(
            Catalogue.FILES.stream().map(file -> folder + file), Stream.of(DIRECTION_NUMBERS))
        .toArray(String[]::new);
  }
}
