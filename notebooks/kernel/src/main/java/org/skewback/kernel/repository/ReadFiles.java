package org.skewback.kernel.repository;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.maven.model.building.ModelBuildingException;
import org.apache.maven.model.building.ModelProblem;
import org.eclipse.aether.AbstractRepositoryListener;
import org.eclipse.aether.RepositoryEvent;
import org.eclipse.aether.artifact.Artifact;
import org.jspecify.annotations.Nullable;

/** Notes the files that decided a resolution, and those that should have but could not be read. */
final class ReadFiles extends AbstractRepositoryListener {

    private final Set<Path> files = new LinkedHashSet<>();
    private final Set<String> unread = new LinkedHashSet<>();
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

    // As Maven does, the library is used all the same: old ones on public servers are like that.
    @Override
    public synchronized void artifactDescriptorInvalid(RepositoryEvent event) {
        unread.add(
                name(event)
                        + ": its POM cannot be read, so what it needs is not on the class path ("
                        + reason(event.getException())
                        + ")");
    }

    @Override
    public synchronized void artifactDescriptorMissing(RepositoryEvent event) {
        unread.add(name(event) + ": it has no POM, so what it needs is not on the class path");
    }

    private static String name(RepositoryEvent event) {
        Artifact artifact = event.getArtifact();
        return artifact.getGroupId() + ":" + artifact.getArtifactId() + ":" + artifact.getVersion();
    }

    private static String reason(@Nullable Exception failure) {
        if (failure instanceof ModelBuildingException model) {
            return model.getProblems().stream()
                    .filter(problem -> problem.getSeverity() != ModelProblem.Severity.WARNING)
                    .map(ModelProblem::getMessage)
                    .map(message -> message.strip().replaceAll("\\s+", " "))
                    .collect(Collectors.joining("; "));
        }
        return String.valueOf(failure);
    }

    /** What the author should know of POMs that could not be read. */
    synchronized List<String> unread() {
        return List.copyOf(unread);
    }

    /** Whether the files alone decide the outcome, as long as they stay what they are. */
    synchronized boolean decidesAll() {
        return !ranges && unread.isEmpty();
    }

    synchronized List<Path> files() {
        return List.copyOf(files);
    }
}
