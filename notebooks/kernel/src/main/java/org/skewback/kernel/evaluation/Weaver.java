package org.skewback.kernel.evaluation;

import java.util.HashSet;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodTooLargeException;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.skewback.kernel.worker.Stop;

/**
 * Makes the bytecode of cells stoppable: as a method begins and before each jump back, that is once in
 * every turn of a loop, it asks whether to stop; and calls that would end the VM become errors. A loop
 * of a library that calls a cell's function is stopped by that function.
 */
final class Weaver {

    private static final String STOP = Type.getInternalName(Stop.class);

    private Weaver() {}

    /**
     * Weaves one class.
     *
     * @param bytecode the class as compiled
     * @return the class to be run
     */
    static byte[] weave(byte[] bytecode) {
        ClassReader reader = new ClassReader(bytecode);
        ClassWriter writer = new ClassWriter(reader, 0);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public MethodVisitor visitMethod(
                            int access,
                            String name,
                            String descriptor,
                            String signature,
                            String[] exceptions) {
                        return new Method(
                                super.visitMethod(access, name, descriptor, signature, exceptions),
                                // A class whose initializer has failed is lost for good.
                                !name.equals("<clinit>"));
                    }
                },
                0);
        try {
            return writer.toByteArray();
        } catch (MethodTooLargeException e) {
            // Such a method still runs; if it has to be stopped, the worker goes with it.
            return bytecode;
        }
    }

    /** Weaves one method. The calls added leave the stack as it was, so its map stays right. */
    private static final class Method extends MethodVisitor {

        private final Set<Label> passed = new HashSet<>();

        private final boolean atStart;

        Method(MethodVisitor next, boolean atStart) {
            super(Opcodes.ASM9, next);
            this.atStart = atStart;
        }

        @Override
        public void visitCode() {
            super.visitCode();
            if (atStart) {
                check();
            }
        }

        private void check() {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, STOP, "check", "()V", false);
        }

        @Override
        public void visitLabel(Label label) {
            passed.add(label);
            super.visitLabel(label);
        }

        @Override
        public void visitJumpInsn(int opcode, Label label) {
            if (passed.contains(label)) {
                check();
            }
            super.visitJumpInsn(opcode, label);
        }

        @Override
        public void visitMethodInsn(
                int opcode, String owner, String name, String descriptor, boolean isInterface) {
            if (owner.equals("java/lang/System") && name.equals("exit")) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, STOP, "exit", "(I)V", false);
            } else if (owner.equals("java/lang/Runtime")
                    && (name.equals("exit") || name.equals("halt"))) {
                super.visitMethodInsn(
                        Opcodes.INVOKESTATIC, STOP, "exit", "(Ljava/lang/Runtime;I)V", false);
            } else {
                super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
            }
        }
    }
}
