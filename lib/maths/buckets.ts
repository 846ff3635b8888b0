/** Members of bucket b are `members[start[b]]` to `members[start[b + 1] - 1]`, in ascending order. */
export type Buckets = { readonly start: Int32Array; readonly members: Int32Array };

/**
 * Sorts the whole numbers from `first` up to, not including, `end` into buckets: arcs by the node they lead to, for one.
 * @param bucketOf  the bucket of a number, from 0 up to, not including, `bucketCount`; below 0 leaves it out
 */
export function buckets(
  bucketCount: number,
  first: number,
  end: number,
  bucketOf: (member: number) => number,
): Buckets {
  const start = new Int32Array(bucketCount + 1);
  for (let member = first; member < end; member++) {
    const bucket = bucketOf(member);
    if (bucket >= 0) start[bucket + 1]++;
  }
  for (let bucket = 0; bucket < bucketCount; bucket++) start[bucket + 1] += start[bucket];
  const members = new Int32Array(start[bucketCount]);
  const next = start.slice();
  for (let member = first; member < end; member++) {
    const bucket = bucketOf(member);
    if (bucket >= 0) members[next[bucket]++] = member;
  }
  return { start, members };
}
