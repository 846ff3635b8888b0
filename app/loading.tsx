/** Shown when a page takes longer than a blink. */
export default function Loading() {
  return (
    <p className="notice" role="status">
      Matching bookings with what blooms…
    </p>
  );
}
