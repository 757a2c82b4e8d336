package org.skewback.kernel.repository;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.graph.DependencyNode;
import org.eclipse.aether.util.graph.transformer.ConflictResolver;
import org.eclipse.aether.util.version.GenericVersionScheme;
import org.eclipse.aether.version.InvalidVersionSpecificationException;

/** A tree of dependencies in which Maven's rule, the nearest wins, has been applied. */
final class DependencyTree {

    private final Map<String, Artifact> chosen = new LinkedHashMap<>();
    private final Set<String> notes = new LinkedHashSet<>();

    /** Reads a tree that still has the nodes that lost. */
    DependencyTree(DependencyNode root) {
        visit(root, "");
    }

    /** What belongs on the class path, the root first. */
    List<Artifact> chosen() {
        return new ArrayList<>(chosen.values());
    }

    /** The cases in which somebody gets an older version than it asks for. */
    List<String> notes() {
        return List.copyOf(notes);
    }

    private void visit(DependencyNode node, String parent) {
        Artifact artifact = node.getArtifact();
        if (node.getData().get(ConflictResolver.NODE_DATA_WINNER)
                instanceof DependencyNode winner) {
            note(artifact, winner.getArtifact(), parent);
            return;
        }
        String name = artifact.getGroupId() + ":" + artifact.getArtifactId();
        // Of one library there may be several files, told apart by classifier and extension.
        chosen.putIfAbsent(
                name + ":" + artifact.getClassifier() + ":" + artifact.getExtension(), artifact);
        for (DependencyNode child : node.getChildren()) {
            visit(child, name + ":" + artifact.getVersion());
        }
    }

    private void note(Artifact lost, Artifact won, String parent) {
        if (isNewer(lost.getVersion(), won.getVersion())) {
            notes.add(
                    lost.getGroupId()
                            + ":"
                            + lost.getArtifactId()
                            + ": version "
                            + won.getVersion()
                            + " is used, though "
                            + parent
                            + " asks for "
                            + lost.getVersion()
                            + "; if something is missing there, name that version in a %maven line"
                            + " above");
        }
    }

    private static boolean isNewer(String one, String other) {
        GenericVersionScheme scheme = new GenericVersionScheme();
        try {
            return scheme.parseVersion(one).compareTo(scheme.parseVersion(other)) > 0;
        } catch (InvalidVersionSpecificationException e) {
            return !one.equals(other);
        }
    }
}
