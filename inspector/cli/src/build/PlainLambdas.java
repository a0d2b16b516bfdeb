import static org.objectweb.asm.Opcodes.*;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Type;

/**
 * Makes a class of each lambda of ours, as javac does of an inner class: {@code java -cp asm.jar
 * PlainLambdas.java VERSION FOLDER...}, for all jars of that version in the folders. A JVM links
 * each lambda at run time, which for the hundreds of a short command takes a fifth of its processor
 * time, even out of a class-data archive; a class is only loaded. What a lambda does is not changed.
 * A jar that was done before stays as it is.
 */
public final class PlainLambdas {

  private static final String METAFACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String CONSTRUCTOR = "<init>";
  private static final String ONLY = "ONLY";
  private static final String OF = "of";

  private static final List<Type> PRIMITIVES =
      List.of(
          Type.BOOLEAN_TYPE,
          Type.CHAR_TYPE,
          Type.BYTE_TYPE,
          Type.SHORT_TYPE,
          Type.INT_TYPE,
          Type.FLOAT_TYPE,
          Type.LONG_TYPE,
          Type.DOUBLE_TYPE);

  private final Map<String, byte[]> made = new LinkedHashMap<>();
  private final Map<String, List<String>> ofHost = new TreeMap<>();

  public static void main(String[] arguments) throws IOException {
    for (String folder : List.of(arguments).subList(1, arguments.length)) {
      List<Path> jars;
      try (Stream<Path> files = Files.list(Path.of(folder))) {
        jars = files.filter(f -> f.toString().endsWith("-" + arguments[0] + ".jar")).toList();
      }
      for (Path jar : jars) {
        new PlainLambdas().rewrite(jar);
      }
    }
  }

