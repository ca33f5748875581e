package io.github.seamstead.page.build;

import io.github.seamstead.page.maths.Decimals;
import io.github.seamstead.page.maths.Elementary;
import io.github.seamstead.page.maths.Sums;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.MethodReference;
import org.teavm.model.Program;
import org.teavm.model.Variable;
import org.teavm.model.instructions.InvocationType;
import org.teavm.model.instructions.InvokeInstruction;

/**
 * Turns calls of elementary functions, sums of streams and the rounding of decimals to the
 * project's own, which give the same in every browser, and the reading of a double's halves to
 * typed arrays. Run by the compiler of the page.
 */
public final class ExactMaths implements ClassHolderTransformer {

  private static final String OWN = Elementary.class.getName();
  private static final String WORDS = "io.github.seamstead.page.maths.Words";
  private static final String BROWSER_WORDS = "io.github.seamstead.page.maths.BrowserWords";
  private static final String FAST = "org.apache.commons.math3.util.FastMath";
  private static final String LITERALS = FAST + "LiteralArrays";
  private static final String CALCULATED = FAST + "Calc";
  private static final String TABLES = "io.github.seamstead.page.maths.Tables";
  private static final MethodReference ROUND =
      new MethodReference(BigDecimal.class, "round", MathContext.class, BigDecimal.class);
  private static final MethodReference ROUND_HERE =
      new MethodReference(
          Decimals.class, "round", BigDecimal.class, MathContext.class, BigDecimal.class);
  private static final Set<String> REPLACED = replaced();

  /** For the compiler. */
  public ExactMaths() {}

  private static Set<String> replaced() {
    Set<String> signatures = new HashSet<>();
    Arrays.stream(Elementary.class.getDeclaredMethods())
        .map(method -> MethodReference.parse(method).getDescriptor().toString())
        .forEach(signatures::add);
    return signatures;
  }

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    if (type.getName().equals("java.lang.Math")) {
      return;
    }
    for (MethodHolder method : type.getMethods()) {
      if (method.hasProgram()) {
        transform(method.getProgram());
      }
    }
  }

  private static void transform(Program program) {
    for (BasicBlock block : program.getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof InvokeInstruction call) {
          if (isSum(call)) {
            Class<?> gives =
                call.getMethod().getName().equals("sum") ? double.class : OptionalDouble.class;
            callHere(
                call,
                new MethodReference(
                    Sums.class, call.getMethod().getName(), DoubleStream.class, gives));
          } else if (call.getMethod().equals(ROUND)) {
            callHere(call, ROUND_HERE);
          } else {
            call.setMethod(replaced(call.getMethod()));
          }
        }
      }
    }
  }

  private static boolean isSum(InvokeInstruction call) {
    String name = call.getMethod().getName();
    return call.getMethod().getClassName().equals("java.util.stream.DoubleStream")
        && call.getMethod().parameterCount() == 0
        && (name.equals("sum") || name.equals("average"));
  }

  /** Makes the call of an object's method one of a function that is given the object. */
  private static void callHere(InvokeInstruction call, MethodReference own) {
    List<Variable> arguments = new ArrayList<>();
    arguments.add(call.getInstance());
    arguments.addAll(call.getArguments());
    call.setType(InvocationType.SPECIAL);
    call.setArguments(arguments.toArray(new Variable[0]));
    call.setInstance(null);
    call.setMethod(own);
  }

  private static MethodReference replaced(MethodReference method) {
    return switch (method.getClassName()) {
      case "java.lang.Math", "java.lang.StrictMath" ->
          REPLACED.contains(method.getDescriptor().toString())
              ? new MethodReference(OWN, method.getDescriptor())
              : method;
      case LITERALS -> new MethodReference(TABLES, method.getDescriptor());
      case TABLES ->
          method.getName().startsWith("load") || method.getName().startsWith("of")
              ? method
              : new MethodReference(CALCULATED, method.getDescriptor());
      case WORDS -> new MethodReference(BROWSER_WORDS, method.getDescriptor());
      default -> method;
    };
  }
}
