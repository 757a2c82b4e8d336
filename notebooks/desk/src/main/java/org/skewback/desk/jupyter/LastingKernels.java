package org.skewback.desk.jupyter;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.skewback.desk.notebook.Cell;
import org.skewback.desk.notebook.Output;

/**
 * Kernels that serve one notebook after another: the start of a compiler, and the time until it is at its
 * best, are paid once for all of them. Each notebook finds its kernel as if just started.
 */
public final class LastingKernels implements KernelLauncher, AutoCloseable {

    private final KernelLauncher kernels;
    private final Set<String> ofOneNotebook;
    private final List<Free> free = new ArrayList<>();

    /** For whom a kernel can be used: what it was launched with stays. */
    private record Purpose(Path folder, Map<String, String> environment) {}

    private record Free(Purpose purpose, KernelSession kernel) {}

    /**
     * Makes a launcher that has no kernels yet.
     *
     * @param kernels starts kernels
     * @param ofOneNotebook names of the environment variables that only cells read, which may differ from
     *     notebook to notebook
     */
    public LastingKernels(KernelLauncher kernels, Set<String> ofOneNotebook) {
        this.kernels = kernels;
        this.ofOneNotebook = Set.copyOf(ofOneNotebook);
    }

    @Override
    public KernelSession launch(Path folder, Map<String, String> environment) throws KernelTrouble {
        Map<String, String> lasting = new HashMap<>(environment);
        lasting.keySet().removeAll(ofOneNotebook);
        Purpose purpose = new Purpose(folder, lasting);
        @Nullable KernelSession kernel = take(purpose);
        if (kernel != null) {
            try {
                if (kernel.beginAfresh(environment)) {
                    return new Lent(purpose, kernel);
                }
            } catch (KernelTrouble e) {
                // A new one serves as well.
            }
            kernel.close();
        }
        return new Lent(purpose, kernels.launch(folder, environment));
    }

    private synchronized @Nullable KernelSession take(Purpose purpose) {
        for (Iterator<Free> all = free.iterator(); all.hasNext(); ) {
            Free one = all.next();
            if (one.purpose().equals(purpose)) {
                all.remove();
                return one.kernel();
            }
        }
        return null;
    }

    private synchronized void giveBack(Purpose purpose, KernelSession kernel) {
        free.add(new Free(purpose, kernel));
    }

    /** Ends the kernels that serve no notebook now. */
    @Override
    public synchronized void close() {
        // Each waits for the end of a process.
        free.parallelStream().forEach(one -> one.kernel().close());
        free.clear();
    }

    /** A kernel while it serves one notebook. */
    private final class Lent implements KernelSession {

        private final Purpose purpose;
        private final KernelSession kernel;
        private boolean useless;

        Lent(Purpose purpose, KernelSession kernel) {
            this.purpose = purpose;
            this.kernel = kernel;
        }

        @Override
        public CellRun run(Cell cell) throws KernelTrouble {
            useless = true;
            CellRun run = kernel.run(cell);
            useless = false;
            return run;
        }

        @Override
        public void settle() throws KernelTrouble {
            useless = true;
            kernel.settle();
            useless = false;
        }

        @Override
        public List<Output> living() throws KernelTrouble {
            useless = true;
            List<Output> living = kernel.living();
            useless = false;
            return living;
        }

        @Override
        public List<Output> outputs(String cellId) {
            return kernel.outputs(cellId);
        }

        @Override
        public void end() {
            kernel.end();
        }

        @Override
        public void close() {
            if (useless) {
                kernel.close();
            } else {
                giveBack(purpose, kernel);
            }
        }
    }
}
