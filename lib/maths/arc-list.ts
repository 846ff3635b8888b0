/** A list of arcs that grows: from, to and cost of each, as whole numbers on typed arrays. */
export class ArcList {
  count = 0;
  #from: Int32Array;
  #to: Int32Array;
  #cost: Int32Array;

  constructor(room: number) {
    this.#from = new Int32Array(Math.max(16, room));
    this.#to = new Int32Array(this.#from.length);
    this.#cost = new Int32Array(this.#from.length);
  }

  push(from: number, to: number, cost: number): void {
    if (this.count === this.#from.length) {
      this.#from = doubled(this.#from);
      this.#to = doubled(this.#to);
      this.#cost = doubled(this.#cost);
    }
    this.#from[this.count] = from;
    this.#to[this.count] = to;
    this.#cost[this.count++] = cost;
  }

  /** Copies the arcs into `from`, `to` and `cost` from index `at`, moving their nodes up to where their runs begin. */
  copyTo(from: Int32Array, to: Int32Array, cost: Int32Array, at: number, fromOffset: number, toOffset: number): void {
    for (let arc = 0; arc < this.count; arc++) {
      from[at + arc] = this.#from[arc] + fromOffset;
      to[at + arc] = this.#to[arc] + toOffset;
    }
    cost.set(this.#cost.subarray(0, this.count), at);
  }
}

function doubled(array: Int32Array): Int32Array<ArrayBuffer> {
  const larger = new Int32Array(array.length * 2);
  larger.set(array);
  return larger;
}
