package io.github.seamstead.page.build;

import io.github.seamstead.page.NoWait;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ElementModifier;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.MethodReference;
import org.teavm.model.Program;
import org.teavm.model.instructions.InvocationType;
import org.teavm.model.instructions.InvokeInstruction;
import org.teavm.model.instructions.MonitorEnterInstruction;
import org.teavm.model.instructions.MonitorExitInstruction;

/**
 * Takes the locks and the waiting out: a plan in the page runs on one thread. With them nearly
 * every function would have to be one that can be left and entered again, three times as large and
 * slow. Run by the compiler of the page.
 */
public final class OneThread implements ClassHolderTransformer {

  private static final MethodReference INSTEAD =
      new MethodReference(NoWait.class, "waited", Object.class, void.class);

  /** For the compiler. */
  public OneThread() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    for (MethodHolder method : type.getMethods()) {
      method.getModifiers().remove(ElementModifier.SYNCHRONIZED);
      if (method.hasProgram()) {
        transform(method.getProgram());
      }
    }
  }

  private static void transform(Program program) {
    for (BasicBlock block : program.getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof MonitorEnterInstruction
            || instruction instanceof MonitorExitInstruction
            || isNotify(instruction)) {
          instruction.delete();
        } else if (instruction instanceof InvokeInstruction call && isWait(call)) {
          call.setType(InvocationType.SPECIAL);
          call.setArguments(call.getInstance());
          call.setInstance(null);
          call.setMethod(INSTEAD);
        }
      }
    }
  }

  /** Nobody waits to be told. */
  private static boolean isNotify(Instruction instruction) {
    return instruction instanceof InvokeInstruction call
        && call.getMethod().getClassName().equals("java.lang.Object")
        && (call.getMethod().getName().equals("notify")
            || call.getMethod().getName().equals("notifyAll"));
  }

  private static boolean isWait(InvokeInstruction call) {
    return call.getMethod().getClassName().equals("java.lang.Object")
        && call.getMethod().getName().equals("wait")
        && call.getInstance() != null;
  }
}
