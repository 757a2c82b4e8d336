package org.skewback.numeric;

/**
 * Reverse Cuthill–McKee ordering: vertices level by level from one at an end of the graph, each
 * level's by increasing degree, then the whole turned round (E. Cuthill and J. McKee, Reducing the
 * bandwidth of sparse symmetric matrices, Proceedings of the 24th national conference of the ACM
 * (1969), 157–172; A. George and J. W. H. Liu, Computer solution of large sparse positive definite
 * systems, Prentice-Hall, 1981, chapter 4: reversal and the search for an end).
 */
final class CuthillMcKee {

    private final CompressedGraph graph;
    private final int[] result;
    private final int[] visit;
    private final boolean[] numbered;
    private int visitStamp;
    private int count;

    private CuthillMcKee(CompressedGraph graph) {
        this.graph = graph;
        result = new int[graph.size()];
        visit = new int[graph.size()];
        numbered = new boolean[graph.size()];
    }

    /** Vertices of the graph in the order of elimination. */
    static int[] order(CompressedGraph graph) {
        return new CuthillMcKee(graph).run();
    }

    private int[] run() {
        int[] queue = new int[graph.size()];
        for (int v = 0; v < graph.size(); v++) {
            if (!numbered[v]) {
                number(end(v, queue));
            }
        }
        int[] reversed = new int[count];
        for (int k = 0; k < count; k++) {
            reversed[k] = result[count - 1 - k];
        }
        return reversed;
    }

    private int degree(int v) {
        return graph.starts[v + 1] - graph.starts[v];
    }

    /** A vertex at an end of its component: of least degree in the last level, until none is deeper. */
    private int end(int start, int[] queue) {
        int root = start;
        int depth = -1;
        while (true) {
            visitStamp++;
            int tail = 0;
            int head = 0;
            int levels = 0;
            int levelStart = 0;
            queue[tail++] = root;
            visit[root] = visitStamp;
            while (head < tail) {
                levelStart = head;
                int levelEnd = tail;
                for (; head < levelEnd; head++) {
                    int v = queue[head];
                    for (int p = graph.starts[v]; p < graph.starts[v + 1]; p++) {
                        int u = graph.neighbours[p];
                        if (visit[u] != visitStamp) {
                            visit[u] = visitStamp;
                            queue[tail++] = u;
                        }
                    }
                }
                levels++;
            }
            if (levels <= depth) {
                return root;
            }
            depth = levels;
            int best = queue[levelStart];
            for (int k = levelStart + 1; k < tail; k++) {
                if (degree(queue[k]) < degree(best)) {
                    best = queue[k];
                }
            }
            if (levels == 1) {
                return root;
            }
            root = best;
        }
    }

    private void number(int root) {
        int head = count;
        result[count++] = root;
        numbered[root] = true;
        while (head < count) {
            int v = result[head++];
            int begin = count;
            for (int p = graph.starts[v]; p < graph.starts[v + 1]; p++) {
                int u = graph.neighbours[p];
                if (!numbered[u]) {
                    numbered[u] = true;
                    int k = count++;
                    for (; k > begin && degree(result[k - 1]) > degree(u); k--) {
                        result[k] = result[k - 1];
                    }
                    result[k] = u;
                }
            }
        }
    }
}
