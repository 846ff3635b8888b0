/**
 * Stems as they are bunched: "2 × 10 + 3" for 23 stems at ten a bunch, "3 × 10" for 30, "4 loose" for fewer than a bunch. It never says a whole bunch where
 * there is none.
 */
export function bunchesInWords(stems: number, bunchStems: number): string {
  const full = Math.floor(stems / bunchStems);
  const loose = stems - full * bunchStems;
  if (full === 0) return `${loose} loose`;
  return loose === 0 ? `${full} × ${bunchStems}` : `${full} × ${bunchStems} + ${loose}`;
}
