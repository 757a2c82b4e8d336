package org.skewback.numeric;

import java.util.Arrays;

/**
 * The columns of the factor gathered to supernodes: columns next to each other with nearly the same
 * rows, kept as one dense panel, and the tree in which their fronts are assembled.
 *
 * <p>The elimination tree and the counts of the factor are those of J. W. H. Liu, The role of
 * elimination trees in sparse factorization, SIAM Journal on Matrix Analysis and Applications 11
 * (1990), 134–172, worked on blocks of indistinguishable unknowns. Children are merged into their
 * parent where that stores few zeros (C. Ashcraft and R. Grimes, The influence of relaxed supernode
 * partitions on the multifrontal method, ACM Transactions on Mathematical Software 15 (1989),
 * 291–309) and visited in the order that keeps the stack small (J. W. H. Liu, On the storage
 * requirement in the out-of-core multifrontal method for sparse factorization, same journal 12
 * (1986), 249–264).
 */
final class Supernodes {

    /** Unknown eliminated k-th. */
    final int[] sequence;

    /** Supernode s has the columns first[s] to first[s + 1] − 1. */
    final int[] first;

    /** Its rows below them are rows[rowStarts[s]] to rows[rowStarts[s + 1] − 1], increasing. */
    final int[] rowStarts;

    final int[] rows;

    /** How many children a supernode has: those whose fronts lie on top of the stack. */
    final int[] children;

    /** Values of the matrix that enter panel s, and where: entryStarts[s] to entryStarts[s + 1] − 1. */
    final int[] entryStarts;

    final int[] entryValues;
    final int[] entryPlaces;

    /** Largest number of values on the stack of fronts. */
    final long stackSize;

    private final CompressedGraph graph;
    private final int[] blockVertex;
    private final int[] blockStart;
    private final int[] blocksStart;
    private final int[] blocksOf;

    Supernodes(SymmetricPattern pattern, CompressedGraph graph, int[] wanted) {
        this.graph = graph;
        int order = wanted.length;
        int[] vertexOf = new int[order];
        for (int v = 0; v < graph.size(); v++) {
            for (int p = graph.memberStarts[v]; p < graph.memberStarts[v + 1]; p++) {
                vertexOf[graph.members[p]] = v;
            }
        }
        int blocks = 0;
        for (int k = 0; k < order; k++) {
            blocks += k == 0 || vertexOf[wanted[k]] != vertexOf[wanted[k - 1]] ? 1 : 0;
        }
        blockVertex = new int[blocks];
        blockStart = new int[blocks + 1];
        blocksStart = new int[graph.size() + 1];
        blocks = 0;
        for (int k = 0; k < order; k++) {
            if (k == 0 || vertexOf[wanted[k]] != vertexOf[wanted[k - 1]]) {
                blockVertex[blocks] = vertexOf[wanted[k]];
                blockStart[blocks++] = k;
                blocksStart[vertexOf[wanted[k]] + 1]++;
            }
        }
        blockStart[blocks] = order;
        for (int v = 0; v < graph.size(); v++) {
            blocksStart[v + 1] += blocksStart[v];
        }
        blocksOf = new int[blocks];
        int[] next = Arrays.copyOf(blocksStart, graph.size());
        for (int b = 0; b < blocks; b++) {
            blocksOf[next[blockVertex[b]]++] = b;
        }
        int[] parent = new int[blocks];
        int[] below = new int[blocks];
        treeAndCounts(parent, below);
        int[] top = amalgamate(parent, below);
        int[] superParent = new int[blocks];
        for (int b = 0; b < blocks; b++) {
            superParent[b] = top[b] != b || parent[b] < 0 ? -1 : top[parent[b]];
        }
        long[] peak = new long[blocks];
        int[] visits = postorder(top, superParent, below, peak);
        int count = visits.length;
        long largest = 0;
        for (int s : visits) {
            largest = superParent[s] < 0 ? Math.max(largest, peak[s]) : largest;
        }
        stackSize = largest;
        first = new int[count + 1];
        sequence = new int[order];
        int[] blockPlace = new int[blocks];
        int[] number = number(top, visits, wanted, blockPlace);
        children = new int[count];
        for (int s = 0; s < count; s++) {
            if (superParent[visits[s]] >= 0) {
                children[number[superParent[visits[s]]]]++;
            }
        }
        rowStarts = new int[count + 1];
        rows = findRows(top, visits, number, superParent, below, blockPlace);
        entryStarts = new int[count + 1];
        entryValues = new int[pattern.entries()];
        entryPlaces = new int[pattern.entries()];
        placeEntries(pattern);
    }

    int size() {
        return first.length - 1;
    }

    int width(int supernode) {
        return first[supernode + 1] - first[supernode];
    }

    /** Rows of a panel: its own columns and those below. */
    int height(int supernode) {
        return width(supernode) + rowStarts[supernode + 1] - rowStarts[supernode];
    }

    private int weight(int block) {
        return blockStart[block + 1] - blockStart[block];
    }

