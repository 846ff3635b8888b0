import type { Crop } from "#lib/domain/records/crop";

/** The usual cautions for the crops at hand, and whose word counts. Nothing when no crop has any. */
export function Cautions({ crops, open = false }: { crops: readonly Crop[]; open?: boolean }) {
  const cautious = crops.filter((crop) => crop.cautions.length > 0).sort((a, b) => a.name.localeCompare(b.name));
  if (cautious.length === 0) return null;
  return (
    <details className="notice" open={open}>
      <summary>
        <span>
          <strong>Take care:</strong> {cautious.map((crop) => crop.name).join(", ")}
        </span>
      </summary>
      <ul>
        {cautious.map((crop) => (
          <li key={crop.id}>
            <strong>{crop.name}:</strong> {crop.cautions.join(". ")}.
          </li>
        ))}
      </ul>
      <p className="small">
        The list is not complete: a plant that is not on it is not proved safe. Flowers grown for cutting are not food;
        the local food code governs cakes and tables. In the US, for a suspected poisoning call 1-800-222-1222.
      </p>
    </details>
  );
}
