import type { Problem } from "#lib/domain/problem";

/** Problems with their places, all of them. Nothing when there are none. */
export function ProblemList({ title, problems }: { title: string; problems: readonly Problem[] }) {
  if (problems.length === 0) return null;
  return (
    <div className="notice bad">
      <h3>{title}</h3>
      <ul>
        {problems.map(({ place, message }) => (
          <li key={`${place}: ${message}`}>
            <strong>{place}</strong>: {message}
          </li>
        ))}
      </ul>
    </div>
  );
}
