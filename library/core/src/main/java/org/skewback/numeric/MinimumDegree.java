package org.skewback.numeric;

import java.util.Arrays;

/**
 * Approximate minimum degree ordering on a quotient graph: elements absorbed, indistinguishable
 * variables merged, degrees bounded from above by set sizes instead of counted (P. R. Amestoy, T. A.
 * Davis and I. S. Duff, An approximate minimum degree ordering algorithm, SIAM Journal on Matrix
 * Analysis and Applications 17 (1996), 886–905).
 *
 * <p>Very full rows are set aside and ordered last, as the paper suggests.
 */
final class MinimumDegree {

    private static final int NONE = -1;

    private final CompressedGraph graph;
    private final int size;

    /** Of a live variable: its elements, then its variables. Of an element: its variables. */
    private final int[][] list;

    /** Elements at the head of a variable's list. */
    private final int[] elements;

    private final int[] length;

    /** Unknowns a live variable stands for; 0 once merged or eliminated; negative while marked. */
    private final int[] weight;

    private final int[] degree;

    /** Of an element |Lₑ \ Lₘₑ| + stamp, or 0 once absorbed. */
    private final long[] outside;

    private final boolean[] isElement;

    /** Variables merged into one, as chains. */
    private final int[] nextMerged;

    private final int[] lastMerged;
    private final int[] bucket;
    private final int[] next;
    private final int[] previous;
    private final int[] hash;
    private final int[] hashBucket;
    private final int[] nextHash;
    private final int[] mark;
    private final int[] result;
    private int ordered;
    private int left;
    private int minimum;
    private long stamp = 1;
    private int markStamp;

    private MinimumDegree(CompressedGraph graph) {
        this.graph = graph;
        size = graph.size();
        list = new int[size][];
        elements = new int[size];
        length = new int[size];
        weight = new int[size];
        degree = new int[size];
        outside = new long[size];
        isElement = new boolean[size];
        nextMerged = new int[size];
        lastMerged = new int[size];
        next = new int[size];
        previous = new int[size];
        hash = new int[size];
        hashBucket = new int[size];
        nextHash = new int[size];
        mark = new int[size];
        result = new int[size];
        bucket = new int[graph.members.length + 1];
        Arrays.fill(bucket, NONE);
        Arrays.fill(nextMerged, NONE);
        Arrays.fill(hashBucket, NONE);
    }

    /** Vertices of the graph in the order of elimination. */
    static int[] order(CompressedGraph graph) {
        return new MinimumDegree(graph).run();
    }

    private int[] run() {
        int[] full = prepare();
        minimum = 0;
        while (left > 0) {
            eliminate(lowest());
        }
        for (int v : full) {
            result[ordered++] = v;
        }
        return result;
    }

    /** Sets up lists and degrees; gives the vertices that are too full to take part. */
    private int[] prepare() {
        int unknowns = graph.members.length;
        double limit = Math.max(16 * 6, 10 * Math.sqrt(unknowns));
        boolean[] aside = new boolean[size];
        int count = 0;
        for (int v = 0; v < size; v++) {
            long neighbours = graph.weight(v);
            for (int p = graph.starts[v]; p < graph.starts[v + 1]; p++) {
                neighbours += graph.weight(graph.neighbours[p]);
            }
            if (neighbours > limit) {
                aside[v] = true;
                count++;
            }
        }
        int[] full = new int[count];
        count = 0;
        for (int v = 0; v < size; v++) {
            lastMerged[v] = v;
            if (aside[v]) {
                full[count++] = v;
                continue;
            }
            weight[v] = graph.weight(v);
            left += weight[v];
            int[] own = new int[graph.starts[v + 1] - graph.starts[v] + 1];
            for (int p = graph.starts[v]; p < graph.starts[v + 1]; p++) {
                int u = graph.neighbours[p];
                if (!aside[u]) {
                    own[length[v]++] = u;
                    degree[v] += graph.weight(u);
                }
            }
            list[v] = own;
        }
        for (int v = size - 1; v >= 0; v--) {
            if (!aside[v]) {
                insert(v);
            }
        }
        return full;
    }

    private void insert(int v) {
        int head = bucket[degree[v]];
        next[v] = head;
        previous[v] = NONE;
        if (head != NONE) {
            previous[head] = v;
        }
        bucket[degree[v]] = v;
        minimum = Math.min(minimum, degree[v]);
    }

    private void remove(int v) {
        if (previous[v] == NONE) {
            bucket[degree[v]] = next[v];
        } else {
            next[previous[v]] = next[v];
        }
        if (next[v] != NONE) {
            previous[next[v]] = previous[v];
        }
    }

    private int lowest() {
        while (bucket[minimum] == NONE) {
            minimum++;
        }
        return bucket[minimum];
    }

