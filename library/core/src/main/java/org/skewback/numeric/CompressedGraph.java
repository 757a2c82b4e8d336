package org.skewback.numeric;

import java.util.Arrays;

/**
 * The graph of a pattern with unknowns that have the same closed neighbourhood merged to one vertex:
 * the directions of a node, mostly. It has the same fill-reducing orderings and far fewer vertices
 * (C. Ashcraft, Compressed graphs and the minimum degree algorithm, SIAM Journal on Scientific
 * Computing 16 (1995), 1404–1411).
 */
final class CompressedGraph {

    /** Vertices v = 0 … are neighbours of neighbours[starts[v]] … neighbours[starts[v + 1] − 1]. */
    final int[] starts;

    final int[] neighbours;

    /** Vertex v holds unknowns members[memberStarts[v]] … members[memberStarts[v + 1] − 1]. */
    final int[] memberStarts;

    final int[] members;

    private CompressedGraph(int[] starts, int[] neighbours, int[] memberStarts, int[] members) {
        this.starts = starts;
        this.neighbours = neighbours;
        this.memberStarts = memberStarts;
        this.members = members;
    }

    int size() {
        return starts.length - 1;
    }

    int weight(int vertex) {
        return memberStarts[vertex + 1] - memberStarts[vertex];
    }

    static CompressedGraph of(SymmetricPattern pattern) {
        int order = pattern.order();
        int[] first = new int[order + 1];
        int[] adjacent = fullAdjacency(pattern, first);
        long[] signature = new long[order];
        for (int j = 0; j < order; j++) {
            long sum = mixed(j);
            for (int p = first[j]; p < first[j + 1]; p++) {
                sum += mixed(adjacent[p]);
            }
            signature[j] = sum;
        }
        int[] vertexOf = new int[order];
        Arrays.fill(vertexOf, -1);
        int[] leader = new int[order];
        int size = 0;
        for (int j = 0; j < order; j++) {
            if (vertexOf[j] >= 0) {
                continue;
            }
            leader[size] = j;
            vertexOf[j] = size;
            for (int p = first[j]; p < first[j + 1]; p++) {
                int i = adjacent[p];
                if (i > j
                        && vertexOf[i] < 0
                        && signature[i] == signature[j]
                        && same(first, adjacent, i, j)) {
                    vertexOf[i] = size;
                }
            }
            size++;
        }
        int[] memberStarts = new int[size + 1];
        for (int vertex : vertexOf) {
            memberStarts[vertex + 1]++;
        }
        for (int v = 0; v < size; v++) {
            memberStarts[v + 1] += memberStarts[v];
        }
        int[] members = new int[order];
        int[] next = Arrays.copyOf(memberStarts, size);
        for (int j = 0; j < order; j++) {
            members[next[vertexOf[j]]++] = j;
        }
        int[] starts = new int[size + 1];
        int[] neighbours = new int[adjacent.length];
        int[] seen = new int[size];
        Arrays.fill(seen, -1);
        int count = 0;
        for (int v = 0; v < size; v++) {
            seen[v] = v;
            int j = leader[v];
            for (int p = first[j]; p < first[j + 1]; p++) {
                int u = vertexOf[adjacent[p]];
                if (seen[u] != v) {
                    seen[u] = v;
                    neighbours[count++] = u;
                }
            }
            starts[v + 1] = count;
        }
        return new CompressedGraph(starts, Arrays.copyOf(neighbours, count), memberStarts, members);
    }

    /** Neighbours of each unknown, in increasing order, itself left out. */
    private static int[] fullAdjacency(SymmetricPattern pattern, int[] first) {
        int order = pattern.order();
        int[] starts = pattern.starts();
        int[] rows = pattern.rows();
        for (int j = 0; j < order; j++) {
            first[j + 1] += starts[j + 1] - starts[j] - 1;
            for (int p = starts[j] + 1; p < starts[j + 1]; p++) {
                first[rows[p] + 1]++;
            }
        }
        for (int j = 0; j < order; j++) {
            first[j + 1] += first[j];
        }
        int[] adjacent = new int[first[order]];
        int[] next = Arrays.copyOf(first, order);
        for (int j = 0; j < order; j++) {
            for (int p = starts[j] + 1; p < starts[j + 1]; p++) {
                adjacent[next[j]++] = rows[p];
                adjacent[next[rows[p]]++] = j;
            }
        }
        return adjacent;
    }

    /** Spreads an index over 64 bits, so that sums of them tell sets apart. */
    private static long mixed(int index) {
        long z = (index + 1) * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        return z ^ (z >>> 27);
    }

    /** Whether two neighbours i and j have the same closed neighbourhood. */
    private static boolean same(int[] first, int[] adjacent, int i, int j) {
        if (first[i + 1] - first[i] != first[j + 1] - first[j]) {
            return false;
        }
        int p = first[i];
        int q = first[j];
        while (p < first[i + 1] || q < first[j + 1]) {
            if (p < first[i + 1] && adjacent[p] == j) {
                p++;
            } else if (q < first[j + 1] && adjacent[q] == i) {
                q++;
            } else if (p == first[i + 1] || q == first[j + 1] || adjacent[p++] != adjacent[q++]) {
                return false;
            }
        }
        return true;
    }

    /** Unknowns vertex by vertex in an order of the vertices. */
    int[] expand(int[] vertices) {
        int[] unknowns = new int[members.length];
        int count = 0;
        for (int v : vertices) {
            for (int p = memberStarts[v]; p < memberStarts[v + 1]; p++) {
                unknowns[count++] = members[p];
            }
        }
        return unknowns;
    }
}
