package io.github.seamstead.page.build;

import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.model.instructions.StringConstantInstruction;

/**
 * Shortens the text that the language makes of a record, all its components with their names: it is
 * for whoever looks for a defect, stands in no book and no results, and would be a fortieth of the
 * page. Run by the compiler of the page.
 */
public final class RecordText implements ClassHolderTransformer {

  private static final MethodDescriptor TEXT = new MethodDescriptor("toString", String.class);

  /** For the compiler. */
  public RecordText() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    MethodHolder text = type.getMethod(TEXT);
    if ("java.lang.Record".equals(type.getParent())
        && text != null
        && text.hasProgram()
        && isMade(text, type.getName())) {
      ProgramEmitter program = ProgramEmitter.create(text, context.getHierarchy());
      program.constant("a record").returnValue();
    }
  }

  /**
   * Whether the language makes the text, which then begins with the name of the record and a
   * bracket; records that write their own keep it.
   */
  private static boolean isMade(MethodHolder text, String name) {
    for (BasicBlock block : text.getProgram().getBasicBlocks()) {
      for (Instruction instruction : block) {
        if (instruction instanceof StringConstantInstruction constant
            && constant.getConstant().endsWith("[")) {
          String begin = constant.getConstant();
          return name.endsWith(begin.substring(0, begin.length() - 1));
        }
      }
    }
    return false;
  }
}
