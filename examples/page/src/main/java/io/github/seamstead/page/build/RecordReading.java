package io.github.seamstead.page.build;

import io.github.seamstead.api.job.FormTable;
import java.lang.reflect.RecordComponent;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ElementModifier;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.ValueType;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.model.emit.ValueEmitter;

/**
 * Writes out how the components of the records of a document are read by name: the page has no view
 * of records from outside, which would cost more than all the rest. Run by the compiler of the
 * page.
 */
public final class RecordReading implements ClassHolderTransformer {

  private static final String READER = "io.github.seamstead.api.job.Components";
  private static final ValueType ANY = ValueType.object("java.lang.Object");

  /** For the compiler. */
  public RecordReading() {}

  @Override
  public void transformClass(ClassHolder type, ClassHolderTransformerContext context) {
    if (!type.getName().equals(READER)) {
      return;
    }
    MethodHolder read =
        type.getMethod(new MethodDescriptor("of", Object.class, String.class, Object.class));
    read.getModifiers().remove(ElementModifier.NATIVE);
    ProgramEmitter program = ProgramEmitter.create(read, context.getHierarchy());
    ValueEmitter value = program.var(1, ANY);
    ValueEmitter name = program.var(2, ValueType.object("java.lang.String"));
    for (Class<?> each : FormTable.records()) {
      ValueType own = ValueType.object(each.getName());
      program
          .when(value.instanceOf(own).isTrue())
          .thenDo(() -> choose(program, value.cast(own), name, each));
    }
    program.constantNull(ANY).returnValue();
  }

  private static void choose(
      ProgramEmitter program, ValueEmitter value, ValueEmitter name, Class<?> type) {
    for (RecordComponent component : type.getRecordComponents()) {
      ValueType given = ValueType.parse(component.getType());
      ValueEmitter equal =
          name.invokeVirtual(
              "equals", boolean.class, program.constant(component.getName()).cast(ANY));
      program
          .when(equal.isTrue())
          .thenDo(
              () ->
                  boxed(
                          program,
                          value.invokeVirtual(component.getName(), given),
                          component.getType())
                      .returnValue());
    }
  }

  private static ValueEmitter boxed(ProgramEmitter program, ValueEmitter value, Class<?> type) {
    if (!type.isPrimitive()) {
      return value.cast(ANY);
    }
    Class<?> box =
        type == double.class
            ? Double.class
            : type == int.class ? Integer.class : type == long.class ? Long.class : Boolean.class;
    return program.invoke(box, "valueOf", box, value).cast(ANY);
  }
}
