package org.skewback.desk.jupyter;

import java.nio.file.Path;
import java.util.Map;

/** Starts kernels. */
public interface KernelLauncher {

    /**
     * Starts a fresh kernel and waits until it answers.
     *
     * @param folder existing folder the kernel works in
     * @param environment environment variables to give it, besides those of this process
     * @return the kernel, to be closed by the caller
     * @throws KernelTrouble when it does not start
     */
    KernelSession launch(Path folder, Map<String, String> environment) throws KernelTrouble;
}
