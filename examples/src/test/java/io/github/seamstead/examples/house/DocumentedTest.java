package io.github.seamstead.examples.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeParameterTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/**
 * Every public and protected member of a published module says what it is, with each parameter and
 * its return. The compiler's own rule asks the same of a record's compact constructor, whose
 * parameters are the record's: there it bred a second list that nobody read.
 */
class DocumentedTest {

  private static final List<String> MODULES =
      List.of("shared", "geometry", "materials", "assembly", "api");

  @Test
  void everyPublicMemberIsDocumented() throws IOException {
    List<Path> sources = new ArrayList<>();
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        files
            .filter(file -> file.toString().endsWith(".java"))
            .filter(file -> !file.toString().contains("internal"))
            .forEach(sources::add);
      }
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  files,
                  null,
                  List.of("-proc:none"),
                  null,
                  files.getJavaFileObjectsFromPaths(sources));
      Members members = new Members(DocTrees.instance(task));
      for (CompilationUnitTree unit : task.parse()) {
        members.scan(unit, null);
      }
      assertThat(members.seen).isGreaterThan(2000);
      assertThat(members.lacking).isEmpty();
    }
  }

  /** Walks the members that a caller can reach. */
  private static final class Members extends TreePathScanner<Void, Void> {

    private final DocTrees trees;
    private final Set<String> lacking = new TreeSet<>();
    private int seen;

    Members(DocTrees trees) {
      this.trees = trees;
    }

    @Override
    public Void visitClass(ClassTree type, Void none) {
      if (!reachable(type.getModifiers())) {
        return null;
      }
      DocCommentTree doc = doc(type.getSimpleName().toString());
      if (doc != null && type.getKind() == Tree.Kind.RECORD) {
        for (Tree member : type.getMembers()) {
          if (member instanceof VariableTree component
              && !component.getModifiers().getFlags().contains(Modifier.STATIC)) {
            requireParameter(doc, component.getName().toString(), type.getSimpleName() + "");
          }
        }
      }
      return super.visitClass(type, none);
    }

    @Override
    public Void visitMethod(MethodTree method, Void none) {
      if (!reachable(method.getModifiers()) || inherited(method) || recordConstructor(method)) {
        return null;
      }
      DocCommentTree doc = doc(method.getName().toString());
      if (doc == null || doc.toString().contains("{@inheritDoc}")) {
        return null;
      }
      String name = method.getName().toString();
      for (VariableTree parameter : method.getParameters()) {
        requireParameter(doc, parameter.getName().toString(), name);
      }
      for (TypeParameterTree parameter : method.getTypeParameters()) {
        requireParameter(doc, parameter.getName().toString(), name);
      }
      Tree type = method.getReturnType();
      if (type != null
          && !type.toString().equals("void")
          && !doc.toString().contains("{@return")
          && doc.getBlockTags().stream().noneMatch(t -> t.getKind() == DocTree.Kind.RETURN)) {
        lacking.add(place(name) + ": no @return");
      }
      return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Void none) {
      boolean constant =
          getCurrentPath().getParentPath().getLeaf() instanceof ClassTree
              && reachable(field.getModifiers())
              && field.getModifiers().getFlags().contains(Modifier.STATIC);
      if (constant) {
        doc(field.getName().toString());
      }
      return null;
    }

    private void requireParameter(DocCommentTree doc, String parameter, String of) {
      boolean told =
          doc.getBlockTags().stream()
              .anyMatch(
                  tag -> tag instanceof ParamTree p && p.getName().toString().equals(parameter));
      if (!told) {
        lacking.add(place(of) + ": no @param " + parameter);
      }
    }

    private DocCommentTree doc(String name) {
      seen++;
      DocCommentTree doc = trees.getDocCommentTree(getCurrentPath());
      if (doc == null || doc.getFullBody().isEmpty() && doc.getBlockTags().isEmpty()) {
        lacking.add(place(name) + ": no comment");
        return null;
      }
      return doc;
    }

    private String place(String name) {
      String file = getCurrentPath().getCompilationUnit().getSourceFile().getName();
      return file.substring(file.indexOf("seamstead")) + ": " + name;
    }

    /** Whether a caller can reach a member: public or protected, or a member of an interface. */
    private boolean reachable(ModifiersTree modifiers) {
      Set<Modifier> flags = modifiers.getFlags();
      TreePath parent = getCurrentPath().getParentPath();
      boolean ofInterface =
          parent.getLeaf() instanceof ClassTree outer && outer.getKind() == Tree.Kind.INTERFACE;
      return flags.contains(Modifier.PUBLIC)
          || flags.contains(Modifier.PROTECTED)
          || ofInterface && !flags.contains(Modifier.PRIVATE);
    }

    private static boolean inherited(MethodTree method) {
      return method.getModifiers().getAnnotations().stream()
          .anyMatch(a -> a.getAnnotationType().toString().equals("Override"));
    }

    private boolean recordConstructor(MethodTree method) {
      return method.getReturnType() == null
          && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
          && type.getKind() == Tree.Kind.RECORD
          && trees.getDocCommentTree(getCurrentPath()) == null;
    }
  }
}
