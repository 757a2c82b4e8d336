package org.skewback.kernel.evaluation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;

/**
 * What a class does, without where its code stands in its file. Two of the same code are equal, whatever
 * stood above them when they were compiled.
 */
final class PlainClass {

    private final byte[] code;
    private final byte[] fields;
    private final int firstLine;

    private PlainClass(byte[] code, byte[] fields, int firstLine) {
        this.code = code;
        this.fields = fields;
        this.firstLine = firstLine;
    }

    /**
     * Reads a class.
     *
     * @param bytecode the class as compiled
     * @param names names to be changed, with dots
     */
    static PlainClass of(byte[] bytecode, Map<String, String> names) {
        ClassReader reader = new ClassReader(bytecode);
        ClassNames.Names table = new ClassNames.Names(names);
        int firstLine = firstLine(reader);
        ClassWriter code = new ClassWriter(0);
        reader.accept(new ClassRemapper(new Plain(code, firstLine), table), 0);
        ClassWriter fields = new ClassWriter(0);
        reader.accept(new ClassRemapper(new Fields(fields), table), ClassReader.SKIP_CODE);
        return new PlainClass(code.toByteArray(), fields.toByteArray(), firstLine);
    }

    /** The names, with dots, of a class and of all that stand in it. */
    static List<String> withMembers(byte[] bytecode) {
        List<String> names = new ArrayList<>();
        ClassReader reader = new ClassReader(bytecode);
        names.add(reader.getClassName().replace('/', '.'));
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public void visitNestMember(String member) {
                        names.add(member.replace('/', '.'));
                    }
                },
                ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
        return names;
    }

    /** Whether both do the same. */
    boolean isSame(PlainClass other) {
        return Arrays.equals(code, other.code);
    }

    /** Whether both have the same fields, whatever their methods do. */
    boolean hasSameFields(PlainClass other) {
        return Arrays.equals(fields, other.fields);
    }

    /** How many more lines stand above this one's code than above the other's. */
    int linesAbove(PlainClass other) {
        return firstLine - other.firstLine;
    }

    private static int firstLine(ClassReader reader) {
        int[] first = {Integer.MAX_VALUE};
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access,
                            String name,
                            String descriptor,
                            String signature,
                            String[] exceptions) {
                        return new MethodVisitor(Opcodes.ASM9) {
                            @Override
                            public void visitLineNumber(int line, Label start) {
                                first[0] = Math.min(first[0], line);
                            }
                        };
                    }
                },
                ClassReader.SKIP_FRAMES);
        return first[0] == Integer.MAX_VALUE ? 0 : first[0];
    }

    /** Leaves out what depends on the file, and on the order in which the compiler met classes. */
    private static final class Plain extends ClassVisitor {

        private final int firstLine;

        Plain(ClassVisitor next, int firstLine) {
            super(Opcodes.ASM9, next);
            this.firstLine = firstLine;
        }

        @Override
        public void visitSource(String source, String debug) {
            // The file is named after the class.
        }

        @Override
        public void visitInnerClass(String name, String outer, String simpleName, int access) {
            // The members themselves are compared.
        }

        @Override
        public void visitNestMember(String member) {
            // The members themselves are compared.
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            return new MethodVisitor(
                    Opcodes.ASM9,
                    super.visitMethod(access, name, descriptor, signature, exceptions)) {
                @Override
                public void visitLineNumber(int line, Label start) {
                    super.visitLineNumber(line - firstLine, start);
                }
            };
        }
    }

    /** Leaves out all methods too. */
    private static final class Fields extends ClassVisitor {

        Fields(ClassVisitor next) {
            super(Opcodes.ASM9, new Plain(next, 0));
        }

        @Override
        public @Nullable MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            return null;
        }
    }
}
