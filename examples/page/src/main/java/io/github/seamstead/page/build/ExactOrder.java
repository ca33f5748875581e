package io.github.seamstead.page.build;

import io.github.seamstead.page.maths.Grouped;
import java.util.HashSet;
import java.util.Set;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.MethodReference;
import org.teavm.model.Program;
import org.teavm.model.Variable;
import org.teavm.model.instructions.BinaryInstruction;
import org.teavm.model.instructions.BinaryOperation;
import org.teavm.model.instructions.DoubleConstantInstruction;
import org.teavm.model.instructions.InvocationType;
import org.teavm.model.instructions.InvokeInstruction;
import org.teavm.model.instructions.NumericOperandType;

/**
 * Keeps the order in which doubles are added and multiplied. The compiler of the page takes both
 * for associative when it puts expressions together, which they are not; see {@link Grouped}. Run
 * by that compiler.
 */
public final class ExactOrder implements ClassHolderTransformer {

  private static final MethodReference GROUPED =
      new MethodReference(Grouped.class, "of", double.class, double.class);

  /** For the compiler. */
  public ExactOrder() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    for (MethodHolder method : type.getMethods()) {
      if (method.hasProgram()) {
        transform(method.getProgram());
      }
    }
  }

  private static void transform(Program program) {
    Set<Variable> constants = constants(program);
    for (BasicBlock block : program.getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof BinaryInstruction binary && isRegrouped(binary)) {
          keepOrder(binary, constants);
        }
      }
    }
  }

  private static Set<Variable> constants(Program program) {
    Set<Variable> constants = new HashSet<>();
    for (BasicBlock block : program.getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof DoubleConstantInstruction constant) {
          constants.add(constant.getReceiver());
        }
      }
    }
    return constants;
  }

  /** Where the right operand loses its brackets: a remainder of a product, too. */
  private static boolean isRegrouped(BinaryInstruction binary) {
    return binary.getOperandType() == NumericOperandType.DOUBLE
        && (mayTurn(binary) || binary.getOperation() == BinaryOperation.MODULO);
  }

  /** Left and right may be changed: that gives the same bits, and on the left nothing is lost. */
  private static boolean mayTurn(BinaryInstruction binary) {
    return binary.getOperation() == BinaryOperation.ADD
        || binary.getOperation() == BinaryOperation.MULTIPLY;
  }

  private static void keepOrder(BinaryInstruction binary, Set<Variable> constants) {
    Variable second = binary.getSecondOperand();
    if (constants.contains(second)) {
      return;
    }
    if (mayTurn(binary) && constants.contains(binary.getFirstOperand())) {
      binary.setSecondOperand(binary.getFirstOperand());
      binary.setFirstOperand(second);
      return;
    }
    InvokeInstruction group = new InvokeInstruction();
    group.setType(InvocationType.SPECIAL);
    group.setMethod(GROUPED);
    group.setArguments(second);
    group.setReceiver(binary.getProgram().createVariable());
    group.setLocation(binary.getLocation());
    binary.insertPrevious(group);
    binary.setSecondOperand(group.getReceiver());
  }
}