    /** Elimination tree of the blocks, and the rows below each in the factor. */
    private void treeAndCounts(int[] parent, int[] below) {
        int[] seen = new int[parent.length];
        for (int k = 0; k < parent.length; k++) {
            parent[k] = -1;
            seen[k] = k;
            int v = blockVertex[k];
            climb(v, k, parent, below, seen);
            for (int p = graph.starts[v]; p < graph.starts[v + 1]; p++) {
                climb(graph.neighbours[p], k, parent, below, seen);
            }
        }
    }

    private void climb(int vertex, int k, int[] parent, int[] below, int[] seen) {
        for (int q = blocksStart[vertex]; q < blocksStart[vertex + 1] && blocksOf[q] < k; q++) {
            for (int i = blocksOf[q]; seen[i] != k; i = parent[i]) {
                if (parent[i] < 0) {
                    parent[i] = k;
                }
                below[i] += weight(k);
                seen[i] = k;
            }
        }
    }

    /** For each block the last block of the supernode it belongs to. */
    private int[] amalgamate(int[] parent, int[] below) {
        int blocks = parent.length;
        int[] firstChild = new int[blocks];
        int[] sibling = new int[blocks];
        int[] width = new int[blocks];
        long[] zeros = new long[blocks];
        int[] top = new int[blocks];
        Arrays.fill(firstChild, -1);
        for (int b = blocks - 1; b >= 0; b--) {
            width[b] = weight(b);
            top[b] = b;
            if (parent[b] >= 0) {
                sibling[b] = firstChild[parent[b]];
                firstChild[parent[b]] = b;
            }
        }
        for (int p = 0; p < blocks; p++) {
            for (int c = firstChild[p]; c >= 0; c = sibling[c]) {
                long extra = (long) width[c] * (width[p] + below[p] - below[c]);
                long sum = zeros[p] + zeros[c] + extra;
                int wide = width[p] + width[c];
                long entries = (long) wide * (wide + 1) / 2 + (long) wide * below[p];
                if (extra == 0 || sum <= toleratedZeros(wide) * entries) {
                    top[c] = p;
                    width[p] = wide;
                    zeros[p] = sum;
                }
            }
        }
        for (int b = blocks - 1; b >= 0; b--) {
            top[b] = top[top[b]];
        }
        return top;
    }

    /** Narrow panels cost more by their handling than by some zeros; measured, not derived. */
    private static double toleratedZeros(int width) {
        return width <= 16 ? 0.5 : width <= 32 ? 0.25 : width <= 64 ? 0.12 : 0.05;
    }

    private static long packed(long size) {
        return size * (size + 1) / 2;
    }

    /** Supernodes by their last block, children before parents, the greediest child first. */
    private int[] postorder(int[] top, int[] superParent, int[] below, long[] peak) {
        int blocks = top.length;
        int[] childStarts = new int[blocks + 1];
        int count = 0;
        for (int b = 0; b < blocks; b++) {
            count += top[b] == b ? 1 : 0;
            if (superParent[b] >= 0) {
                childStarts[superParent[b] + 1]++;
            }
        }
        for (int b = 0; b < blocks; b++) {
            childStarts[b + 1] += childStarts[b];
        }
        int[] childList = new int[childStarts[blocks]];
        int[] next = Arrays.copyOf(childStarts, blocks);
        for (int b = 0; b < blocks; b++) {
            if (superParent[b] >= 0) {
                childList[next[superParent[b]]++] = b;
            }
        }
        for (int s = 0; s < blocks; s++) {
            if (top[s] != s) {
                continue;
            }
            sortByGreed(childList, childStarts[s], childStarts[s + 1], peak, below);
            long held = 0;
            for (int p = childStarts[s]; p < childStarts[s + 1]; p++) {
                peak[s] = Math.max(peak[s], held + peak[childList[p]]);
                held += packed(below[childList[p]]);
            }
            peak[s] = Math.max(peak[s], held + packed(below[s]));
        }
        int[] visits = new int[count];
        int[] path = new int[blocks];
        int[] at = childStarts.clone();
        count = 0;
        for (int root = 0; root < blocks; root++) {
            if (top[root] != root || superParent[root] >= 0) {
                continue;
            }
            int depth = 0;
            path[0] = root;
            while (depth >= 0) {
                int s = path[depth];
                if (at[s] < childStarts[s + 1]) {
                    path[++depth] = childList[at[s]++];
                } else {
                    visits[count++] = s;
                    depth--;
                }
            }
        }
        return visits;
    }

    private static void sortByGreed(int[] list, int from, int to, long[] peak, int[] below) {
        for (int p = from + 1; p < to; p++) {
            int c = list[p];
            long greed = peak[c] - packed(below[c]);
            int q = p;
            for (; q > from && peak[list[q - 1]] - packed(below[list[q - 1]]) < greed; q--) {
                list[q] = list[q - 1];
            }
            list[q] = c;
        }
    }

