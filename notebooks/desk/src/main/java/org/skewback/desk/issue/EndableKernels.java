package org.skewback.desk.issue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.skewback.desk.jupyter.KernelLauncher;
import org.skewback.desk.jupyter.KernelSession;
import org.skewback.desk.jupyter.KernelTrouble;

/** Kernels that can all be ended when one sheet has failed. */
final class EndableKernels implements KernelLauncher {

    private final KernelLauncher kernels;
    private final Set<KernelSession> launched = ConcurrentHashMap.newKeySet();
    private volatile boolean ended;

    EndableKernels(KernelLauncher kernels) {
        this.kernels = kernels;
    }

    @Override
    public KernelSession launch(Path folder, Map<String, String> environment) throws KernelTrouble {
        KernelSession session = kernels.launch(folder, environment);
        launched.add(session);
        if (ended) {
            session.end();
        }
        return session;
    }

    /** Ends every kernel, those too that are just being started. */
    void end() {
        ended = true;
        launched.forEach(KernelSession::end);
    }
}
