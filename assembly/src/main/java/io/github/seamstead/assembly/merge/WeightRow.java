package io.github.seamstead.assembly.merge;

import java.util.Arrays;

/**
 * A row of weighted items with neighbours, insertion and removal anywhere, and search to the left
 * for the nearest item that is heavy enough: a B+ tree of greatest weights over primitive arrays.
 * Each operation costs O(log n).
 *
 * <p>A node is a number; its slots hold the greatest weight below them and what stands there: an
 * item in a leaf, a node above.
 */
final class WeightRow {

  private static final int WIDTH = 32;
  private static final int NONE = -1;

  private final double[] weight;
  private final int[] home;
  private double[] slotWeight = new double[WIDTH * 16];
  private int[] slotRef = new int[WIDTH * 16];
  private int[] size = new int[16];
  private int[] parent = new int[16];
  private int[] before = new int[16];
  private int[] after = new int[16];
  private boolean[] inner = new boolean[16];
  private int nodes;
  private int free = NONE;
  private int root;
  private int firstLeaf;
  private int lastLeaf;

  /**
   * Starts an empty row.
   *
   * @param weight weight of each item that will ever stand in the row, set before it is put in
   */
  WeightRow(double[] weight) {
    this.weight = weight;
    this.home = new int[weight.length];
    this.root = newNode(false);
    this.parent[root] = NONE;
    this.before[root] = NONE;
    this.after[root] = NONE;
    this.firstLeaf = root;
    this.lastLeaf = root;
  }

  /** Gives the last item, or -1 if the row is empty. */
  int last() {
    int count = size[lastLeaf];
    return count == 0 ? NONE : slotRef[lastLeaf * WIDTH + count - 1];
  }

  /** Gives the item before an item, or -1 if it is the first. */
  int previous(int item) {
    int leaf = home[item];
    int slot = slotOf(leaf, item);
    if (slot > 0) {
      return slotRef[leaf * WIDTH + slot - 1];
    }
    int left = before[leaf];
    return left == NONE ? NONE : slotRef[left * WIDTH + size[left] - 1];
  }

  /** Finds the nearest item before an item that weighs at least so much, or gives -1. */
  int heavierBefore(int item, double least) {
    int node = home[item];
    int slot = slotOf(node, item) - 1;
    while (true) {
      slot = lastSlotAtLeast(node, slot, least);
      if (slot >= 0) {
        break;
      }
      int above = parent[node];
      if (above == NONE) {
        return NONE;
      }
      slot = slotOf(above, node) - 1;
      node = above;
    }
    while (inner[node]) {
      node = slotRef[node * WIDTH + slot];
      slot = lastSlotAtLeast(node, size[node] - 1, least);
    }
    return slotRef[node * WIDTH + slot];
  }

  private int lastSlotAtLeast(int node, int from, double least) {
    int base = node * WIDTH;
    int slot = from;
    while (slot >= 0 && slotWeight[base + slot] < least) {
      slot--;
    }
    return slot;
  }

  /** Puts an item behind another, or in front of all if that is -1. */
  void insertAfter(int item, int at) {
    if (at == NONE) {
      insert(firstLeaf, 0, weight[item], item);
    } else {
      int leaf = home[at];
      insert(leaf, slotOf(leaf, at) + 1, weight[item], item);
    }
  }

  /** Takes an item out. */
  void remove(int item) {
    removeSlot(home[item], item);
  }

  private int slotOf(int node, int ref) {
    int base = node * WIDTH;
    int slot = 0;
    while (slotRef[base + slot] != ref) {
      slot++;
    }
    return slot;
  }

  private void insert(int node, int at, double greatest, int ref) {
    int target = node;
    int slot = at;
    if (size[node] == WIDTH) {
      int sibling = split(node);
      if (slot > size[node]) {
        slot -= size[node];
        target = sibling;
      }
    }
    int base = target * WIDTH;
    int count = size[target] - slot;
    System.arraycopy(slotWeight, base + slot, slotWeight, base + slot + 1, count);
    System.arraycopy(slotRef, base + slot, slotRef, base + slot + 1, count);
    slotWeight[base + slot] = greatest;
    slotRef[base + slot] = ref;
    size[target]++;
    setHome(target, ref);
    refresh(target);
  }

