package settle.web;

import org.teavm.classlib.ResourceSupplier;
import org.teavm.classlib.ResourceSupplierContext;
import settle.scenarios.catalogue.Catalogue;

/** Puts the catalogue's files into the script, where it cannot be read from a jar. */
@SuppressWarnings("deprecation") // for a richer one, of which nothing is needed here
public final class CatalogueFiles implements ResourceSupplier {

  @Override
  public String[] supplyResources(ResourceSupplierContext context) {
    String folder = Catalogue.class.getPackageName().replace('.', '/') + "/";
    return Catalogue.FILES.stream().map(file -> folder + file).toArray(String[]::new);
  }
}
