package org.skewback.kernel.repository;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.aether.AbstractRepositoryListener;
import org.eclipse.aether.RepositoryEvent;

/** Notes the files that decided a resolution. */
final class ReadFiles extends AbstractRepositoryListener {

    private final Set<Path> files = new LinkedHashSet<>();
    private boolean ranges;

    @Override
    public synchronized void artifactResolved(RepositoryEvent event) {
        Path file = event.getArtifact().getPath();
        if (file != null) {
            files.add(file);
        }
    }

    // A range or a snapshot is decided by which versions are there, not by the content of one file.
    @Override
    public synchronized void metadataResolving(RepositoryEvent event) {
        // Lists of what a server has are of no artifact.
        ranges |= !event.getMetadata().getArtifactId().isEmpty();
    }

    /** Whether the files alone decide the outcome, as long as they stay what they are. */
    synchronized boolean decidesAll() {
        return !ranges;
    }

    synchronized List<Path> files() {
        return List.copyOf(files);
    }
}
