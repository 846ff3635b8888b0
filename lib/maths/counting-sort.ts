/**
 * The places in `order` sorted by their key, keeping the order of those with equal keys: one pass of a radix sort.
 * @param order     places to sort
 * @param keys      the key of each place: whole, from 0 up to, not including, `keyCount`
 * @returns         a new list of the same places
 */
export function sortedByKey(order: Int32Array, keys: Int32Array, keyCount: number): Int32Array<ArrayBuffer> {
  const start = new Int32Array(keyCount + 1);
  for (const place of order) start[keys[place] + 1]++;
  for (let key = 0; key < keyCount; key++) start[key + 1] += start[key];
  const sorted = new Int32Array(order.length);
  for (const place of order) sorted[start[keys[place]]++] = place;
  return sorted;
}