    /** Numbers the columns supernode by supernode; gives the number of each last block. */
    private int[] number(int[] top, int[] visits, int[] wanted, int[] blockPlace) {
        int blocks = top.length;
        int[] number = new int[blocks];
        int[] ends = new int[visits.length + 1];
        for (int s = 0; s < visits.length; s++) {
            number[visits[s]] = s;
        }
        for (int b = 0; b < blocks; b++) {
            ends[number[top[b]] + 1] += weight(b);
        }
        for (int s = 0; s < visits.length; s++) {
            ends[s + 1] += ends[s];
        }
        System.arraycopy(ends, 0, first, 0, first.length);
        for (int b = 0; b < blocks; b++) {
            int s = number[top[b]];
            blockPlace[b] = ends[s];
            System.arraycopy(wanted, blockStart[b], sequence, ends[s], weight(b));
            ends[s] += weight(b);
        }
        return number;
    }

    private int[] findRows(
            int[] top,
            int[] visits,
            int[] number,
            int[] superParent,
            int[] below,
            int[] blockPlace) {
        int blocks = top.length;
        int count = visits.length;
        for (int s = 0; s < count; s++) {
            rowStarts[s + 1] = Math.addExact(rowStarts[s], below[visits[s]]);
        }
        int[] blockAt = new int[sequence.length];
        int[] memberHead = new int[blocks];
        int[] memberNext = new int[blocks];
        Arrays.fill(memberHead, -1);
        for (int b = 0; b < blocks; b++) {
            blockAt[blockPlace[b]] = b;
            memberNext[b] = memberHead[top[b]];
            memberHead[top[b]] = b;
        }
        int[] found = new int[rowStarts[count]];
        int[] list = new int[blocks];
        int[] seen = new int[blocks];
        Arrays.fill(seen, -1);
        int[] lastChild = new int[count];
        int[] previousSibling = new int[count];
        Arrays.fill(lastChild, -1);
        for (int s = 0; s < count; s++) {
            int listed = 0;
            int end = first[s + 1];
            for (int b = memberHead[visits[s]]; b >= 0; b = memberNext[b]) {
                int v = blockVertex[b];
                for (int p = graph.starts[v] - 1; p < graph.starts[v + 1]; p++) {
                    int u = p < graph.starts[v] ? v : graph.neighbours[p];
                    for (int q = blocksStart[u]; q < blocksStart[u + 1]; q++) {
                        int place = blockPlace[blocksOf[q]];
                        if (place >= end && seen[blocksOf[q]] != s) {
                            seen[blocksOf[q]] = s;
                            list[listed++] = place;
                        }
                    }
                }
            }
            for (int c = lastChild[s]; c >= 0; c = previousSibling[c]) {
                for (int p = rowStarts[c]; p < rowStarts[c + 1]; ) {
                    int place = found[p];
                    int b = blockAt[place];
                    if (place >= end && seen[b] != s) {
                        seen[b] = s;
                        list[listed++] = place;
                    }
                    p += weight(b);
                }
            }
            Arrays.sort(list, 0, listed);
            int at = rowStarts[s];
            for (int k = 0; k < listed; k++) {
                for (int w = 0; w < weight(blockAt[list[k]]); w++) {
                    found[at++] = list[k] + w;
                }
            }
            if (at != rowStarts[s + 1]) {
                throw new IllegalStateException("rows of supernode " + s + " miscounted");
            }
            if (superParent[visits[s]] >= 0) {
                int p = number[superParent[visits[s]]];
                previousSibling[s] = lastChild[p];
                lastChild[p] = s;
            }
        }
        return found;
    }

    private void placeEntries(SymmetricPattern pattern) {
        int order = sequence.length;
        int[] place = new int[order];
        int[] superOf = new int[order];
        for (int s = 0; s < size(); s++) {
            Arrays.fill(superOf, first[s], first[s + 1], s);
        }
        for (int k = 0; k < order; k++) {
            place[sequence[k]] = k;
        }
        int[] starts = pattern.starts();
        int[] patternRows = pattern.rows();
        for (int j = 0; j < order; j++) {
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                entryStarts[superOf[Math.min(place[j], place[patternRows[p]])] + 1]++;
            }
        }
        for (int s = 0; s < size(); s++) {
            entryStarts[s + 1] += entryStarts[s];
        }
        int[] next = Arrays.copyOf(entryStarts, size());
        int[] column = new int[pattern.entries()];
        for (int j = 0; j < order; j++) {
            for (int p = starts[j]; p < starts[j + 1]; p++) {
                int low = Math.min(place[j], place[patternRows[p]]);
                int q = next[superOf[low]]++;
                entryValues[q] = p;
                column[q] = low;
                entryPlaces[q] = Math.max(place[j], place[patternRows[p]]);
            }
        }
        int[] local = new int[order];
        for (int s = 0; s < size(); s++) {
            int height = height(s);
            int width = width(s);
            for (int p = rowStarts[s]; p < rowStarts[s + 1]; p++) {
                local[rows[p]] = width + p - rowStarts[s];
            }
            for (int q = entryStarts[s]; q < entryStarts[s + 1]; q++) {
                int row = entryPlaces[q];
                int at = row < first[s + 1] ? row - first[s] : local[row];
                entryPlaces[q] =
                        Math.addExact(Math.multiplyExact(column[q] - first[s], height), at);
            }
        }
    }
}
