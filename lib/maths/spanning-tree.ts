import type { LaidOutArcs } from "./arc-layout";
import { DOWN, type FirstTree, UP } from "./first-tree";

const ROOTLESS = -1;
const MOST_UNITS = 0x7fffffff;

/**
 * The basis of the network simplex: a tree that spans all nodes and the root, kept as linked lists of children on typed arrays.
 * Each node holds the arc to its parent, whether that arc points up to the parent, and the units on it: off the tree nothing flows.
 * The tree stays strongly feasible (an arc without units points up), so degenerate pivots cannot cycle.
 * Source: W. H. Cunningham, "A network simplex method", Mathematical Programming 11, 1976 (strongly feasible trees).
 */
export class SpanningTree {
  /** What one unit more at the node would save; the root's is 0. */
  readonly price: Int32Array;
  /** Units on the arc to the parent. */
  readonly flow: Int32Array;
  /** The arc to the parent, as laid out. */
  readonly arc: Int32Array;
  readonly #direction: Int8Array;
  readonly #parent: Int32Array;
  readonly #depth: Int32Array;
  readonly #firstChild: Int32Array;
  readonly #nextSibling: Int32Array;
  readonly #previousSibling: Int32Array;
  readonly #arcs: LaidOutArcs;

  /** Takes over the arrays of the first tree. */
  constructor({ parent, arc, direction, flow }: FirstTree, arcs: LaidOutArcs) {
    const size = parent.length;
    const root = size - 1;
    this.price = new Int32Array(size);
    this.flow = flow;
    this.arc = arc;
    this.#direction = direction;
    this.#parent = parent;
    this.#depth = new Int32Array(size);
    this.#firstChild = new Int32Array(size).fill(ROOTLESS);
    this.#nextSibling = new Int32Array(size);
    this.#previousSibling = new Int32Array(size);
    this.#arcs = arcs;
    parent[root] = ROOTLESS;
    for (let node = root - 1; node >= 0; node--) {
      arc[node] = arcs.placeOf(arc[node]);
      this.#link(node, parent[node]);
    }
    this.#priceAll(arcs);
  }

  /**
   * Lets units flow along `entering` round the cycle it closes, until an arc of the cycle is empty and leaves the tree.
   * @param reducedCost  of the entering arc, below 0
   */
  pivot(entering: number, reducedCost: number): void {
    const from = this.#arcs.from[entering];
    const to = this.#arcs.to[entering];
    const parent = this.#parent;
    const depth = this.#depth;
    const flow = this.flow;
    const direction = this.#direction;

    // Both ends climb to where their ways meet, each noting the arc that is empty first: of those that tie, the last along the cycle.
    let a = from;
    let b = to;
    let leavingA = ROOTLESS;
    let leavingB = ROOTLESS;
    let unitsA = MOST_UNITS;
    let unitsB = MOST_UNITS;
    while (a !== b) {
      const lead = depth[a] - depth[b];
      if (lead >= 0) {
        if (direction[a] === UP && flow[a] < unitsA) {
          unitsA = flow[a];
          leavingA = a;
        }
        a = parent[a];
      }
      if (lead <= 0) {
        if (direction[b] === DOWN && flow[b] <= unitsB) {
          unitsB = flow[b];
          leavingB = b;
        }
        b = parent[b];
      }
    }
    const join = a;
    const leavesOnFromSide = leavingB === ROOTLESS || unitsA < unitsB;
    const leaving = leavesOnFromSide ? leavingA : leavingB;
    const units = leavesOnFromSide ? unitsA : unitsB;
    if (leaving === ROOTLESS) throw new RangeError("a cycle of negative cost: costs must not be negative");
    if (units > 0) {
      for (let node = from; node !== join; node = parent[node]) flow[node] -= direction[node] * units;
      for (let node = to; node !== join; node = parent[node]) flow[node] += direction[node] * units;
    }
    if (leavesOnFromSide) {
      this.#rehang(from, to, leaving, entering, UP, units);
      this.#updateBelow(from, -reducedCost);
    } else {
      this.#rehang(to, from, leaving, entering, DOWN, units);
      this.#updateBelow(to, reducedCost);
    }
  }

