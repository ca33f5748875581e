package io.github.seamstead.page.build;

import org.teavm.backend.javascript.rendering.Precedence;
import org.teavm.backend.javascript.spi.Injector;
import org.teavm.backend.javascript.spi.InjectorContext;
import org.teavm.model.MethodReference;

/**
 * Writes an operand so that nothing can be taken out of it: what is more than a name gets brackets.
 */
public final class Brackets implements Injector {

  /** For the compiler. */
  public Brackets() {}

  @Override
  public void generate(InjectorContext context, MethodReference method) {
    context.writeExpr(context.getArgument(0), Precedence.UNARY);
  }
}