  private void rewrite(Path jar) throws IOException {
    Map<String, byte[]> contents = new LinkedHashMap<>();
    Map<String, ZipEntry> entries = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        contents.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
        entries.put(entry.getName(), entry);
      }
    }
    contents.replaceAll((name, bytes) -> name.endsWith(".class") ? withoutLambdas(bytes) : bytes);
    if (made.isEmpty()) {
      return;
    }
    ofHost.forEach(
        (host, members) -> contents.computeIfPresent(host, (n, bytes) -> with(members, bytes)));
    made.forEach(
        (name, bytes) -> {
          contents.put(name + ".class", bytes);
          entries.put(name + ".class", entries.get(name.replaceFirst("\\$\\$\\d+$", "") + ".class"));
        });
    Path other = jar.resolveSibling(jar.getFileName() + ".new");
    try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(other))) {
      for (Map.Entry<String, byte[]> content : contents.entrySet()) {
        ZipEntry entry = new ZipEntry(content.getKey());
        entry.setTimeLocal(entries.get(content.getKey()).getTimeLocal());
        out.putNextEntry(entry);
        out.write(content.getValue());
        out.closeEntry();
      }
    }
    Files.move(other, jar, StandardCopyOption.REPLACE_EXISTING);
  }

  private byte[] withoutLambdas(byte[] bytes) {
    ClassReader reader = new ClassReader(bytes);
    ClassWriter writer = new ClassWriter(0); // without the constants of what is gone
    String owner = reader.getClassName();
    String[] host = {owner};
    int[] count = {0};
    reader.accept(
        new ClassVisitor(ASM9, writer) {
          @Override
          public void visitNestHost(String name) {
            host[0] = name;
            super.visitNestHost(name);
          }

          @Override
          public MethodVisitor visitMethod(
              int access, String name, String descriptor, String signature, String[] thrown) {
            return new MethodVisitor(
                ASM9, super.visitMethod(access, name, descriptor, signature, thrown)) {
              @Override
              public void visitInvokeDynamicInsn(
                  String method, String captured, Handle bootstrap, Object... arguments) {
                if (!bootstrap.getOwner().equals(METAFACTORY)
                    || !bootstrap.getName().equals("metafactory")) {
                  super.visitInvokeDynamicInsn(method, captured, bootstrap, arguments);
                  return;
                }
                String lambda = owner + "$$" + count[0]++;
                ofHost.computeIfAbsent(host[0] + ".class", h -> new ArrayList<>()).add(lambda);
                Type[] kept = Type.getArgumentTypes(captured);
                Type type = Type.getReturnType(captured);
                ClassWriter made = begin(lambda, host[0], type, kept);
                constructor(made, lambda, kept);
                factory(made, lambda, captured, type, kept);
                body(made, lambda, method, kept, arguments);
                made.visitEnd();
                PlainLambdas.this.made.put(lambda, made.toByteArray());
                if (kept.length == 0) {
                  super.visitFieldInsn(GETSTATIC, lambda, ONLY, type.getDescriptor());
                } else {
                  super.visitMethodInsn(INVOKESTATIC, lambda, OF, captured, false);
                }
              }
            };
          }
        },
        0);
    return writer.toByteArray();
  }

  /** Private methods of a class may be called from what its nest names as a member. */
  private static byte[] with(List<String> members, byte[] host) {
    ClassReader reader = new ClassReader(host);
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(
        new ClassVisitor(ASM9, writer) {
          @Override
          public void visitEnd() {
            members.forEach(this::visitNestMember);
            super.visitEnd();
          }
        },
        0);
    return writer.toByteArray();
  }

  private static ClassWriter begin(String lambda, String host, Type type, Type[] kept) {
    ClassWriter made = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    int access = ACC_FINAL | ACC_SYNTHETIC | ACC_SUPER;
    made.visit(V17, access, lambda, null, "java/lang/Object", new String[] {type.getInternalName()});
    made.visitNestHost(host);
    for (int i = 0; i < kept.length; i++) {
      made.visitField(ACC_PRIVATE | ACC_FINAL, "kept" + i, kept[i].getDescriptor(), null, null);
    }
    return made;
  }

  private static void constructor(ClassWriter made, String lambda, Type[] kept) {
    String descriptor = Type.getMethodDescriptor(Type.VOID_TYPE, kept);
    MethodVisitor code = made.visitMethod(ACC_PRIVATE, CONSTRUCTOR, descriptor, null, null);
    code.visitCode();
    code.visitVarInsn(ALOAD, 0);
    code.visitMethodInsn(INVOKESPECIAL, "java/lang/Object", CONSTRUCTOR, "()V", false);
    for (int i = 0, local = 1; i < kept.length; local += kept[i++].getSize()) {
      code.visitVarInsn(ALOAD, 0);
      code.visitVarInsn(kept[i].getOpcode(ILOAD), local);
      code.visitFieldInsn(PUTFIELD, lambda, "kept" + i, kept[i].getDescriptor());
    }
    end(code, RETURN);
  }

  /** One that keeps nothing is made once, others at each evaluation, as a JVM does it. */
  private static void factory(
      ClassWriter made, String lambda, String captured, Type type, Type[] kept) {
    MethodVisitor code;
    if (kept.length == 0) {
      made.visitField(ACC_STATIC | ACC_FINAL, ONLY, type.getDescriptor(), null, null);
      code = made.visitMethod(ACC_STATIC, "<clinit>", "()V", null, null);
    } else {
      code = made.visitMethod(ACC_STATIC, OF, captured, null, null);
    }
    code.visitCode();
    code.visitTypeInsn(NEW, lambda);
    code.visitInsn(DUP);
    for (int i = 0, local = 0; i < kept.length; local += kept[i++].getSize()) {
      code.visitVarInsn(kept[i].getOpcode(ILOAD), local);
    }
    String descriptor = Type.getMethodDescriptor(Type.VOID_TYPE, kept);
    code.visitMethodInsn(INVOKESPECIAL, lambda, CONSTRUCTOR, descriptor, false);
    if (kept.length == 0) {
      code.visitFieldInsn(PUTSTATIC, lambda, ONLY, type.getDescriptor());
    }
    end(code, kept.length == 0 ? RETURN : ARETURN);
  }

  /** Calls what the lambda stands for, with what it kept and what it is given. */
  private static void body(
      ClassWriter made, String lambda, String method, Type[] kept, Object[] arguments) {
    Type declared = (Type) arguments[0];
    Handle called = (Handle) arguments[1];
    Type actual = (Type) arguments[2];
    MethodVisitor code =
        made.visitMethod(ACC_PUBLIC, method, declared.getDescriptor(), null, null);
    code.visitCode();
    boolean makes = called.getTag() == H_NEWINVOKESPECIAL;
    Type owner = Type.getObjectType(called.getOwner());
    List<Type> wanted = new ArrayList<>(List.of(Type.getArgumentTypes(called.getDesc())));
    if (makes) {
      code.visitTypeInsn(NEW, called.getOwner());
      code.visitInsn(DUP);
    } else if (called.getTag() != H_INVOKESTATIC) {
      wanted.add(0, owner);
    }
    for (int i = 0; i < kept.length; i++) {
      code.visitVarInsn(ALOAD, 0);
      code.visitFieldInsn(GETFIELD, lambda, "kept" + i, kept[i].getDescriptor());
    }
    Type[] given = declared.getArgumentTypes();
    for (int i = 0, local = 1; i < given.length; local += given[i++].getSize()) {
      code.visitVarInsn(given[i].getOpcode(ILOAD), local);
      convert(code, given[i], actual.getArgumentTypes()[i]);
      convert(code, actual.getArgumentTypes()[i], wanted.get(kept.length + i));
    }
    code.visitMethodInsn(
        call(called), called.getOwner(), called.getName(), called.getDesc(), called.isInterface());
    Type result = makes ? owner : Type.getReturnType(called.getDesc());
    Type returned = declared.getReturnType();
    if (returned != Type.VOID_TYPE) {
      convert(code, result, actual.getReturnType());
      convert(code, actual.getReturnType(), returned);
    } else if (result.getSize() > 0) {
      code.visitInsn(result.getSize() == 2 ? POP2 : POP);
    }
    end(code, returned.getOpcode(IRETURN));
  }

  private static int call(Handle called) {
    return switch (called.getTag()) {
      case H_INVOKESTATIC -> INVOKESTATIC;
      case H_NEWINVOKESPECIAL -> INVOKESPECIAL;
      default -> called.isInterface() ? INVOKEINTERFACE : INVOKEVIRTUAL;
    };
  }

  private static void end(MethodVisitor code, int instruction) {
    code.visitInsn(instruction);
    code.visitMaxs(0, 0);
    code.visitEnd();
  }

  private static void convert(MethodVisitor code, Type from, Type to) {
    if (from.equals(to)) {
      return;
    }
    if (isPrimitive(from) && isPrimitive(to)) {
      widen(code, from, to);
    } else if (isPrimitive(from)) {
      String box = boxOf(from);
      String descriptor = "(" + from.getDescriptor() + ")L" + box + ";";
      code.visitMethodInsn(INVOKESTATIC, box, "valueOf", descriptor, false);
    } else if (isPrimitive(to)) {
      Type held =
          PRIMITIVES.stream()
              .filter(type -> boxOf(type).equals(from.getInternalName()))
              .findFirst()
              .orElse(to);
      String box = boxOf(held);
      code.visitTypeInsn(CHECKCAST, box);
      String getter = held.getClassName() + "Value";
      code.visitMethodInsn(INVOKEVIRTUAL, box, getter, "()" + held.getDescriptor(), false);
      widen(code, held, to);
    } else {
      code.visitTypeInsn(CHECKCAST, to.getInternalName());
    }
  }

  private static void widen(MethodVisitor code, Type from, Type to) {
    boolean isWhole = from.getOpcode(IRETURN) == IRETURN;
    if (isWhole && to.getOpcode(IRETURN) == IRETURN) {
      return;
    }
    switch ((isWhole ? "I" : from.getDescriptor()) + to.getDescriptor()) {
      case "IJ" -> code.visitInsn(I2L);
      case "IF" -> code.visitInsn(I2F);
      case "ID" -> code.visitInsn(I2D);
      case "JF" -> code.visitInsn(L2F);
      case "JD" -> code.visitInsn(L2D);
      case "FD" -> code.visitInsn(F2D);
      case "JJ", "FF", "DD" -> {}
      default -> throw new IllegalStateException(from + " does not widen to " + to);
    }
  }

  private static boolean isPrimitive(Type type) {
    return PRIMITIVES.contains(type);
  }

  private static String boxOf(Type type) {
    return switch (type.getSort()) {
      case Type.INT -> "java/lang/Integer";
      case Type.CHAR -> "java/lang/Character";
      default -> {
        String name = type.getClassName();
        yield "java/lang/" + Character.toUpperCase(name.charAt(0)) + name.substring(1);
      }
    };
  }
}
