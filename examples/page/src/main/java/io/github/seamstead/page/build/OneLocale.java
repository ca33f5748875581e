package io.github.seamstead.page.build;

import java.util.Currency;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ElementModifier;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.ValueType;
import org.teavm.model.emit.ProgramEmitter;

/**
 * Leaves out the names of time zones, countries and languages, the rules of the zones, the money of
 * each country and the scripts of each language: the library writes its own words and days, and
 * none of these is in them. Run by the compiler of the page.
 */
public final class OneLocale implements ClassHolderTransformer {

  private static final Map<String, Set<String>> LEFT_OUT =
      Map.of(
          "org.teavm.classlib.impl.unicode.CLDRHelper",
          Set.of("getTimeZoneLocalizationMap", "getLanguagesMap", "getCountriesMap"),
          "org.teavm.classlib.impl.tz.DateTimeZoneProvider",
          Set.of("getResource"));

  private static final MethodDescriptor MONEY =
      new MethodDescriptor("getInstance", Locale.class, Currency.class);
  private static final MethodDescriptor SCRIPT =
      new MethodDescriptor("getLikelySubtags", String.class, String.class);

  /** For the compiler. */
  public OneLocale() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    Set<String> names = LEFT_OUT.getOrDefault(type.getName(), Set.of());
    for (MethodHolder method : type.getMethods()) {
      if (names.contains(method.getName())) {
        method.getModifiers().remove(ElementModifier.NATIVE);
        method.getAnnotations().removeAll();
        giveNothing(method, context);
      } else if (type.getName().equals("java.util.Currency")
          && method.getDescriptor().equals(MONEY)) {
        giveNothing(method, context);
      } else if (method.getDescriptor().equals(SCRIPT)) {
        ProgramEmitter program = ProgramEmitter.create(method, context.getHierarchy());
        program.var(1, ValueType.parse(String.class)).returnValue();
      }
    }
  }

  private static void giveNothing(MethodHolder method, ClassHolderTransformerContext context) {
    ProgramEmitter program = ProgramEmitter.create(method, context.getHierarchy());
    program.constantNull(method.getResultType()).returnValue();
  }
}