    private void eliminate(int pivot) {
        remove(pivot);
        int pivotWeight = weight[pivot];
        weight[pivot] = -pivotWeight;
        int[] boundary = boundaryOf(pivot);
        int boundaryWeight = degree[pivot];
        measureOutside(boundary, length[pivot]);
        // What the paper calls the first loop of the degree update, with mass elimination.
        for (int k = 0; k < length[pivot]; k++) {
            int v = boundary[k];
            int own = -weight[v];
            if (update(pivot, v)) {
                boundaryWeight -= own;
                pivotWeight += own;
                weight[v] = 0;
                append(pivot, v);
            } else {
                int key = hash[v];
                nextHash[v] = hashBucket[key];
                hashBucket[key] = v;
            }
        }
        mergeIndistinguishable(boundary, length[pivot]);
        left -= pivotWeight;
        int kept = 0;
        for (int k = 0; k < length[pivot]; k++) {
            int v = boundary[k];
            if (weight[v] == 0) {
                continue;
            }
            weight[v] = -weight[v];
            int others = boundaryWeight - weight[v];
            degree[v] = Math.min(degree[v] + others, left - weight[v]);
            insert(v);
            boundary[kept++] = v;
        }
        length[pivot] = kept;
        weight[pivot] = 0;
        degree[pivot] = boundaryWeight;
        isElement[pivot] = kept > 0;
        outside[pivot] = kept > 0 ? stamp : 0;
        stamp += (long) graph.members.length + 1;
        for (int v = pivot; v != NONE; v = nextMerged[v]) {
            result[ordered++] = v;
        }
    }

    /** Collects and marks the variables of the new element, and absorbs the elements it covers. */
    private int[] boundaryOf(int pivot) {
        int[] own = list[pivot];
        int room = length[pivot] - elements[pivot];
        for (int k = 0; k < elements[pivot]; k++) {
            room += length[own[k]];
        }
        int[] boundary = new int[room];
        int count = 0;
        int total = 0;
        for (int k = 0; k <= elements[pivot]; k++) {
            boolean last = k == elements[pivot];
            int[] from = last ? own : list[own[k]];
            int begin = last ? elements[pivot] : 0;
            int end = last ? length[pivot] : length[own[k]];
            for (int p = begin; p < end; p++) {
                int v = from[p];
                if (weight[v] > 0) {
                    total += weight[v];
                    weight[v] = -weight[v];
                    remove(v);
                    boundary[count++] = v;
                }
            }
            if (!last) {
                absorb(own[k]);
            }
        }
        list[pivot] = boundary;
        length[pivot] = count;
        degree[pivot] = total;
        return boundary;
    }

    private void absorb(int element) {
        outside[element] = 0;
        isElement[element] = false;
        list[element] = new int[0];
        length[element] = 0;
    }

    /** |Lₑ \ Lₘₑ| of every element next to the new one, as an excess over the stamp. */
    private void measureOutside(int[] boundary, int count) {
        for (int k = 0; k < count; k++) {
            int v = boundary[k];
            int own = -weight[v];
            for (int p = 0; p < elements[v]; p++) {
                int e = list[v][p];
                if (outside[e] > stamp) {
                    outside[e] -= own;
                } else if (isElement[e]) {
                    outside[e] = degree[e] + stamp - own;
                }
            }
        }
    }

    /**
     * Prunes the list of a variable of the new element, bounds its degree outside that element and
     * hashes it.
     *
     * @return whether nothing is left outside, so that it may be eliminated with the pivot
     */
    private boolean update(int pivot, int v) {
        int[] own = list[v];
        int outer = 0;
        long key = 0;
        int kept = 1;
        int[] pruned = new int[length[v] + 1];
        for (int p = 0; p < elements[v]; p++) {
            int e = own[p];
            if (!isElement[e]) {
                continue;
            }
            long beyond = outside[e] - stamp;
            if (beyond > 0) {
                outer += (int) beyond;
                pruned[kept++] = e;
                key += e;
            } else {
                // Aggressive absorption: the new element covers e.
                absorb(e);
            }
        }
        int keptElements = kept;
        for (int p = elements[v]; p < length[v]; p++) {
            int u = own[p];
            if (weight[u] > 0) {
                outer += weight[u];
                pruned[kept++] = u;
                key += u;
            }
        }
        if (outer == 0) {
            list[v] = new int[0];
            length[v] = 0;
            elements[v] = 0;
            return true;
        }
        pruned[0] = pivot;
        list[v] = pruned;
        elements[v] = keptElements;
        length[v] = kept;
        degree[v] = Math.min(degree[v], outer);
        hash[v] = (int) (key % size);
        return false;
    }

    private void mergeIndistinguishable(int[] boundary, int count) {
        for (int k = 0; k < count; k++) {
            int start = boundary[k];
            if (weight[start] == 0 || hashBucket[hash[start]] == NONE) {
                continue;
            }
            int v = hashBucket[hash[start]];
            hashBucket[hash[start]] = NONE;
            for (; v != NONE; v = nextHash[v]) {
                if (weight[v] == 0) {
                    continue;
                }
                markStamp++;
                for (int p = 1; p < length[v]; p++) {
                    mark[list[v][p]] = markStamp;
                }
                for (int u = nextHash[v]; u != NONE; u = nextHash[u]) {
                    if (weight[u] != 0 && sameList(u, v)) {
                        weight[v] += weight[u];
                        weight[u] = 0;
                        list[u] = new int[0];
                        append(v, u);
                    }
                }
            }
        }
    }

    private boolean sameList(int u, int v) {
        if (length[u] != length[v] || elements[u] != elements[v]) {
            return false;
        }
        for (int p = 1; p < length[u]; p++) {
            if (mark[list[u][p]] != markStamp) {
                return false;
            }
        }
        return true;
    }

    private void append(int to, int chain) {
        nextMerged[lastMerged[to]] = chain;
        lastMerged[to] = lastMerged[chain];
    }
}