  private void setHome(int node, int ref) {
    if (inner[node]) {
      parent[ref] = node;
    } else {
      home[ref] = node;
    }
  }

  /** Moves the right half of a full node to a new one beside it. */
  private int split(int node) {
    int sibling = newNode(inner[node]);
    int half = WIDTH / 2;
    System.arraycopy(slotWeight, node * WIDTH + half, slotWeight, sibling * WIDTH, WIDTH - half);
    System.arraycopy(slotRef, node * WIDTH + half, slotRef, sibling * WIDTH, WIDTH - half);
    size[node] = half;
    size[sibling] = WIDTH - half;
    for (int i = 0; i < size[sibling]; i++) {
      setHome(sibling, slotRef[sibling * WIDTH + i]);
    }
    if (!inner[node]) {
      after[sibling] = after[node];
      before[sibling] = node;
      after[node] = sibling;
      if (after[sibling] == NONE) {
        lastLeaf = sibling;
      } else {
        before[after[sibling]] = sibling;
      }
    }
    if (parent[node] == NONE) {
      int top = newNode(true);
      parent[top] = NONE;
      root = top;
      insert(top, 0, greatest(node), node);
    } else {
      refresh(node);
    }
    int above = parent[node];
    insert(above, slotOf(above, node) + 1, greatest(sibling), sibling);
    return sibling;
  }

  private void removeSlot(int node, int ref) {
    int base = node * WIDTH;
    int slot = slotOf(node, ref);
    int count = size[node] - slot - 1;
    System.arraycopy(slotWeight, base + slot + 1, slotWeight, base + slot, count);
    System.arraycopy(slotRef, base + slot + 1, slotRef, base + slot, count);
    size[node]--;
    if (node == root) {
      while (inner[root] && size[root] == 1) {
        int only = slotRef[root * WIDTH];
        release(root);
        root = only;
        parent[root] = NONE;
      }
    } else if (size[node] == 0) {
      drop(node);
    } else {
      refresh(node);
    }
  }

  private void drop(int node) {
    if (!inner[node]) {
      int left = before[node];
      int right = after[node];
      if (left == NONE) {
        firstLeaf = right;
      } else {
        after[left] = right;
      }
      if (right == NONE) {
        lastLeaf = left;
      } else {
        before[right] = left;
      }
    }
    removeSlot(parent[node], node);
    release(node);
  }

  private double greatest(int node) {
    double greatest = 0;
    for (int i = node * WIDTH; i < node * WIDTH + size[node]; i++) {
      greatest = Math.max(greatest, slotWeight[i]);
    }
    return greatest;
  }

  /** Carries a node's greatest weight upwards as far as it changes. */
  private void refresh(int node) {
    int at = node;
    while (parent[at] != NONE) {
      double greatest = greatest(at);
      int above = parent[at];
      int slot = above * WIDTH + slotOf(above, at);
      if (slotWeight[slot] == greatest) {
        return;
      }
      slotWeight[slot] = greatest;
      at = above;
    }
  }

  private int newNode(boolean isInner) {
    int node = free;
    if (node == NONE) {
      if (nodes == size.length) {
        grow();
      }
      node = nodes++;
    } else {
      free = parent[node];
    }
    size[node] = 0;
    inner[node] = isInner;
    return node;
  }

  private void release(int node) {
    parent[node] = free;
    free = node;
  }

  private void grow() {
    int length = 2 * size.length;
    size = Arrays.copyOf(size, length);
    parent = Arrays.copyOf(parent, length);
    before = Arrays.copyOf(before, length);
    after = Arrays.copyOf(after, length);
    inner = Arrays.copyOf(inner, length);
    slotWeight = Arrays.copyOf(slotWeight, length * WIDTH);
    slotRef = Arrays.copyOf(slotRef, length * WIDTH);
  }
}
