package io.github.seamstead.assembly.merge;

/**
 * A binary tree over groups from left to right, starting at a cut of the ring. Nodes 0 to size - 1
 * are the groups from the cut on; each further node joins two earlier ones, the last one is the
 * root.
 */
final class Tree {

  final int cut;
  final int size;
  final int[] left;
  final int[] right;
  final int[] first;
  final int[] count;
  private int next;

  Tree(int cut, int size) {
    this.cut = cut;
    this.size = size;
    this.left = new int[2 * size - 1];
    this.right = new int[2 * size - 1];
    this.first = new int[2 * size - 1];
    this.count = new int[2 * size - 1];
    for (int i = 0; i < size; i++) {
      first[i] = i;
      count[i] = 1;
    }
    this.next = size;
  }

  /** Adds a merge of two neighbouring nodes and gives the new node. */
  int merge(int leftNode, int rightNode) {
    left[next] = leftNode;
    right[next] = rightNode;
    first[next] = first[leftNode];
    count[next] = count[leftNode] + count[rightNode];
    return next++;
  }

  /** Gives the number of nodes. */
  int nodes() {
    return 2 * size - 1;
  }

  /** Joins pieces, then pairs, then fours and so on, each time from the left. */
  static Tree pairsFirst(int cut, int size) {
    Tree tree = new Tree(cut, size);
    int[] row = new int[size];
    for (int i = 0; i < size; i++) {
      row[i] = i;
    }
    int length = size;
    while (length > 1) {
      int kept = 0;
      for (int i = 0; i + 1 < length; i += 2) {
        row[kept++] = tree.merge(row[i], row[i + 1]);
      }
      if (length % 2 == 1) {
        row[kept++] = row[length - 1];
      }
      length = kept;
    }
    return tree;
  }

  /** Joins each further piece to the group that started at the cut. */
  static Tree oneByOne(int cut, int size) {
    Tree tree = new Tree(cut, size);
    int group = 0;
    for (int i = 1; i < size; i++) {
      group = tree.merge(group, i);
    }
    return tree;
  }
}
