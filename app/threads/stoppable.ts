/** Work that a page started and can stop by a number. Kept for the life of the server, across the bundles that Next makes. */
type Stoppable = { nextId: number; readonly stops: Map<number, () => void> };

const shared: typeof globalThis & { stoppableWork?: Stoppable } = globalThis;
shared.stoppableWork ??= { nextId: 1, stops: new Map() };
const { stoppableWork } = shared;

/** The number by which the work can be stopped, until it is forgotten. */
export function stoppableBy(stop: () => void): number {
  const id = stoppableWork.nextId++;
  stoppableWork.stops.set(id, stop);
  return id;
}

export const forgetWork = (id: number): void => {
  stoppableWork.stops.delete(id);
};

/** Stops the work with this number: it ends with the best it has. Nothing when it is over. */
export const stopWork = (id: number): void => stoppableWork.stops.get(id)?.();
