/** Works something out when it is first asked for, and once. What throws is asked again. */
export function whenAsked<T>(work: () => T): () => T {
  let known: { readonly answer: T } | null = null;
  return () => {
    known ??= { answer: work() };
    return known.answer;
  };
}