  /**
   * Gives the tree new supplies: units follow from the leaves up, prices from the root down. A branch whose arc would then carry less
   * than nothing, or nothing downwards, is cut off and tied to the root: by its own root arc if that points right, else by a dear spare.
   */
  resupply(supply: Int32Array, arcs: LaidOutArcs): void {
    const root = this.#parent.length - 1;
    const order = this.#fromRootDown();
    const gives = Int32Array.from(supply);
    for (let place = root; place > 0; place--) {
      const node = order[place];
      const parent = this.#parent[node];
      const isUp = gives[node] >= 0;
      this.flow[node] = Math.abs(gives[node]);
      if (isUp === (this.#direction[node] === UP)) {
        if (parent !== root) gives[parent] += gives[node];
        continue;
      }
      const own = arcs.placeOf(arcs.count - root + node);
      const spare = arcs.count + node;
      arcs.from[spare] = isUp ? node : root;
      arcs.to[spare] = isUp ? root : node;
      this.arc[node] = (arcs.to[own] === node) === isUp ? spare : own;
      this.#direction[node] = isUp ? UP : DOWN;
      this.#unlink(node, parent);
      this.#link(node, root);
    }
    this.#priceAll(arcs);
  }

  /** Reckons every depth and price anew. */
  #priceAll({ cost }: LaidOutArcs): void {
    for (const node of this.#fromRootDown().subarray(1)) {
      const parent = this.#parent[node];
      const ownCost = cost[this.arc[node]];
      this.#depth[node] = this.#depth[parent] + 1;
      this.price[node] = this.#direction[node] === UP ? this.price[parent] - ownCost : this.price[parent] + ownCost;
    }
  }

  /** Every node, each after its parent. */
  #fromRootDown(): Int32Array {
    const order = new Int32Array(this.#parent.length);
    order[0] = order.length - 1;
    let count = 1;
    for (let place = 0; place < count; place++)
      for (let child = this.#firstChild[order[place]]; child !== ROOTLESS; child = this.#nextSibling[child])
        order[count++] = child;
    return order;
  }

  /** Cuts the branch off above `top` and hangs it by `inside` under `outside`: the parents from `inside` up to `top` turn round. */
  #rehang(inside: number, outside: number, top: number, arc: number, direction: number, units: number): void {
    let node = inside;
    let newParent = outside;
    let newArc = arc;
    let newDirection = direction;
    let newFlow = units;
    for (;;) {
      const oldParent = this.#parent[node];
      const oldArc = this.arc[node];
      const oldDirection = this.#direction[node];
      const oldFlow = this.flow[node];
      this.#unlink(node, oldParent);
      this.#link(node, newParent);
      this.arc[node] = newArc;
      this.#direction[node] = newDirection;
      this.flow[node] = newFlow;
      if (node === top) return;
      newParent = node;
      newArc = oldArc;
      newDirection = -oldDirection;
      newFlow = oldFlow;
      node = oldParent;
    }
  }

  #unlink(node: number, parent: number): void {
    const next = this.#nextSibling[node];
    const previous = this.#previousSibling[node];
    if (previous === ROOTLESS) this.#firstChild[parent] = next;
    else this.#nextSibling[previous] = next;
    if (next !== ROOTLESS) this.#previousSibling[next] = previous;
  }

  #link(node: number, parent: number): void {
    const first = this.#firstChild[parent];
    this.#parent[node] = parent;
    this.#nextSibling[node] = first;
    this.#previousSibling[node] = ROOTLESS;
    if (first !== ROOTLESS) this.#previousSibling[first] = node;
    this.#firstChild[parent] = node;
  }

  /** Walks the branch under `top` and moves every price by `change`; depths follow from the parents. */
  #updateBelow(top: number, change: number): void {
    const firstChild = this.#firstChild;
    const nextSibling = this.#nextSibling;
    const parent = this.#parent;
    const depth = this.#depth;
    let node = top;
    for (;;) {
      this.price[node] += change;
      depth[node] = depth[parent[node]] + 1;
      if (firstChild[node] !== ROOTLESS) {
        node = firstChild[node];
        continue;
      }
      while (node !== top && nextSibling[node] === ROOTLESS) node = parent[node];
      if (node === top) return;
      node = nextSibling[node];
    }
  }
}
