package org.skewback.kernel.install;

import java.nio.file.Path;

/**
 * Where the parts of an installed kernel lie.
 *
 * @param path the kernel's folder, absolute
 */
record KernelFolder(Path path) {

    /** The kernel with all its libraries. */
    Path jar() {
        return path.resolve("skewback.jar");
    }

    /** The classes of the worker. */
    Path workerJar() {
        return path.resolve("worker.jar");
    }

    /** The class-data archive of the front. */
    Path frontArchive() {
        return path.resolve("front.jsa");
    }

    /** The class-data archive of the worker. */
    Path workerArchive() {
        return path.resolve("worker.jsa");
    }

    /** What Jupyter reads. */
    Path specification() {
        return path.resolve("kernel.json");
    }

    /** What {@link Installation} says. */
    Path installation() {
        return path.resolve("installation.json");
    }
}
